import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { CARD, CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { inkCurvesOn } from '../../../../src/engine/ink/characterise/characterise.ts';
import { groundsOf, usualGrounds } from '../../../../src/engine/ink/characterise/own-grounds.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import type { Ink } from '../../../../src/engine/ink/types.ts';

const paper = { reflectance: Array.from({ length: 36 }, (_, band) => 0.55 + 0.2 * Math.min(1, band / 12)) };
const inks = demoInks();
const own = (id: string, basis: Ink['basis']): Ink => ({ ...inks.find((ink) => ink.id === id)!, basis });

describe('usualGrounds', () => {
  it('should be the own paper, and the darkest own ink that is no invention', () => {
    expect(usualGrounds({ inks, paper })).toEqual({ white: 'paper', black: 'card' });
    const mine = [own('rust', 'measured'), own('tar', 'drawdown'), own('dusk', 'measured')];
    expect(usualGrounds({ inks: mine, paper })).toEqual({ white: 'paper', black: { ink: 'tar' } });
    expect(usualGrounds({ inks: [own('tar', 'guess'), own('clay', 'measured')], paper }).black).toBe('card');
  });
});

describe('groundsOf', () => {
  it('should give the curves of what was chosen', () => {
    expect(groundsOf({ white: 'card', black: 'card' }, { inks, paper })).toEqual({
      white: CARD_WHITE,
      black: CARD_BLACK,
      surface: undefined,
    });
    const chosen = groundsOf({ white: 'paper', black: { ink: 'tar' } }, { inks, paper });
    expect(chosen.white).toEqual(paper.reflectance);
    expect(chosen.black).toEqual(Array.from(stackReflectance([own('tar', 'measured')], paper.reflectance)));
    const typed = groundsOf({ white: { lab: [80, 2, 10] }, black: { lab: [20, 0, 1] } }, { inks, paper });
    expect(deltaE2000(labD50(typed.white), [80, 2, 10])).toBeLessThan(0.01);
    expect(deltaE2000(labD50(typed.black), [20, 0, 1])).toBeLessThan(0.01);
    expect(() => groundsOf({ white: { lab: [90, 120, 0] }, black: 'card' }, { inks, paper })).toThrow(/nearest of the same hue/);
  });

  // The same film seen on a warm paper and on a black pulled on it; its own curves are known here.
  it('should find inks that predict overprints better than the card does', () => {
    const [true1, true2] = [own('shoal', 'measured'), own('rust', 'measured')];
    const source = { inks, paper };
    const grounds = groundsOf({ white: 'paper', black: { ink: 'tar' } }, source);
    const found = (ink: Ink, on: typeof grounds): { kx: Float64Array; sx: Float64Array } => {
      const seen = [grounds.white, grounds.black].map((ground) => labD50(stackReflectance([ink], ground)));
      return inkCurvesOn(seen[0]!, seen[1]!, on);
    };
    const truth = labD50(stackReflectance([true1, true2], paper.reflectance));
    const missOn = (on: typeof grounds): number =>
      deltaE2000(truth, labD50(stackReflectance([found(true1, on), found(true2, on)], paper.reflectance)));
    expect(missOn(grounds)).toBeLessThan(missOn(CARD) / 2);
    expect(missOn(grounds)).toBeLessThan(3);
  });
});
