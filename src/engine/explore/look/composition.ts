import { f64, num } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';
import { fieldMeans } from './field-means.ts';

/** Fields in which it is seen how much stands off the paper. */
const FIELDS = { columns: 8, rows: 8 };
const COUNT = FIELDS.columns * FIELDS.rows;
/** What differs from the paper by this much (OKLab) stands off it wholly: a choice of ours. */
const STANDS_OFF = 0.25;
/** A silhouette that is another one all over counts as an OKLab difference of so much all over; a choice of ours. */
const SILHOUETTE_WEIGHT = 0.5;
/** Where the weight of a print lies, and how far it spreads, from one edge of the sheet to the other, count so much; a choice of ours. */
const BALANCE_WEIGHT = 0.25;

/** Length of what `composition` gives. */
export const COMPOSITION_LENGTH = COUNT + 4;

/**
 * How a print lies on its sheet, whatever its colours: how much of each of 8 × 8 fields stands off the
 * paper, where the middle of that lies, and how far it spreads either way.
 * @param oklab cells × 3, longer than that; cell 0 is the paper
 * @returns COMPOSITION_LENGTH numbers from 0, whose Euclidean distance is on the scale of OKLab differences
 */
export function composition(map: CellMap, oklab: Float64Array): Float64Array {
  const weights = fieldMeans(map, FIELDS, standsOff(map, oklab), 1);
  const out = new Float64Array(COMPOSITION_LENGTH);
  const mean = [0, 0];
  const square = [0, 0];
  let all = 0;
  for (let at = 0; at < COUNT; at++) {
    const weight = f64(weights, at);
    out[at] = (weight * SILHOUETTE_WEIGHT) / Math.sqrt(COUNT);
    const place = [((at % FIELDS.columns) + 0.5) / FIELDS.columns, (Math.floor(at / FIELDS.columns) + 0.5) / FIELDS.rows];
    for (let i = 0; i < 2; i++) {
      mean[i] = num(mean, i) + weight * num(place, i);
      square[i] = num(square, i) + weight * num(place, i) ** 2;
    }
    all += weight;
  }
  for (let i = 0; i < 2; i++) {
    // An empty sheet has its weight in the middle.
    const middle = all > 0 ? num(mean, i) / all : 0.5;
    const spread = all > 0 ? Math.sqrt(Math.max(0, num(square, i) / all - middle * middle)) : 0;
    out[COUNT + i] = middle * BALANCE_WEIGHT;
    out[COUNT + 2 + i] = spread * BALANCE_WEIGHT;
  }
  return out;
}

/** How far each cell stands off the paper, 0–1. */
function standsOff({ cells }: CellMap, oklab: Float64Array): Float64Array {
  const [l, a, b] = [f64(oklab, 0), f64(oklab, 1), f64(oklab, 2)];
  const out = new Float64Array(cells);
  for (let cell = 0, at = 0; cell < cells; cell++, at += 3) {
    out[cell] = Math.min(1, Math.hypot(f64(oklab, at) - l, f64(oklab, at + 1) - a, f64(oklab, at + 2) - b) / STANDS_OFF);
  }
  return out;
}
