import { describe, expect, it } from 'vitest';
import { labD50 } from '../../../src/engine/colour/lab.ts';
import { labUnderLamp } from '../../../src/engine/colour/lamp-light.ts';
import { BANDS, WAVELENGTHS_NM } from '../../../src/engine/colour/weights.ts';

/** Tristimulus values of a curve under the lamp, from its Lab and the tabulated white. */
function xyzOf([l, a, b]: readonly [number, number, number], white: readonly number[]): number[] {
  const fy = (l + 16) / 116;
  return [fy + a / 500, fy, fy - b / 200].map((f, i) => white[i]! * (f ** 3 > 216 / 24389 ? f ** 3 : (116 * f - 16) / (24389 / 27)));
}

describe('labUnderLamp', () => {
  // CIE 015: white of illuminant A, 2°: 109.85, 100, 35.58 (from memory). Planck's law at 2,856 K (c2 = 14,388 µm K)
  // is the same light by another formula; a ramp is summed with it here in steps of 10 nm.
  it('should show a curve as a sum over the light of a black body at 2,856 K does', () => {
    const power = (nm: number): number => nm ** -5 / Math.expm1(1.4388e7 / (2856 * nm));
    const sums = (reflectance: readonly number[]): number[] => {
      // Observer from its published analytic fit: Wyman, Sloan and Shirley (2013), multi-lobe, within 1 % of the table.
      const lobe = (nm: number, at: number, left: number, right: number): number =>
        Math.exp(-0.5 * ((nm - at) * (nm < at ? left : right)) ** 2);
      const x = (nm: number): number =>
        0.362 * lobe(nm, 442, 0.0624, 0.0374) + 1.056 * lobe(nm, 599.8, 0.0264, 0.0323) - 0.065 * lobe(nm, 501.1, 0.049, 0.0382);
      const y = (nm: number): number => 0.821 * lobe(nm, 568.8, 0.0213, 0.0247) + 0.286 * lobe(nm, 530.9, 0.0613, 0.0322);
      const z = (nm: number): number => 1.217 * lobe(nm, 437, 0.0845, 0.0278) + 0.681 * lobe(nm, 459, 0.0385, 0.0725);
      const all = WAVELENGTHS_NM.reduce((sum, nm) => sum + y(nm) * power(nm), 0);
      return [x, y, z].map((f) => (100 * WAVELENGTHS_NM.reduce((sum, nm, i) => sum + f(nm) * power(nm) * reflectance[i]!, 0)) / all);
    };
    const white = [109.85, 100, 35.58];
    sums(new Array<number>(BANDS).fill(1)).forEach((value, i) => expect(Math.abs(value / white[i]! - 1)).toBeLessThan(0.02));
    const ramp = WAVELENGTHS_NM.map((nm) => (nm - 380) / 350);
    const found = xyzOf(labUnderLamp(ramp), white);
    sums(ramp).forEach((value, i) => expect(Math.abs(value - found[i]!)).toBeLessThan(0.7));
  });

  it('should keep greys grey and as light as they are', () => {
    expect(labUnderLamp(new Array<number>(BANDS).fill(0.5))[1]).toBeCloseTo(0, 9);
    expect(labUnderLamp(new Array<number>(BANDS).fill(0.5))[0]).toBeCloseTo(labD50(new Array<number>(BANDS).fill(0.5))[0], 9);
  });
});
