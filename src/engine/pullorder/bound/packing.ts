import { f64, num } from '../../base/at.ts';
import type { Meter } from '../model.ts';

/** Weights of sets are rounded down to this part of 1 before they are trusted. */
export const GRAIN = 1e6;
const TINY = 1e-9;

/** A set of lines, and what it is worth to pack it whole. */
export interface PackedSet {
  lines: number[];
  worth: number;
}

/**
 * Weights of sets that are worth most together while those over each line sum to at most 1: the dual
 * of a covering programme in fractions.
 * @param maxPivots steps after which the weights found so far are taken
 * @returns `weights` in whole parts of `GRAIN`, exactly within 1 over each line; `prices` by line, up to
 *   rounding: a cheapest cover of the sets
 */
export function packing(
  lines: number,
  sets: readonly PackedSet[],
  maxPivots: number,
  meter: Meter,
): { weights: Float64Array; prices: Float64Array } {
  const tableau = new Tableau(lines, sets, meter);
  tableau.solve(maxPivots);
  const prices = Float64Array.from({ length: lines }, (_, line) => tableau.price(line));
  return { weights: withinOne(lines, sets, tableau.weights()), prices };
}

/** Weights scaled down where rounding left a line with more than 1. */
function withinOne(lines: number, sets: readonly PackedSet[], weights: Float64Array): Float64Array {
  const over = new Float64Array(lines);
  sets.forEach((set, j) => {
    for (const i of set.lines) over[i] = f64(over, i) + f64(weights, j);
  });
  const most = over.reduce((a, b) => Math.max(a, b), GRAIN);
  return most > GRAIN ? weights.map((weight) => Math.floor((weight * GRAIN) / most)) : weights;
}

/** The simplex tableau: columns are the sets, then slacks, then the right side; the last line is the worth. */
class Tableau {
  readonly #lines: number;
  readonly #columns: number;
  readonly #width: number;
  readonly #values: Float64Array;
  /** The column that each line stands for. */
  readonly #basis: number[];
  readonly #meter: Meter;

  constructor(lines: number, columns: readonly PackedSet[], meter: Meter) {
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
      this.#meter.units += (this.#lines * this.#width) >> 5;
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

  /** What a line costs in a cheapest cover. */
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
