import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packRing, unpackRing } from '../../../src/engine/geometry/packed-ring.ts';

/** Tenths of a µm, ten metres either way. */
const steps = fc.integer({ min: -100_000_000, max: 100_000_000 });

describe('a packed ring', () => {
  it('should come back number for number', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(steps, steps), { maxLength: 60 }), (corners) => {
        const ring = corners.flat().map((step) => step / 10_000);
        expect(unpackRing(packRing(ring))).toEqual(ring);
      }),
    );
  });

  it('should be short along a cubic curve cut at equal steps', () => {
    // A cubic has one third difference, so that from the fourth corner on each number is a sign, two with rounding.
    const curve = Array.from({ length: 101 }, (_, i) => i / 100).flatMap((t) => [60 * t ** 3 - 20 * t ** 2, 45 * t]);
    const ring = curve.map((value) => Math.round(value * 10_000) / 10_000);
    expect(packRing(ring).length).toBeLessThan(2.2 * ring.length);
    expect(packRing(ring).length).toBeLessThan(ring.join().length / 3);
  });
});
