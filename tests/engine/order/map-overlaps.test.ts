import { describe, expect, it } from 'vitest';
import { mapOverlaps } from '../../../src/engine/order/map-overlaps.ts';
import { overlapsOf } from '../../../src/engine/order/overlaps.ts';
import { smallProject } from '../../helpers/small-project.ts';

describe('mapOverlaps', () => {
  it('should tell pulls of one ink that overlap from those that do not', () => {
    const { drawer, bench } = smallProject();
    const alike = bench.map((pull) => ({ ...pull, ink: 'rust' }));
    expect(mapOverlaps({ pulls: alike }, drawer).map(({ deltaE }) => deltaE)).toEqual([0, 0, 0]);
    expect(mapOverlaps({ pulls: [alike[0]!, { ...alike[1]!, dxMm: 400 }] }, drawer)).toEqual([]);
  });

  it('should find the pairs that exact areas find, as large within the rows of the map', () => {
    const { drawer, bench } = smallProject();
    const exact = overlapsOf({ pulls: bench }, drawer, { toleranceMm: 0, minDeltaE: 0 });
    const found = mapOverlaps({ pulls: bench }, drawer);
    expect(found.map(({ a, b }) => [a, b])).toEqual(exact.map(({ a, b }) => [a, b]));
    found.forEach(({ areaMm2, deltaE }, i) => {
      // Sides of the overlaps lie on whole mm here, as the rows do.
      expect(areaMm2).toBeCloseTo(exact[i]!.areaMm2, 3);
      expect(deltaE).toBeCloseTo(exact[i]!.deltaE, 6);
    });
  });
});
