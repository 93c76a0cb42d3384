import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../../src/engine/colour/lab.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import {
  checkSquares,
  fitOverprintSteps,
  fitOverprints,
  fittedInk,
  type PulledSquare,
} from '../../../../src/engine/ink/fit/fit-overprints.ts';
import type { Ink } from '../../../../src/engine/ink/types.ts';
import { choices } from '../../../helpers/noise.ts';

const paper = DEMO_PAPER.reflectance;

/** Inks as they really print: the demo's, with humps in their curves that two colours cannot tell. */
function trueInks(): Ink[] {
  return demoInks()
    .slice(0, 5)
    .map((ink, n) => ({
      ...ink,
      kx: ink.kx.map((k, band) => 1.3 * k * (1 + 0.35 * Math.sin(band / (2 + n)))),
      sx: ink.sx.map((s, band) => 0.02 + 0.8 * s * (1 + 0.2 * Math.cos(band / (3 + n)))),
    }));
}

/** What is believed of them: the smooth curves of two colours, of another day's film. */
function believedInks(): Ink[] {
  return demoInks()
    .slice(0, 5)
    .map((ink) => ({ ...ink, basis: 'drawdown' }));
}

const shown = (inks: readonly Ink[], first: string, over: string | null): Float64Array =>
  stackReflectance(
    [first, ...(over === null ? [] : [over])].map((id) => inks.find((ink) => ink.id === id)!),
    paper,
  );

function pulled(noise: number, as: 'curve' | 'colour'): PulledSquare[] {
  const inks = trueInks();
  const { gauss } = choices(7);
  return inks.flatMap(({ id: first }) =>
    [null, ...inks.map(({ id }) => id)].map((over) => {
      const reflectance = shown(inks, first, over).map((value) => Math.max(0, value + noise * gauss()));
      return as === 'curve' ? { first, over, reflectance } : { first, over, lab: labD50(reflectance) };
    }),
  );
}

describe('fitOverprints', () => {
  it('should find the inks that pulled the target from its curves', () => {
    const { before, after, squares } = fitOverprints(pulled(0, 'curve'), believedInks(), DEMO_PAPER);
    expect(before.meanDeltaE).toBeGreaterThan(2);
    expect(after.maxDeltaE).toBeLessThan(0.1);
    expect(squares.length).toBe(30);
  });

  it('should predict prints that were not on the target better than before', () => {
    for (const as of ['curve', 'colour'] as const) {
      const squares = pulled(0.003, as).filter((_, i) => i % 3 !== 1);
      const fit = fitOverprints(squares, believedInks(), DEMO_PAPER);
      expect(fit.after.meanDeltaE).toBeLessThan(0.5);
      const [believed, fitted] = [believedInks(), believedInks().map((ink) => fittedInk(ink, fit))];
      const held = pulled(0, 'curve').filter((_, i) => i % 3 === 1);
      const miss = (inks: readonly Ink[]): number =>
        held.reduce((sum, { first, over, reflectance }) => sum + deltaE2000(labD50(reflectance!), labD50(shown(inks, first, over))), 0) /
        held.length;
      expect(miss(fitted)).toBeLessThan(miss(believed) / 3);
      expect(fitted.every(({ basis }) => basis === 'measured')).toBe(true);
    }
  });

  it('should use curves and colours together and leave inks alone that were not pulled', () => {
    const squares = [...pulled(0, 'curve').slice(0, 6), ...pulled(0, 'colour').slice(6, 12)].filter(({ over }) => over !== 'foam');
    const inks = believedInks();
    const fit = fitOverprints(squares, inks, DEMO_PAPER);
    expect(fit.after.meanDeltaE).toBeLessThan(fit.before.meanDeltaE / 3);
    expect(fit.inks.map(({ id }) => id)).not.toContain('foam');
    expect(fittedInk(inks[4]!, fit)).toBe(inks[4]);
  });

  it('should never fit worse than before, whatever was typed', () => {
    const inks = believedInks();
    const id = fc.constantFrom(...inks.map((ink) => ink.id));
    const lab = fc.tuple(
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.double({ min: -90, max: 90, noNaN: true }),
      fc.double({ min: -90, max: 90, noNaN: true }),
    );
    const curve = fc.array(fc.double({ min: 0, max: 1.2, noNaN: true }), { minLength: 36, maxLength: 36 });
    const square = fc.oneof(
      fc.record({ first: id, over: fc.option(id), lab }),
      fc.record({ first: id, over: fc.option(id), reflectance: curve }),
    );
    fc.assert(
      fc.property(fc.array(square, { minLength: 1, maxLength: 8 }), (squares) => {
        const { before, after, inks: fitted } = fitOverprints(squares as PulledSquare[], inks, DEMO_PAPER);
        expect(after.meanDeltaE).toBeLessThanOrEqual(before.meanDeltaE);
        for (const { kx, sx } of fitted) for (const value of [...kx, ...sx]) expect(value >= 0 && value < Infinity).toBe(true);
      }),
      { seed: 31, numRuns: 25 },
    );
  });

  it('should not buy a smaller mean with a few squares that are far off', () => {
    // Squares so wrong that their least squares in light are not those in colour.
    const { uniform } = choices(521);
    const int = (below: number): number => Math.floor(uniform() * below);
    const off = (by: number): number => (uniform() - 0.5) * by;
    const inks = demoInks();
    const squares = Array.from({ length: 3 + int(3) }, (): PulledSquare => {
      const first = inks[int(3)]!.id;
      const over = int(2) === 1 ? null : inks[int(3)]!.id;
      const reflectance = shown(inks, first, over);
      const [l, a, b] = labD50(reflectance);
      const lab: Lab = [Math.min(100, Math.max(0, l + off(40))), a + off(60), b + off(60)];
      if (int(2) !== 0) return { first, over, lab };
      return { first, over, reflectance: reflectance.map((value) => Math.min(1, Math.max(0, value + off(0.5)))) };
    });
    const fit = fitOverprints(squares, inks, DEMO_PAPER);
    const rms = (of: 'beforeDeltaE' | 'afterDeltaE'): number =>
      Math.sqrt(fit.squares.reduce((sum, square) => sum + square[of] ** 2, 0) / fit.squares.length);
    expect(rms('afterDeltaE')).toBeLessThanOrEqual(rms('beforeDeltaE'));
    expect(fit.after.meanDeltaE).toBeLessThan(fit.before.meanDeltaE);
  });

  it('should leave a perfect fit as it is', () => {
    const fit = fitOverprints(pulled(0, 'curve'), trueInks(), DEMO_PAPER);
    expect(fit.after.maxDeltaE).toBeLessThan(1e-6);
  });

  it('should go in steps that can be stopped', () => {
    const run = fitOverprintSteps(pulled(0, 'curve'), believedInks(), DEMO_PAPER);
    expect(run.next()).toEqual({ done: false, value: { rounds: 1 } });
    expect(run.next().value).toEqual({ rounds: 2 });
  });

  it('should refuse squares that say nothing', () => {
    const inks = demoInks();
    const lab: Lab = [50, 0, 0];
    const codes = (squares: PulledSquare[]): string[] => checkSquares(squares, inks).map(({ code }) => code);
    expect(codes([])).toEqual(['fit.no-squares']);
    expect(codes([{ first: 'gold', over: null, lab }])).toEqual(['fit.unknown-ink']);
    expect(codes([{ first: 'rust', over: 'tar' }])).toEqual(['fit.no-colour']);
    expect(codes([{ first: 'rust', over: 'tar', reflectance: [0.5] }])).toEqual(['fit.bad-reflectance']);
    expect(codes([{ first: 'rust', over: 'tar', lab: [NaN, 0, 0] }])).toEqual(['fit.bad-colour']);
    expect(() => fitOverprints([], inks, DEMO_PAPER)).toThrow(expect.objectContaining({ code: 'fit.no-squares' }));
  });
});
