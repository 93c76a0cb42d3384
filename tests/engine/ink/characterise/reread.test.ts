import { describe, expect, it } from 'vitest';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { reread } from '../../../../src/engine/ink/characterise/reread.ts';
import { guessPaper } from '../../../../src/engine/ink/characterise/sample-roles.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { swatchReflectance } from '../../../../src/engine/ink/film/swatch.ts';

const [, rust] = demoInks();
const NONE = undefined;
// Shares as the correction is used with, from memory.
const GLOSS = { k1: 0.02, k2: 0.5 };
const MATT = { k1: 0.01, k2: 0.4 };

/** The furthest that two curves lie apart in a band. */
function apart(a: ArrayLike<number>, b: ArrayLike<number>): number {
  return Math.max(...Array.from(a, (value, band) => Math.abs(value - b[band]!)));
}

describe('reread', () => {
  it.each([
    [NONE, GLOSS],
    [GLOSS, NONE],
    [GLOSS, MATT],
    [GLOSS, { ...GLOSS, k1: 0.03 }],
    [GLOSS, { ...GLOSS, k2: 0.3 }],
  ])('should show over the card what it did, and something else over another paper: %j to %j', (from, to) => {
    const ink = reread(rust!, from, to);
    for (const ground of [CARD_WHITE, CARD_BLACK]) {
      expect(apart(swatchReflectance(ink, ground, { surface: to }), swatchReflectance(rust!, ground, { surface: from }))).toBeLessThan(
        1e-9,
      );
    }
    expect(apart(ink.kx, rust!.kx)).toBeGreaterThan(1e-4);
    const grey = DEMO_PAPER.reflectance.map((value) => 0.4 * value);
    const strokes = { strokes: 3, strokeGain: 0.4 };
    const [now, before] = [to, from].map((surface, i) => swatchReflectance(i === 0 ? ink : rust!, grey, { ...strokes, surface }));
    expect(apart(now!, before!)).toBeGreaterThan(1e-5);
  });

  it('should leave an ink as it is where nothing changes, also by a surface that does nothing', () => {
    expect(reread(rust!, GLOSS, { ...GLOSS })).toBe(rust);
    expect(reread(rust!, NONE, NONE)).toBe(rust);
    expect(reread(rust!, NONE, { k1: 0, k2: 0 })).toBe(rust);
  });
});

describe('guessPaper', () => {
  const sample = (id: string, name: string, l: number) => ({ id, name, lab: [l, 0, 0] as [number, number, number] });

  it('should go by a name, else by the lightest', () => {
    expect(guessPaper([sample('1', 'cyan', 55), sample('2', 'Bare paper', 90), sample('3', 'yellow', 93)])).toBe(1);
    expect(guessPaper([sample('substrate', '', 90), sample('3', 'yellow', 93)])).toBe(0);
    expect(guessPaper([sample('1', 'a', 55), sample('2', 'b', 93), sample('3', 'c', 20)])).toBe(1);
  });
});
