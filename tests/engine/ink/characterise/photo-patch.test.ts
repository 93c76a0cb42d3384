import { describe, expect, it } from 'vitest';
import { linearFromSrgb } from '../../../../src/engine/colour/encode.ts';
import { averagePatch, onPhoto, patchReach } from '../../../../src/engine/ink/characterise/photo-patch.ts';

describe('averagePatch', () => {
  const pixels = { width: 4, height: 4, data: new Uint8ClampedArray(64).fill(255) };
  it('should average light, not code values', () => {
    // A half-black, half-white square has half the light: code 188, as IEC 61966-2-1 encodes 0.5.
    pixels.data.fill(0, 0, 32);
    const [r] = averagePatch(pixels, 1, 1, 10);
    expect(r).toBe(188);
    expect(linearFromSrgb(r / 255)).toBeCloseTo(0.5, 2);
  });
  it('should leave out what lies off the photo', () => {
    expect(averagePatch(pixels, 0, 3, 1)).toEqual([255, 255, 255]);
  });
  it('should keep the loupe on the photo', () => {
    expect(onPhoto(pixels, -5, 2.4)).toEqual([0, 2]);
    expect(onPhoto(pixels, 9, 9)).toEqual([3, 3]);
    expect(patchReach({ width: 1600, height: 1200 })).toBe(12);
  });
});
