import { i32 } from '../../base/at.ts';
import type { Meter } from '../model.ts';

/** The letters together must come at least `least` times. */
export interface CoverRow {
  letters: number[];
  least: number;
}

/**
 * Lower bound of the covering integer programme: fewest letters in all, each at least its own
 * count, each row at least its own sum. Any word keeps all rows, so none is shorter.
 * Raises the total one by one and shows by branching that it cannot be kept; gives up quietly after
 * `maxNodes` branchings, with what was shown so far.
 * @param counts fewest times of each letter
 * @param limits `from`: a total that is known to be a lower bound already
 */
export function coverBound(
  counts: readonly number[],
  rows: readonly CoverRow[],
  limits: { from: number; maxNodes: number; meter: Meter },
): number {
  const search = new CoverSearch(rows, limits.maxNodes, limits.meter);
  let total = Math.max(
    limits.from,
    counts.reduce((a, b) => a + b, 0),
  );
  while (search.impossible(total, Int32Array.from(counts), new Int32Array(counts.length).fill(total)) === true) total++;
  return total;
}

/** A row and how much is still missing in it. */
interface OpenRow {
  row: CoverRow;
  lack: number;
}

class CoverSearch {
  readonly #rows: readonly CoverRow[];
  readonly #maxNodes: number;
  readonly #meter: Meter;
  #nodes = 0;

  constructor(rows: readonly CoverRow[], maxNodes: number, meter: Meter) {
    this.#rows = rows;
    this.#maxNodes = maxNodes;
    this.#meter = meter;
  }

  /**
   * True when no choice within [low, high] keeps all rows with a sum of at most `total`; null when
   * the branchings are used up. Both lists are written over.
   */
  impossible(total: number, low: Int32Array, high: Int32Array): boolean | null {
    if (++this.#nodes > this.#maxNodes) return null;
    const sum = this.#raise(total, low, high);
    if (sum > total) return true;
    const open = this.#openRows(low);
    if (open.length === 0) return false;
    if (sum + apartLack(open) > total) return true;
    const branch = open.reduce((a, b) => (isNarrower(b, a) ? b : a));
    const fixed = Int32Array.from(high);
    for (const l of branch.row.letters) {
      if (i32(low, l) >= i32(fixed, l)) continue;
      const raised = Int32Array.from(low);
      raised[l] = i32(raised, l) + 1;
      const below = this.impossible(total, raised, Int32Array.from(fixed));
      if (below !== true) return below;
      fixed[l] = i32(low, l);
    }
    return true;
  }

  /**
   * Raises the lows as far as single rows force it.
   * @returns their sum; Infinity when a row cannot be kept, or the total cannot
   */
  #raise(total: number, low: Int32Array, high: Int32Array): number {
    let sum = 0;
    for (const value of low) sum += value;
    for (let again = true; again;) {
      again = false;
      this.#meter.units += this.#rows.length >> 2;
      for (const row of this.#rows) {
        const gain = raiseRow(row, total - sum, low, high);
        if (gain === 0) continue;
        sum += gain;
        again = true;
        if (sum > total) return Infinity;
      }
    }
    return sum;
  }

  #openRows(low: Int32Array): OpenRow[] {
    const open: OpenRow[] = [];
    for (const row of this.#rows) {
      let lack = row.least;
      for (const l of row.letters) lack -= i32(low, l);
      if (lack > 0) open.push({ row, lack });
    }
    return open;
  }
}

/**
 * Raises the first letter of a row that must come more often.
 * @param spare how much the lows may grow in all
 * @returns how much it was raised; Infinity when the row cannot be kept
 */
function raiseRow(row: CoverRow, spare: number, low: Int32Array, high: Int32Array): number {
  let lows = 0;
  let highs = 0;
  for (const l of row.letters) {
    lows += i32(low, l);
    highs += Math.min(i32(high, l), i32(low, l) + spare);
  }
  if (lows >= row.least) return 0;
  if (highs < row.least) return Infinity;
  for (const l of row.letters) {
    const top = Math.min(i32(high, l), i32(low, l) + spare);
    const gain = row.least - (highs - top) - i32(low, l);
    if (gain <= 0) continue;
    low[l] = i32(low, l) + gain;
    return gain;
  }
  return 0;
}

/** What rows lack together that share no letter: each must be made up for on its own. Sorts the rows. */
function apartLack(open: OpenRow[]): number {
  open.sort((a, b) => b.lack / b.row.letters.length - a.lack / a.row.letters.length);
  const taken = new Set<number>();
  let sum = 0;
  for (const { row, lack } of open) {
    if (row.letters.some((l) => taken.has(l))) continue;
    row.letters.forEach((l) => taken.add(l));
    sum += lack;
  }
  return sum;
}

/** Whether a row leaves fewer ways to branch. */
function isNarrower(a: OpenRow, b: OpenRow): boolean {
  const size = a.row.letters.length - b.row.letters.length;
  return size < 0 || (size === 0 && a.lack > b.lack);
}
