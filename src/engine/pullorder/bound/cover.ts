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
 * @param from a total that is known to be a lower bound already
 */
export function coverBound(counts: readonly number[], rows: readonly CoverRow[], from: number, maxNodes: number, meter: Meter): number {
  let total = Math.max(
    from,
    counts.reduce((a, b) => a + b, 0),
  );
  let nodes = 0;

  /** True when no choice within [low, high] keeps all rows with a sum of at most `total`. */
  const impossible = (low: Int32Array, high: Int32Array): boolean | null => {
    if (++nodes > maxNodes) return null;
    let sum = 0;
    for (const value of low) sum += value;
    for (let again = true; again;) {
      again = false;
      meter.units += rows.length;
      for (const row of rows) {
        let lows = 0;
        let highs = 0;
        for (const l of row.letters) {
          lows += i32(low, l);
          highs += Math.min(i32(high, l), i32(low, l) + total - sum);
        }
        if (lows >= row.least) continue;
        if (highs < row.least) return true;
        for (const l of row.letters) {
          const top = Math.min(i32(high, l), i32(low, l) + total - sum);
          const need = row.least - (highs - top);
          if (need > i32(low, l)) {
            sum += need - i32(low, l);
            low[l] = need;
            again = true;
            if (sum > total) return true;
            break;
          }
        }
      }
    }
    const open: { row: CoverRow; lack: number }[] = [];
    for (const row of rows) {
      let lack = row.least;
      for (const l of row.letters) lack -= i32(low, l);
      if (lack > 0) open.push({ row, lack });
    }
    if (open.length === 0) return false;
    // Rows that share no letter must each be made up for on their own.
    open.sort((a, b) => b.lack / b.row.letters.length - a.lack / a.row.letters.length);
    const taken = new Set<number>();
    let least = sum;
    for (const { row, lack } of open) {
      if (row.letters.some((l) => taken.has(l))) continue;
      row.letters.forEach((l) => taken.add(l));
      least += lack;
    }
    if (least > total) return true;
    const branch = open.reduce((a, b) =>
      b.row.letters.length < a.row.letters.length || (b.row.letters.length === a.row.letters.length && b.lack > a.lack) ? b : a,
    );
    const fixed = Int32Array.from(high);
    for (const l of branch.row.letters) {
      if (i32(low, l) >= i32(fixed, l)) continue;
      const raised = Int32Array.from(low);
      raised[l] = i32(raised, l) + 1;
      const below = impossible(raised, Int32Array.from(fixed));
      if (below !== true) return below;
      fixed[l] = i32(low, l);
    }
    return true;
  };

  for (;;) {
    const result = impossible(Int32Array.from(counts), new Int32Array(counts.length).fill(total));
    if (result !== true) return total;
    total++;
  }
}
