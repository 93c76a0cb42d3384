import { describe, expect, it } from 'vitest';
import { pxPerMmFromAfar } from '../../../../src/engine/stack/look/from-afar.ts';

/** Angle that something takes up, straight on, rad. */
const angle = (sizeMm: number, distanceMm: number): number => 2 * Math.atan(sizeMm / 2 / distanceMm);

describe('pxPerMmFromAfar', () => {
  it('should show a print at its true size from where the screen is', () => {
    expect(pxPerMmFromAfar({ pxPerMm: 3.78, eyeMm: 600 }, 600)).toBeCloseTo(3.78, 12);
  });

  it.each([500, 2000, 8000])('should take up the angle that the print takes up at %i mm', (distanceMm) => {
    const screen = { pxPerMm: 96 / 25.4, eyeMm: 600 };
    for (const sizeMm of [1, 560, 760]) {
      const onGlassMm = (sizeMm * pxPerMmFromAfar(screen, distanceMm)) / screen.pxPerMm;
      expect(angle(onGlassMm, screen.eyeMm)).toBeCloseTo(angle(sizeMm, distanceMm), 12);
    }
  });

  // The moon's disc is about as wide as a coin of 16.25 mm at arm's length of 0.6 m × 3: 0.518° in tables.
  it('should make the moon half a degree', () => {
    const px = 3_474_800e3 * pxPerMmFromAfar({ pxPerMm: 1, eyeMm: 1000 }, 384_400e6);
    expect((angle(px, 1000) * 180) / Math.PI).toBeCloseTo(0.518, 3);
  });

  it('should refuse what is no distance', () => {
    for (const bad of [0, -1, Number.NaN]) expect(() => pxPerMmFromAfar({ pxPerMm: 3.78, eyeMm: 600 }, bad)).toThrow(/above 0/u);
    expect(() => pxPerMmFromAfar({ pxPerMm: 0, eyeMm: 600 }, 1)).toThrow(/above 0/u);
  });
});
