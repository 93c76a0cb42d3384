import { f64, num } from '../base/at.ts';
import { WHITE_D50, type Xyz } from './lab.ts';
import { BANDS, WEIGHTS_D50 } from './weights.ts';

/** A 3 × 3 matrix, row by row. */
type Matrix3 = readonly number[];

// IEC 61966-2-1: primaries and white of sRGB as x, y.
const SRGB_RED = [0.64, 0.33] as const;
const SRGB_GREEN = [0.3, 0.6] as const;
const SRGB_BLUE = [0.15, 0.06] as const;
const SRGB_WHITE = [0.3127, 0.329] as const;

// Bradford cone responses: Lam (1985); the same in ICC.1:2010, annex E.
const BRADFORD: Matrix3 = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];

/** Linear sRGB (0–1) from D50 XYZ (Y = 100): Bradford to the sRGB white, then the sRGB primaries. */
const LINEAR_SRGB_FROM_XYZ_D50: Matrix3 = linearFromXyzD50();

const XYZ_D50_FROM_LINEAR_SRGB: Matrix3 = inverse(LINEAR_SRGB_FROM_XYZ_D50);

/**
 * Linear sRGB straight from a reflectance: 36 bands × 3, [3 · band + channel].
 * Σ over bands of reflectance × entry; a perfect white gives 1, 1, 1, whatever the paper is.
 */
export const LINEAR_SRGB_FROM_BANDS: Float64Array = foldBands();

/**
 * Linear sRGB of a surface seen under D50, adapted to the screen's white; not clipped.
 * @param reflectance 36 bands from 380 to 730 nm, 0–1
 * @param out at least 3 numbers; receives r, g, b
 * @returns out
 */
export function linearSrgbFromReflectance(reflectance: ArrayLike<number>, out: Float64Array): Float64Array {
  let r = 0;
  let g = 0;
  let b = 0;
  for (let band = 0, i = 0; band < BANDS; band++, i += 3) {
    const value = num(reflectance, band);
    r += value * f64(LINEAR_SRGB_FROM_BANDS, i);
    g += value * f64(LINEAR_SRGB_FROM_BANDS, i + 1);
    b += value * f64(LINEAR_SRGB_FROM_BANDS, i + 2);
  }
  out[0] = r;
  out[1] = g;
  out[2] = b;
  return out;
}

/**
 * Linear sRGB of D50 tristimulus values; not clipped.
 * @param xyz Y = 100 for a perfect white
 */
export function linearSrgbFromXyzD50(xyz: Readonly<Xyz>): [number, number, number] {
  return times(LINEAR_SRGB_FROM_XYZ_D50, xyz);
}

/**
 * D50 tristimulus values (Y = 100) of linear sRGB, the inverse of linearSrgbFromXyzD50.
 * @param rgb linear light, 0–1
 */
export function xyzD50FromLinearSrgb(rgb: Readonly<[number, number, number]>): Xyz {
  return times(XYZ_D50_FROM_LINEAR_SRGB, rgb);
}

/**
 * Whether a linear sRGB colour can be shown on a screen without being changed.
 * @param slack how far outside 0–1 still counts as inside
 */
export function inSrgbGamut(r: number, g: number, b: number, slack = 1e-6): boolean {
  const top = 1 + slack;
  return r >= -slack && g >= -slack && b >= -slack && r <= top && g <= top && b <= top;
}

function linearFromXyzD50(): Matrix3 {
  const white = xyFull(SRGB_WHITE);
  const corners = [xyFull(SRGB_RED), xyFull(SRGB_GREEN), xyFull(SRGB_BLUE)];
  const columns: Matrix3 = [0, 1, 2].flatMap((row) => corners.map((corner) => num(corner, row)));
  const scale = times(inverse(columns), white);
  const xyzFromRgb = columns.map((value, i) => value * num(scale, i % 3));
  const from = times(BRADFORD, [WHITE_D50[0] / 100, WHITE_D50[1] / 100, WHITE_D50[2] / 100]);
  const to = times(BRADFORD, white);
  const adapted = BRADFORD.map((value, i) => {
    const row = Math.floor(i / 3);
    return (value * num(to, row)) / num(from, row);
  });
  const adapt = product(inverse(BRADFORD), adapted);
  return product(inverse(xyzFromRgb), adapt).map((value) => value / 100);
}

function foldBands(): Float64Array {
  const out = new Float64Array(BANDS * 3);
  for (let band = 0; band < BANDS; band++) {
    const xyz: Xyz = [num(WEIGHTS_D50.x, band), num(WEIGHTS_D50.y, band), num(WEIGHTS_D50.z, band)];
    out.set(times(LINEAR_SRGB_FROM_XYZ_D50, xyz), band * 3);
  }
  return out;
}

function xyFull(xy: readonly [number, number]): Xyz {
  return [xy[0] / xy[1], 1, (1 - xy[0] - xy[1]) / xy[1]];
}

function times(m: Matrix3, v: Readonly<Xyz>): Xyz {
  return [0, 3, 6].map((i) => num(m, i) * v[0] + num(m, i + 1) * v[1] + num(m, i + 2) * v[2]) as Xyz;
}

function product(a: Matrix3, b: Matrix3): Matrix3 {
  return a.map((_, i) => {
    const row = i - (i % 3);
    const column = i % 3;
    return num(a, row) * num(b, column) + num(a, row + 1) * num(b, column + 3) + num(a, row + 2) * num(b, column + 6);
  });
}

function inverse(m: Matrix3): Matrix3 {
  const [a, b, c, d, e, f, g, h, i] = m as [number, number, number, number, number, number, number, number, number];
  const det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  return [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ].map((value) => value / det);
}
