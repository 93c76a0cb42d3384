import { f64 } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/colour/colour.ts';
import type { Lab } from './lab.ts';
import { turnOfBlues } from './rotation.ts';

const DEG = Math.PI / 180;
export const POW25_7 = 25 ** 7;

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
    throw new EngineError('colour.not-a-colour', say.twoColoursOfThree(JSON.stringify(lab1), JSON.stringify(lab2)));
  }
  return deltaE;
}

/**
 * The same as deltaE2000 from plain numbers: allocates nothing that stays.
 * @param l1 L, a1, b1 of one colour, then of the other
 */
// oxlint-disable-next-line max-params -- plain numbers, so that hot loops allocate nothing
export function deltaE2000Values(l1: number, a1: number, b1: number, l2: number, a2: number, b2: number): number {
  setPair(l1, a1, b1, l2, a2, b2);
  return deltaE2000At(pair, 0, pair, 3);
}

/**
 * The same as deltaE2000 of colours that lie in long lists, for the hottest loops: numbers with
 * fractions that go into a function are put on the heap one by one, places in a list are not.
 * @param i where the L of one colour lies, a and b behind it
 * @param j where that of the other lies
 */
export function deltaE2000At(one: Float64Array, i: number, two: Float64Array, j: number): number {
  compare(one, i, two, j);
  const chroma = f64(parts, 1);
  const hue = f64(parts, 2);
  const square = f64(parts, 0) * f64(parts, 0) + chroma * chroma + hue * hue + f64(parts, 3) * chroma * hue;
  // Rounding can leave a hair below zero where both colours are the same.
  return Math.sqrt(Math.max(0, square));
}

/**
 * The parts of CIEDE2000, for searches that need more than their sum.
 * @param out receives the weighted differences ΔL′/S_L, ΔC′/S_C and ΔH′/S_H, from the first colour
 *   to the second, and the rotation R_T; ΔE00² = L² + C² + H² + R_T·C·H
 */
// oxlint-disable-next-line max-params -- plain numbers, so that hot loops allocate nothing
export function deltaE2000Parts(l1: number, a1: number, b1: number, l2: number, a2: number, b2: number, out: Float64Array): void {
  setPair(l1, a1, b1, l2, a2, b2);
  compare(pair, 0, pair, 3);
  out.set(parts);
}

const pair = new Float64Array(6);
const parts = new Float64Array(4);

// oxlint-disable-next-line max-params -- plain numbers, so that nothing is allocated
function setPair(l1: number, a1: number, b1: number, l2: number, a2: number, b2: number): void {
  pair[0] = l1;
  pair[1] = a1;
  pair[2] = b1;
  pair[3] = l2;
  pair[4] = a2;
  pair[5] = b2;
}

/** Products of chromas below this are greys, which have no hue. */
export const GREY = 1e-100;

/**
 * Fills `parts`. The formulas are those of the source without its angles, which would take most of the
 * time: of two vectors of one length that are an angle apart, the sum lies along the mean hue and
 * the difference across it, and what is asked of the mean hue are cosines of its multiples. One division serves
 * all three weights. `delta-e-lanes.ts` does the same steps in the same order for two pairs at once.
 */
function compare(one: Float64Array, i: number, two: Float64Array, j: number): void {
  const b1 = f64(one, i + 2);
  const b2 = f64(two, j + 2);
  const meanC = (chromaOf(f64(one, i + 1), b1) + chromaOf(f64(two, j + 1), b2)) * 0.5;
  const g = 1.5 - 0.5 * seventhShare(meanC);
  const a1 = g * f64(one, i + 1);
  const a2 = g * f64(two, j + 1);
  const c1 = chromaOf(a1, b1);
  const c2 = chromaOf(a2, b2);
  const mean = (c1 + c2) * 0.5;
  const both = c1 * c2;
  let cos = 1;
  let sin = 0;
  let hue = 0;
  if (both > GREY) {
    const along = a1 * a2 + b1 * b2;
    const across = a1 * b2 - a2 * b1;
    // ΔH′² is 4·C1·C2·sin²(Δh/2); 1 − cos Δh would lose the digits of small angles.
    const most = both + Math.abs(along);
    const root = Math.sqrt(both);
    const perLength = 1 / (Math.sqrt(most * 2) * root);
    if (along >= 0) {
      cos = (c2 * a1 + c1 * a2) * perLength;
      sin = (c2 * b1 + c1 * b2) * perLength;
      hue = across * 2 * root * perLength;
    } else {
      cos = (c1 * b2 - c2 * b1) * perLength;
      sin = (c2 * a1 - c1 * a2) * perLength;
      hue = most * 2 * root * perLength;
      // Of hues that are opposite the mean lies between 90° and 270°, whichever comes first.
      if (across < 0 || (across === 0 && (cos > 0 || (cos === 0 && sin <= 0)))) {
        cos = -cos;
        sin = -sin;
        hue = -hue;
      }
    }
  } else {
    const length = chromaOf(a1 + a2, b1 + b2);
    if (length > 0) {
      cos = (a1 + a2) / length;
      sin = (b1 + b2) / length;
    }
  }
  const mid = (f64(one, i) + f64(two, j)) * 0.5 - 50;
  const midSquare = mid * mid;
  const width = Math.sqrt(20 + midSquare);
  const sL = width + 0.015 * midSquare;
  const sC = 1 + 0.045 * mean;
  const sH = 1 + 0.015 * mean * hueWeight(cos, sin);
  const per = 1 / (sL * sC * sH);
  parts[0] = (f64(two, j) - f64(one, i)) * width * (sC * sH) * per;
  parts[1] = (c2 - c1) * (sL * sH) * per;
  parts[2] = hue * (sL * sC) * per;
  parts[3] = -2 * seventhShare(mean) * turnOfBlues(cos, sin);
}

function chromaOf(a: number, b: number): number {
  return Math.sqrt(a * a + b * b);
}

/** Cosines and sines of the angles in T of CIEDE2000. */
export const [COS_30, SIN_30] = [Math.cos(30 * DEG), Math.sin(30 * DEG)];
export const [COS_6, SIN_6] = [Math.cos(6 * DEG), Math.sin(6 * DEG)];
export const [COS_63, SIN_63] = [Math.cos(63 * DEG), Math.sin(63 * DEG)];

/** T of CIEDE2000, from cosine and sine of the mean hue. */
function hueWeight(c1: number, s1: number): number {
  const c2 = c1 * c1 - s1 * s1;
  const s2 = 2 * s1 * c1;
  const c3 = c2 * c1 - s2 * s1;
  const s3 = s2 * c1 + c2 * s1;
  const c4 = c2 * c2 - s2 * s2;
  const s4 = 2 * s2 * c2;
  return 1 - 0.17 * (c1 * COS_30 + s1 * SIN_30) + 0.24 * c2 + 0.32 * (c3 * COS_6 - s3 * SIN_6) - 0.2 * (c4 * COS_63 + s4 * SIN_63);
}

/** √(C⁷ ÷ (C⁷ + 25⁷)) */
function seventhShare(c: number): number {
  const c2 = c * c;
  const c7 = c2 * c2 * c2 * c;
  return Math.sqrt(c7 / (c7 + POW25_7));
}
