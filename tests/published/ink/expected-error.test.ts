import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import type { Lab } from '../../../src/engine/colour/lab.ts';
import { expectedError } from '../../../src/engine/ink/certainty/expected-error.ts';
import { inkCurvesOn } from '../../../src/engine/ink/characterise/characterise.ts';
import { guessInk } from '../../../src/engine/ink/characterise/guess.ts';
import { curveFromColour, nearestPossible } from '../../../src/engine/ink/film/curves.ts';
import { fitTargetSteps } from '../../../src/engine/ink/fit/fit-target.ts';
import type { Ink, InkBasis } from '../../../src/engine/ink/types.ts';
import { ink } from '../../engine/order/drawer.ts';
import published from '../colour/process-overprints.json';

type PublishedSet = Record<string, Lab>;

const SETS = Object.values(published.sets) as unknown as PublishedSet[];
/** As new projects begin; offset prints have less. */
const PRINTING = { surface: { k1: 0, k2: 0.5 }, trapping: { factor: 0.85 } };

const mean = (list: readonly number[]): number => list.reduce((sum, value) => sum + value, 0) / list.length;

/** Three inks of a set as they are typed over the set's paper and its black, or guessed transparent. */
function inksOf(set: PublishedSet, basis: InkBasis): Record<string, Ink> {
  const white = curveFromColour(nearestPossible(set['W']!));
  const black = curveFromColour(nearestPossible(set['K']!));
  const grounds = { white, black, surface: PRINTING.surface };
  return Object.fromEntries(
    ['C', 'M', 'Y'].map((id) => {
      const { kx, sx } =
        basis === 'guess'
          ? guessInk(nearestPossible(set[id]!), 'transparent', grounds)
          : inkCurvesOn(nearestPossible(set[id]!), set[`${id}K`]!, grounds);
      return [
        id,
        {
          ...ink(
            id,
            (band) => kx[band]!,
            (band) => sx[band]!,
          ),
          basis,
        },
      ];
    }),
  );
}

describe('expectedError on published process overprints', () => {
  it.each(['drawdown', 'guess'] as const)('should expect about what predictions from inks known by %s really miss', (basis) => {
    const real: Record<number, number[]> = { 2: [], 3: [] };
    const expected: Record<number, number[]> = { 2: [], 3: [] };
    let within = 0;
    for (const set of SETS) {
      const paper = { reflectance: [...curveFromColour(nearestPossible(set['W']!))] };
      const inks = inksOf(set, basis);
      for (const key of ['CM', 'CY', 'MY', 'CMY']) {
        const { lab, deltaE, parts } = expectedError(
          [...key].map((id) => ({ ink: inks[id]! })),
          { paper, ...PRINTING },
        );
        const miss = deltaE2000(lab, set[key]!);
        real[key.length]!.push(miss);
        expected[key.length]!.push(deltaE);
        if (miss < 2 * deltaE) within++;
        expect(Math.hypot(parts.film, parts.inks, parts.press)).toBeCloseTo(deltaE, 9);
      }
    }
    for (const films of [2, 3]) {
      const ratio = mean(expected[films]!) / mean(real[films]!);
      expect(ratio).toBeGreaterThan(0.75);
      expect(ratio).toBeLessThan(1.5);
    }
    // Of 24, nearly all within twice what is expected.
    expect(within).toBeGreaterThanOrEqual(22);
  });

  it('should expect of fitted inks what their fit missed of overprints left out', () => {
    const set = SETS[3]!;
    const keys = ['K', 'C', 'M', 'Y', 'CM', 'MY', 'CK'];
    const reflectance = [...curveFromColour(nearestPossible(set['W']!))];
    const inks = ['K', 'C', 'M', 'Y'].map((id) =>
      ink(
        id,
        () => 1,
        () => 0.01,
      ),
    );
    const run = fitTargetSteps({
      squares: keys.map((key) => ({ films: published.order.filter((id) => key.includes(id)).map((id) => ({ ink: id })), lab: set[key]! })),
      inks,
      paper: { reflectance },
    });
    let next = run.next();
    while (!next.done) next = run.next();
    const fit = next.value;
    expect(fit.inks.map(({ id, squares }) => [id, squares])).toEqual([
      ['K', 2],
      ['C', 3],
      ['M', 3],
      ['Y', 2],
    ]);
    expect(fit.looDeltaE).toBeGreaterThan(fit.meanDeltaE);
    expect(fit.squares.map(({ leftOutDeltaE }) => leftOutDeltaE === null)).toEqual([true, true, true, true, false, false, false]);
    expect(fit.worst).toHaveLength(7);
    const [worst] = fit.worst;
    expect(fit.squares[worst!]!.leftOutDeltaE).toBe(Math.max(...fit.squares.map(({ leftOutDeltaE }) => leftOutDeltaE ?? 0)));
    const fitted = fit.inks.map(({ id, kx, sx }) => ({
      ...ink(
        id,
        (band) => kx[band]!,
        (band) => sx[band]!,
      ),
      fit: { looDeltaE: fit.looDeltaE, squares: 2 },
    }));
    const { lab, deltaE } = expectedError(
      ['C', 'Y'].map((id) => ({ ink: fitted.find((each) => each.id === id)! })),
      { paper: { reflectance }, surface: fit.surface, trapping: fit.trapping },
    );
    expect(deltaE).toBeGreaterThan(fit.looDeltaE);
    expect(deltaE2000(lab, set['CY']!)).toBeLessThan(deltaE);
  });
});
