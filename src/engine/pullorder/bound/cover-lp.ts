import { defined, f64, num } from '../../base/at.ts';
import type { Meter } from '../model.ts';
import type { CoverRow } from './cover.ts';
import { GRAIN, packing, type PackedSet } from './packing.ts';

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
  const own: PackedSet[] = [];
  for (const row of rows) {
    const lack = row.least - row.letters.reduce((n, l) => n + num(counts, l), 0);
    if (lack > 0 && row.letters.every((l) => place.has(l))) own.push({ lines: row.letters.map((l) => defined(place.get(l))), worth: lack });
  }
  const packed = packing(letters.length, own, maxPivots, meter);
  const prices = Float64Array.from(counts);
  letters.forEach((l, i) => (prices[l] = num(counts, l) + f64(packed.prices, i)));
  const base = counts.reduce((a, b) => a + b, 0);
  const worth = own.reduce((sum, set, j) => sum + f64(packed.weights, j) * set.worth, 0);
  // Rounded down, weights worth 3 show 2.99…; what is worth more than 2 still shows 3.
  return { bound: base + Math.ceil(worth / GRAIN), counts: prices };
}
