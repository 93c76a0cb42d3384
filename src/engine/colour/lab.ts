import { num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { roundTo } from '../base/units.ts';
import { say } from '../words/en/colour/colour.ts';
import { BANDS, WEIGHTS_D50, WEIGHTS_D65, type ObserverWeights } from './weights.ts';

/** CIELAB, D50, CIE 1931 2° observer: [L 0–100, a, b]. */
export type Lab = [number, number, number];

/** CIE tristimulus values, Y = 100 for a perfect white. */
export type Xyz = [number, number, number];

/** White of Lab: what the sums give for a reflectance of 1, never a rounded table value. */
export const WHITE_D50: Readonly<Xyz> = xyzFromWeights(WEIGHTS_D50, new Float64Array(BANDS).fill(1));

// CIE 15:2004, 8.2.1: the exact rationals, so that the two branches meet without a step.
export const EPSILON = 216 / 24389;
export const KAPPA = 24389 / 27;

/**
 * Tristimulus values of a surface under D50.
 * @param reflectance 36 bands from 380 to 730 nm, 0–1
 * @returns [X, Y, Z], Y = 100 for a perfect white
 * @throws EngineError 'colour.bands' for another number of bands, or one without a number
 */
export function xyzD50(reflectance: ArrayLike<number>): Xyz {
  return xyzFromWeights(WEIGHTS_D50, reflectance);
}

/**
 * Tristimulus values of a surface under D65.
 * @param reflectance 36 bands from 380 to 730 nm, 0–1
 * @returns [X, Y, Z], Y = 100 for a perfect white
 * @throws EngineError 'colour.bands' for another number of bands, or one without a number
 */
export function xyzD65(reflectance: ArrayLike<number>): Xyz {
  return xyzFromWeights(WEIGHTS_D65, reflectance);
}

/**
 * CIELAB of a surface under D50, 2° observer.
 * @param reflectance 36 bands from 380 to 730 nm, 0–1
 * @returns [L, a, b], L 0–100, white = the sum of the same weights
 * @throws EngineError 'colour.bands' for another number of bands, or one without a number
 */
export function labD50(reflectance: ArrayLike<number>): Lab {
  const [x, y, z] = xyzD50(reflectance);
  return labFromXyzD50(x, y, z);
}

/**
 * CIELAB from D50 tristimulus values. Source: CIE 15:2004, 8.2.1.
 * @param x X, Y = 100 scale
 * @param y Y
 * @param z Z
 */
export function labFromXyzD50(x: number, y: number, z: number): Lab {
  const fx = labCurve(x / WHITE_D50[0]);
  const fy = labCurve(y / WHITE_D50[1]);
  const fz = labCurve(z / WHITE_D50[2]);
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

/**
 * D50 tristimulus values from CIELAB, the inverse of labFromXyzD50.
 * @param lab D50/2°
 * @returns [X, Y, Z], Y = 100 for a perfect white
 */
export function xyzD50FromLab(lab: Readonly<Lab>): Xyz {
  const fy = (lab[0] + 16) / 116;
  return [
    WHITE_D50[0] * inverseLabCurve(fy + lab[1] / 500),
    WHITE_D50[1] * inverseLabCurve(fy),
    WHITE_D50[2] * inverseLabCurve(fy - lab[2] / 200),
  ];
}

/** A colour to hundredths, as fields show and keep it. */
export function roundedLab([l, a, b]: Readonly<Lab>): Lab {
  return [roundTo(l, 2), roundTo(a, 2), roundTo(b, 2)];
}

/** The curve of CIELAB from a share of the white. Source: CIE 15:2004, 8.2.1. */
export function labCurve(ratio: number): number {
  return ratio > EPSILON ? Math.cbrt(ratio) : (KAPPA * ratio + 16) / 116;
}

function inverseLabCurve(f: number): number {
  const cube = f * f * f;
  return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
}

function xyzFromWeights(weights: ObserverWeights, reflectance: ArrayLike<number>): Xyz {
  if (reflectance?.length !== BANDS) {
    throw new EngineError('colour.bands', say.reflectanceNeedsBands380(BANDS, reflectance?.length ?? say.none));
  }
  let x = 0;
  let y = 0;
  let z = 0;
  for (let band = 0; band < BANDS; band++) {
    const r = num(reflectance, band);
    x += num(weights.x, band) * r;
    y += num(weights.y, band) * r;
    z += num(weights.z, band) * r;
  }
  // One look at the sum finds what is no number in any band.
  if (Number.isNaN(x + y + z)) {
    const band = Array.from(reflectance).findIndex((r) => !Number.isFinite(r));
    throw new EngineError('colour.bands', say.reflectanceNeedsNumberIn(band + 1, reflectance[band] ?? ''));
  }
  return [x, y, z];
}
