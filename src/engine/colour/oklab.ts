import { f64 } from '../base/at.ts';

const one = new Float64Array(3);

/**
 * Oklab of linear sRGB, for perceptual distances of what the screen shows; no table, no adaptation.
 * @param r linear light, 0–1, not clipped
 * @param g linear light
 * @param b linear light
 * @returns [L 0–1, a, b]
 * Source: Björn Ottosson, "A perceptual color space for image processing" (2020, constants of 2021).
 */
export function oklabFromLinearSrgb(r: number, g: number, b: number): [number, number, number] {
  one[0] = r;
  one[1] = g;
  one[2] = b;
  setOklab(one, 0, one);
  return [f64(one, 0), f64(one, 1), f64(one, 2)];
}

/**
 * The same of a list, for many colours: nothing is made for each.
 * @param out receives L, a and b from `at` on
 * @param linear holds r, g and b from there on; may be `out`
 */
export function setOklab(out: Float64Array, at: number, linear: Float64Array): void {
  const r = f64(linear, at);
  const g = f64(linear, at + 1);
  const b = f64(linear, at + 2);
  const l = Math.cbrt(0.4122214708 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  out[at] = 0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s;
  out[at + 1] = 1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s;
  out[at + 2] = 0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s;
}
