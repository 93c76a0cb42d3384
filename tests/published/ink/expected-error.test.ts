import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import { expectedError } from '../../../src/engine/ink/certainty/expected-error.ts';
import { curveFromColour, nearestPossible } from '../../../src/engine/ink/film/curves.ts';
import { fitTargetSteps } from '../../../src/engine/ink/fit/fit-target.ts';
import { ink } from '../../engine/order/drawer.ts';
import published from '../colour/process-overprints.json';
import { leftOutSets, mean, SETS, typedMisses } from './typed-misses.ts';

describe('expectedError on published process overprints', () => {
  it.each(['drawdown', 'guess'] as const)('should expect about what predictions from inks known by %s really miss', (basis) => {
    const misses = typedMisses(basis);
    for (const { parts, expected } of misses) expect(Math.hypot(parts.film, parts.inks, parts.press)).toBeCloseTo(expected, 9);
    for (const films of [2, 3]) {
      const of = misses.filter((miss) => miss.films === films);
      const ratio = mean(of.map(({ expected }) => expected)) / mean(of.map(({ real }) => real));
      expect(ratio).toBeGreaterThan(0.75);
      expect(ratio).toBeLessThan(1.5);
    }
    // Of 24, nearly all within twice what is expected.
    expect(misses.filter(({ expected, real }) => real < 2 * expected).length).toBeGreaterThanOrEqual(22);
  });

  // The spreads were chosen on these sets; each is judged by the other five, too.
  it.each(['drawdown', 'guess'] as const)('should expect so of a set that no spread was chosen on, inks known by %s', (basis) => {
    const left = leftOutSets(typedMisses(basis));
    for (const { scale, expected, real } of left) {
      expect(scale).toBeGreaterThan(0.75);
      expect(scale).toBeLessThan(1.25);
      expect(expected / real).toBeGreaterThan(0.6);
      expect(expected / real).toBeLessThan(1.7);
    }
    expect(left.reduce((sum, { within }) => sum + within, 0)).toBeGreaterThanOrEqual(22);
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
