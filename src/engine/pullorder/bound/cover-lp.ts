import { defined, f64, num } from '../../base/at.ts';
import type { Meter } from '../model.ts';
import type { CoverRow } from './cover.ts';

/** Weights of rows are rounded down to this part of 1 before they are trusted. */
const GRAIN = 1e6;
const TINY = 1e-9;

/** What a covering programme of fractions shows. */
export interface CoverLp {
  /** No choice of whole numbers that keeps all rows has a smaller total. */
  bound: number;
  /** A choice of fractions that keeps all rows with the least total, up to rounding; by letter. */
  counts: Float64Array;
}

/**
 * Lower bound of the covering programme (see `coverBound`) when counts may be fractions, by the
 * simplex method on its dual: weights of rows, such that the weights over each letter sum to at
 * most 1, that are worth most. Weights found in floating point are rounded down to whole
 * millionths, and the bound is worked out from those in whole numbers, so it holds exactly.
 * @param counts fewest times of each letter
 * @param maxPivots steps after which the weights found so far are taken
 */
export function coverLp(counts: readonly number[], rows: readonly CoverRow[], maxPivots: number, meter: Meter): CoverLp {
  const letters = counts.flatMap((n, l) => (n > 0 ? [l] : []));
  const place = new Map(letters.map((l, i) => [l, i]));
  const sumOf = (row: CoverRow): number => row.letters.reduce((n, l) => n + num(counts, l), 0);
  const own = rows.filter((row) => row.least > sumOf(row) && row.letters.every((l) => place.has(l)));
  const m = letters.length;
  const n = own.length;
  // Columns: rows of the programme, then slacks, then the right side. The last line is the worth.
  const width = n + m + 1;
  const tableau = new Float64Array((m + 1) * width);
  own.forEach((row, j) => {
    for (const l of row.letters) tableau[defined(place.get(l)) * width + j] = 1;
    tableau[m * width + j] = row.least - sumOf(row);
  });
  for (let i = 0; i < m; i++) {
    tableau[i * width + n + i] = 1;
    tableau[i * width + width - 1] = 1;
  }
  const basis = Array.from({ length: m }, (_, i) => n + i);
  meter.units += (m * width) >> 6;
  for (let pivot = 0; pivot < maxPivots; pivot++) {
    let enter = -1;
    let most = TINY;
    // The steepest column first; after many steps the first one, which cannot go round in circles.
    for (let j = 0; j < width - 1; j++) {
      const worth = f64(tableau, m * width + j);
      if (worth <= most) continue;
      enter = j;
      if (pivot > 0.8 * maxPivots) break;
      most = worth;
    }
    if (enter < 0) break;
    let leave = -1;
    let least = Infinity;
    for (let i = 0; i < m; i++) {
      const value = f64(tableau, i * width + enter);
      if (value <= TINY) continue;
      const ratio = f64(tableau, i * width + width - 1) / value;
      if (ratio < least - TINY || (ratio < least + TINY && leave >= 0 && num(basis, i) < num(basis, leave))) {
        least = Math.min(least, ratio);
        leave = i;
      }
    }
    if (leave < 0) break;
    const by = f64(tableau, leave * width + enter);
    for (let j = 0; j < width; j++) tableau[leave * width + j] = f64(tableau, leave * width + j) / by;
    for (let i = 0; i <= m; i++) {
      const factor = f64(tableau, i * width + enter);
      if (i === leave || factor === 0) continue;
      for (let j = 0; j < width; j++) tableau[i * width + j] = f64(tableau, i * width + j) - factor * f64(tableau, leave * width + j);
    }
    basis[leave] = enter;
    meter.units += (m * width) >> 5;
  }
  const weights = new Float64Array(n);
  basis.forEach((j, i) => {
    if (j < n) weights[j] = Math.max(0, Math.floor(f64(tableau, i * width + width - 1) * GRAIN));
  });
  const over = new Float64Array(m);
  own.forEach((row, j) => row.letters.forEach((l) => (over[defined(place.get(l))]! += f64(weights, j))));
  const most = over.reduce((a, b) => Math.max(a, b), GRAIN);
  let worth = 0;
  own.forEach((row, j) => {
    // Scaled down where rounding left a letter with more than 1.
    const weight = most > GRAIN ? Math.floor((f64(weights, j) * GRAIN) / most) : f64(weights, j);
    worth += weight * (row.least - sumOf(row));
  });
  const base = counts.reduce((a, b) => a + b, 0);
  const prices = Float64Array.from(counts);
  letters.forEach((l, i) => (prices[l] = num(counts, l) + Math.max(0, -f64(tableau, m * width + n + i))));
  // Rounded down, weights worth 3 show 2.99…; what is worth more than 2 still shows 3.
  return { bound: base + Math.ceil(worth / GRAIN), counts: prices };
}
