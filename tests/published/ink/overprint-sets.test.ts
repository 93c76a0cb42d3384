import { describe, expect, it } from 'vitest';
import { missesOfRest, quantile } from './overprint-sets.ts';

// Measured overprints of six published characterisation data sets; their source is in the file itself.
describe('fitFilms on published process overprints', () => {
  it.each([[['CK']], [['MK']], [['YK']], [['CK', 'CYK']]])(
    'should predict what was not fitted from the solids, CM, MY and %s',
    (black) => {
      const { pairs, cmy, more, looMeans } = missesOfRest(['CM', 'MY', ...black]);
      expect(pairs.length).toBe(6 * (4 - black.filter((key) => key.length === 2).length));
      // Without trapping and surface, on the same sets: two films 7.7 to 9.7 / 13 to 16, CMY 14 to 16.
      expect(quantile(pairs, 0.5)).toBeLessThan(2.7);
      expect(quantile(pairs, 0.95)).toBeLessThan(6);
      expect(quantile(cmy, 0.5)).toBeLessThan(5);
      expect(quantile(more, 0.5)).toBeLessThan(4);
      // What it says of itself is no better than what it does.
      const said = looMeans.reduce((sum, mean) => sum + mean, 0) / looMeans.length;
      const all = [...pairs, ...cmy, ...more];
      const done = all.reduce((sum, miss) => sum + miss, 0) / all.length;
      expect(said).toBeGreaterThan(0.7 * done);
      expect(said).toBeLessThan(1.5 * done);
    },
    60_000,
  );
});
