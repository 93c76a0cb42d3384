import { describe, expect, it } from 'vitest';
import type { Lab } from '../../../src/engine/colour/lab.ts';
import { choices } from '../../helpers/noise.ts';
import { missesOfRest, type Perturbation, quantile } from './overprint-sets.ts';

// Measured overprints of six published characterisation data sets; their source is in the file itself.
describe('fitFilms on published process overprints', () => {
  it.each([[['CK']], [['MK']], [['YK']], [['CK', 'CYK']]])(
    'should predict what was not fitted from the solids, CM, MY and %s',
    (black) => {
      const { pairs, cmy, more, looMeans } = missesOfRest(['CM', 'MY', ...black]);
      expect(pairs.length).toBe(6 * (4 - black.filter((key) => key.length === 2).length));
      // Without trapping and surface, on the same sets: two films 7.7 to 9.7 / 13 to 16, CMY 14 to 16.
      expect(quantile(pairs, 0.5)).toBeLessThan(2.2);
      expect(quantile(pairs, 0.95)).toBeLessThan(5);
      expect(quantile(cmy, 0.5)).toBeLessThan(5);
      expect(quantile(more, 0.5)).toBeLessThan(3.2);
      // What it says of itself is no better than what it does; a fit without one of three overprints misses
      // that one by more than a fit with all of them misses the rest.
      const said = looMeans.reduce((sum, mean) => sum + mean, 0) / looMeans.length;
      const all = [...pairs, ...cmy, ...more];
      const done = all.reduce((sum, miss) => sum + miss, 0) / all.length;
      expect(said).toBeGreaterThan(0.7 * done);
      expect(said).toBeLessThan(2.2 * done);
    },
    60_000,
  );

  it('should not hang on names, on the order of squares, on noise or on how colours are given', () => {
    const median = (change: Perturbation): number => quantile(missesOfRest(['CM', 'MY', 'YK'], change).pairs, 0.5);
    const plain = median({});
    const noise = choices(15);
    expect(median({ names: (film) => `Ink ${'YMCK'.indexOf(film)}` })).toBeCloseTo(plain, 6);
    expect(Math.abs(median({ reversed: true }) - plain)).toBeLessThan(0.05);
    // Two readings of one square differ by so much.
    expect(Math.abs(median({ read: (lab) => lab.map((value) => value + 0.2 * noise.gauss()) as Lab }) - plain)).toBeLessThan(0.5);
    expect(median({ asCurves: true })).toBeLessThan(3);
  }, 60_000);
});
