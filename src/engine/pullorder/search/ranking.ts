import { f64 } from '../../base/at.ts';

// Tables that the beam ranks partial plans by.

const tableCache = new Map<number, Int32Array>();

/**
 * Logarithm (× 1000, rounded so that every machine ranks alike) of the chance that a chain of q
 * letters is contained in `reach` random letters of an alphabet.
 * @returns by q, 0 to `longest`; chains longer than the reach fall off steeply
 */
export function chanceTable(longest: number, reach: number, letterCount: number): Int32Array {
  const alphabet = Math.max(2, Math.min(letterCount, 64));
  const key = (longest * 8192 + reach) * 128 + alphabet;
  const known = tableCache.get(key);
  if (known) return known;
  const hit = 1 / alphabet;
  let row = new Float64Array(longest + 1);
  row[0] = 1;
  for (let l = 1; l <= reach; l++) {
    const next = new Float64Array(longest + 1);
    next[0] = 1;
    for (let q = 1; q <= longest; q++) next[q] = hit * f64(row, q - 1) + (1 - hit) * f64(row, q);
    row = next;
  }
  const table = new Int32Array(longest + 1);
  let previous = 0;
  for (let q = 1; q <= longest; q++) {
    const log = f64(row, q) > 1e-250 ? Math.round(1000 * Math.log(f64(row, q))) : -Infinity;
    previous = Math.max(log, previous - 20_000);
    table[q] = previous;
  }
  if (tableCache.size > 4000) tableCache.clear();
  tableCache.set(key, table);
  return table;
}

const worthCache = new Map<number, Int32Array>();

/**
 * How much of a letter is dealt with while some of its orders still need it, in thousandths:
 * 1 − (need / total)^0.15. A letter costs nearly the same for one sheet as for all, so most of the
 * worth comes with the last sheets; exponent by trial.
 * @returns by need, 0 to `total`
 */
export function worthTable(total: number): Int32Array {
  const known = worthCache.get(total);
  if (known) return known;
  const table = Int32Array.from({ length: total + 1 }, (_, need) => Math.round(1000 * (1 - (need / total) ** 0.15)));
  worthCache.set(total, table);
  return table;
}
