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
  const own: DualColumn[] = [];
  for (const row of rows) {
    const lack = row.least - row.letters.reduce((n, l) => n + num(counts, l), 0);
    if (lack > 0 && row.letters.every((l) => place.has(l))) own.push({ lines: row.letters.map((l) => defined(place.get(l))), worth: lack });
  }
  const tableau = new Tableau(letters.length, own, meter);
  tableau.solve(maxPivots);
  const prices = Float64Array.from(counts);
  letters.forEach((l, i) => (prices[l] = num(counts, l) + tableau.price(i)));
  const base = counts.reduce((a, b) => a + b, 0);
  return { bound: base + leastWorth(letters.length, own, tableau.weights()), counts: prices };
}

/** A row of the programme as a column of its dual: the lines of its letters, and how much the row lacks. */
interface DualColumn {
  lines: number[];
  worth: number;
}

/** What weights of rows show: whole numbers only, so that it holds exactly. */
function leastWorth(letters: number, columns: readonly DualColumn[], weights: Float64Array): number {
  const over = new Float64Array(letters);
  columns.forEach(({ lines }, j) => {
    for (const i of lines) over[i] = f64(over, i) + f64(weights, j);
  });
  const most = over.reduce((a, b) => Math.max(a, b), GRAIN);
  let worth = 0;
  columns.forEach((column, j) => {
    // Scaled down where rounding left a letter with more than 1.
    const weight = most > GRAIN ? Math.floor((f64(weights, j) * GRAIN) / most) : f64(weights, j);
    worth += weight * column.worth;
  });
  // Rounded down, weights worth 3 show 2.99…; what is worth more than 2 still shows 3.
  return Math.ceil(worth / GRAIN);
}

/** The simplex tableau: columns are rows of the programme, then slacks, then the right side; the last line is the worth. */
class Tableau {
  readonly #lines: number;
  readonly #columns: number;
  readonly #width: number;
  readonly #values: Float64Array;
  /** The column that each line stands for. */
  readonly #basis: number[];
  readonly #meter: Meter;

  constructor(lines: number, columns: readonly DualColumn[], meter: Meter) {
    const width = columns.length + lines + 1;
    const values = new Float64Array((lines + 1) * width);
    columns.forEach((column, j) => {
      for (const i of column.lines) values[i * width + j] = 1;
      values[lines * width + j] = column.worth;
    });
    for (let i = 0; i < lines; i++) {
      values[i * width + columns.length + i] = 1;
      values[i * width + width - 1] = 1;
    }
    this.#lines = lines;
    this.#columns = columns.length;
    this.#width = width;
    this.#values = values;
    this.#basis = Array.from({ length: lines }, (_, i) => columns.length + i);
    this.#meter = meter;
    meter.units += (lines * width) >> 6;
  }

  solve(maxPivots: number): void {
    for (let pivot = 0; pivot < maxPivots; pivot++) {
      // The steepest column first; after many steps the first one, which cannot go round in circles.
      const enter = this.#entering(pivot > 0.8 * maxPivots);
      if (enter < 0) return;
      const leave = this.#leaving(enter);
      if (leave < 0) return;
      this.#pivot(leave, enter);
      this.#basis[leave] = enter;
      this.#meter.units += (this.#lines * this.#width) >> 7;
    }
  }

  /** Weight of each column, rounded down to whole parts of `GRAIN`. */
  weights(): Float64Array {
    const weights = new Float64Array(this.#columns);
    this.#basis.forEach((j, i) => {
      if (j < this.#columns) weights[j] = Math.max(0, Math.floor(f64(this.#values, (i + 1) * this.#width - 1) * GRAIN));
    });
    return weights;
  }

  /** How much more than its own count a letter comes, by line. */
  price(line: number): number {
    return Math.max(0, -f64(this.#values, this.#lines * this.#width + this.#columns + line));
  }

  #entering(first: boolean): number {
    const values = this.#values;
    const at = this.#lines * this.#width;
    let enter = -1;
    let most = TINY;
    for (let j = 0; j < this.#width - 1; j++) {
      const worth = f64(values, at + j);
      if (worth <= most) continue;
      enter = j;
      if (first) return enter;
      most = worth;
    }
    return enter;
  }

  #leaving(enter: number): number {
    const values = this.#values;
    const width = this.#width;
    let leave = -1;
    let least = Infinity;
    for (let i = 0; i < this.#lines; i++) {
      const value = f64(values, i * width + enter);
      if (value <= TINY) continue;
      const ratio = f64(values, i * width + width - 1) / value;
      if (ratio < least - TINY || (ratio < least + TINY && leave >= 0 && num(this.#basis, i) < num(this.#basis, leave))) {
        least = Math.min(least, ratio);
        leave = i;
      }
    }
    return leave;
  }

  #pivot(leave: number, enter: number): void {
    const values = this.#values;
    const width = this.#width;
    const from = leave * width;
    const by = f64(values, from + enter);
    for (let j = 0; j < width; j++) values[from + j] = f64(values, from + j) / by;
    for (let i = 0; i <= this.#lines; i++) {
      const at = i * width;
      const factor = f64(values, at + enter);
      if (i === leave || factor === 0) continue;
      for (let j = 0; j < width; j++) values[at + j] = f64(values, at + j) - factor * f64(values, from + j);
    }
  }
}
