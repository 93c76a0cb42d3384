import { defined, num } from '../base/at.ts';
import { BANDS, WAVELENGTHS_NM } from './weights.ts';

// Wavelengths in files are rounded, but never by so much that another band could be meant.
const SAME_NM = 0.05;

/**
 * A spectrum on other wavelengths brought to the bands of this engine.
 * @param nm wavelengths, rising, at least 2, any steps
 * @param values one a wavelength
 * @returns 36 values, 380 to 730 nm; where a wavelength is given its value is taken as it stands, so
 *   that steps of 5 nm are sampled and not averaged; between evenly spaced ones Sprague's fifth-order
 *   polynomial, between others Lagrange's cubic, kept at 0 or more and no higher than the larger of 1
 *   and the highest value; beyond both ends the outermost value is repeated
 * Source: CIE 167:2005 recommends Sprague for even steps (coefficients from memory, checked on
 * fourth powers); ASTM E2022 the cubic (from memory).
 */
export function bandsFromSpectrum(nm: readonly number[], values: ArrayLike<number>): Float64Array {
  const out = new Float64Array(BANDS);
  const last = nm.length - 1;
  let top = 1;
  for (let i = 0; i <= last; i++) top = Math.max(top, num(values, i));
  const between = evenStep(nm) && nm.length >= 6 ? sprague(values) : null;
  let at = 0;
  for (let band = 0; band < BANDS; band++) {
    const wanted = num(WAVELENGTHS_NM, band);
    while (at < last && num(nm, at + 1) <= wanted + SAME_NM) at++;
    if (wanted <= num(nm, 0)) out[band] = num(values, 0);
    else if (at === last || Math.abs(num(nm, at) - wanted) <= SAME_NM) out[band] = num(values, at);
    else {
      const value = between ? between(at, (wanted - num(nm, at)) / (num(nm, at + 1) - num(nm, at))) : lagrange(nm, values, at, wanted);
      out[band] = Math.min(top, Math.max(0, value));
    }
  }
  return out;
}

function evenStep(nm: readonly number[]): boolean {
  const step = (defined(nm.at(-1)) - num(nm, 0)) / (nm.length - 1);
  return nm.every((value, i) => Math.abs(value - num(nm, 0) - i * step) <= SAME_NM);
}

/** The polynomial between value i and the next, x from 0 to 1. */
function sprague(values: ArrayLike<number>): (i: number, x: number) => number {
  const n = values.length;
  // Two values beyond each end, as CIE 167 makes them.
  const beyond = (weights: readonly number[], from: number, step: number): number =>
    weights.reduce((sum, weight, k) => sum + weight * num(values, from + k * step), 0) / 209;
  const OUTER = [884, -1960, 3033, -2648, 1080, -180];
  const INNER = [508, -540, 488, -367, 144, -24];
  const y = new Float64Array(n + 4);
  y[0] = beyond(OUTER, 0, 1);
  y[1] = beyond(INNER, 0, 1);
  for (let i = 0; i < n; i++) y[i + 2] = num(values, i);
  y[n + 2] = beyond(INNER, n - 1, -1);
  y[n + 3] = beyond(OUTER, n - 1, -1);
  return (i, x) => {
    const [a, b, c, d, e, f] = y.subarray(i, i + 6) as unknown as [number, number, number, number, number, number];
    const a1 = 2 * a - 16 * b + 16 * d - 2 * e;
    const a2 = -a + 16 * b - 30 * c + 16 * d - e;
    const a3 = -9 * a + 39 * b - 70 * c + 66 * d - 33 * e + 7 * f;
    const a4 = 13 * a - 64 * b + 126 * c - 124 * d + 61 * e - 12 * f;
    const a5 = 5 * (-a + 5 * b - 10 * c + 10 * d - 5 * e + f);
    return c + ((((a5 * x + a4) * x + a3) * x + a2) * x + a1) * (x / 24);
  };
}

function lagrange(nm: readonly number[], values: ArrayLike<number>, at: number, wanted: number): number {
  const first = Math.max(0, Math.min(at - 1, nm.length - 4));
  const end = Math.min(nm.length, first + 4);
  let sum = 0;
  for (let i = first; i < end; i++) {
    let weight = 1;
    for (let j = first; j < end; j++) if (j !== i) weight *= (wanted - num(nm, j)) / (num(nm, i) - num(nm, j));
    sum += weight * num(values, i);
  }
  return sum;
}
