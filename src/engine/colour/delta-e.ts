import { f64 } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import type { Lab } from './lab.ts';

const DEG = Math.PI / 180;
const POW25_7 = 25 ** 7;

/**
 * Colour difference CIEDE2000 with all weights 1.
 * @param lab1 CIELAB
 * @param lab2 CIELAB with the same white
 * @returns ΔE00, ≥ 0, the same both ways round
 * @throws EngineError 'colour.not-a-colour' when one of them is not three numbers
 * Source: Sharma, Wu, Dalal (2005), Color Res. Appl. 30(1), 21–30; check values in
 * tests/published/colour/ciede2000-sharma34.json
 */
export function deltaE2000(lab1: Readonly<Lab>, lab2: Readonly<Lab>): number {
  const deltaE = lab1 && lab2 ? deltaE2000Values(lab1[0], lab1[1], lab1[2], lab2[0], lab2[1], lab2[2]) : Number.NaN;
  if (Number.isNaN(deltaE)) {
    throw new EngineError(
      'colour.not-a-colour',
      `Two colours of three numbers each, L, a and b, are needed; these are ${JSON.stringify(lab1)} and ${JSON.stringify(lab2)}.`,
    );
  }
  return deltaE;
}

/**
 * The same as deltaE2000 from plain numbers, for hot paths: allocates nothing.
 * @param l1 L, a1, b1 of one colour, then of the other
 */
// oxlint-disable-next-line max-params -- plain numbers, so that hot loops allocate nothing
export function deltaE2000Values(l1: number, a1: number, b1: number, l2: number, a2: number, b2: number): number {
  deltaE2000Parts(l1, a1, b1, l2, a2, b2, parts);
  const chroma = f64(parts, 1);
  const hue = f64(parts, 2);
  const square = f64(parts, 0) * f64(parts, 0) + chroma * chroma + hue * hue + f64(parts, 3) * chroma * hue;
  // Rounding can leave a hair below zero where both colours are the same.
  return Math.sqrt(Math.max(0, square));
}

const parts = new Float64Array(4);

/**
 * The parts of CIEDE2000, for searches that need more than their sum.
 * @param out receives the weighted differences ΔL′/S_L, ΔC′/S_C and ΔH′/S_H, from the first colour
 *   to the second, and the rotation R_T; ΔE00² = L² + C² + H² + R_T·C·H
 */
// oxlint-disable-next-line max-params -- plain numbers, so that hot loops allocate nothing
export function deltaE2000Parts(l1: number, a1: number, b1: number, l2: number, a2: number, b2: number, out: Float64Array): void {
  const meanC = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2;
  const g = 1.5 - 0.5 * Math.sqrt(seventhShare(meanC));
  const ap1 = g * a1;
  const ap2 = g * a2;
  const c1 = Math.sqrt(ap1 * ap1 + b1 * b1);
  const c2 = Math.sqrt(ap2 * ap2 + b2 * b2);
  const grey = c1 * c2 === 0;
  const h1 = hueDeg(ap1, b1);
  const h2 = hueDeg(ap2, b2);

  let dh = 0;
  let meanH = h1 + h2;
  if (!grey) {
    dh = h2 - h1;
    const far = Math.abs(dh) > 180;
    if (far) dh += dh > 0 ? -360 : 360;
    meanH = far ? (meanH < 360 ? meanH + 360 : meanH - 360) / 2 : meanH / 2;
  }

  const dL = l2 - l1;
  const dC = c2 - c1;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((dh / 2) * DEG);
  const meanCp = (c1 + c2) / 2;
  const fromMid = ((l1 + l2) / 2 - 50) ** 2;
  const t =
    1 -
    0.17 * Math.cos((meanH - 30) * DEG) +
    0.24 * Math.cos(2 * meanH * DEG) +
    0.32 * Math.cos((3 * meanH + 6) * DEG) -
    0.2 * Math.cos((4 * meanH - 63) * DEG);
  out[0] = dL / (1 + (0.015 * fromMid) / Math.sqrt(20 + fromMid));
  out[1] = dC / (1 + 0.045 * meanCp);
  out[2] = dH / (1 + 0.015 * meanCp * t);
  const around = (meanH - 275) / 25;
  const turn = Math.sin(60 * Math.exp(-around * around) * DEG);
  out[3] = -2 * Math.sqrt(seventhShare(meanCp)) * turn;
}

function seventhShare(c: number): number {
  const c2 = c * c;
  const c7 = c2 * c2 * c2 * c;
  return c7 / (c7 + POW25_7);
}

function hueDeg(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const h = Math.atan2(b, a) / DEG;
  return h < 0 ? h + 360 : h;
}
