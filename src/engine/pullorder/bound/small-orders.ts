import { i32, num } from '../../base/at.ts';

/** All partial orders on up to k letters, numbered; 0 is the empty one. */
export interface SmallOrders {
  k: number;
  count: number;
  /** 32-bit words of a set of them. */
  words: number;
  /** Code (see `codeOf`) → number, −1 for what is no partial order. */
  idOf: Int16Array;
  /** Row-major, orders × letters: what is left when the letter comes. */
  next: Int16Array;
  /** Row-major, orders × letters: with the letter left out, among those on k − 1 letters. */
  without: Int16Array;
  /** Row-major, orders × words: the orders that any word for this one finishes too, itself excepted. */
  implied: Int32Array;
  /** Letters of each, as bits. */
  present: Uint8Array;
}

/** Packs the letters of an order and, for each letter, those before it. All masks of k bits; a closed relation. */
export function codeOf(k: number, present: number, preds: ArrayLike<number>): number {
  let code = present;
  for (let l = 0; l < k; l++) code |= (num(preds, l) & present) << (k * (l + 1));
  return code;
}

const tables = new Map<number, SmallOrders>();

/** The table for k letters, 1 to 4: 2, 6, 32, 318 orders. Made once. */
export function smallOrders(k: number): SmallOrders {
  const known = tables.get(k);
  if (known) return known;
  const below = k > 1 ? smallOrders(k - 1) : null;
  const full = (1 << k) - 1;
  const idOf = new Int16Array(1 << (k * (k + 1))).fill(-1);
  const found: { present: number; preds: number[] }[] = [];
  const pairs: [number, number][] = [];
  for (let b = 0; b < k; b++) for (let a = 0; a < k; a++) if (a !== b) pairs.push([a, b]);
  for (let present = 0; present <= full; present++) {
    const own = pairs.filter(([a, b]) => (present >> a) & (present >> b) & 1);
    for (let choice = 0; choice < 1 << own.length; choice++) {
      const preds = new Array<number>(k).fill(0);
      own.forEach(([a, b], i) => {
        if ((choice >> i) & 1) preds[b] = num(preds, b) | (1 << a);
      });
      const closed = preds.every(
        (mask, b) => ((mask >> b) & 1) === 0 && preds.every((before, a) => !((mask >> a) & 1) || (before & ~mask) === 0),
      );
      if (!closed) continue;
      idOf[codeOf(k, present, preds)] = found.length;
      found.push({ present, preds });
    }
  }
  const count = found.length;
  const words = (count + 31) >> 5;
  const next = new Int16Array(count * k);
  const without = new Int16Array(count * k);
  const implied = new Int32Array(count * words);
  found.forEach(({ present, preds }, id) => {
    for (let l = 0; l < k; l++) {
      const bit = 1 << l;
      const comes = (present & bit) !== 0 && preds[l] === 0;
      next[id * k + l] = comes
        ? num(
            idOf,
            codeOf(
              k,
              present & ~bit,
              preds.map((p, m) => (m === l ? 0 : p & ~bit)),
            ),
          )
        : id;
      if (!below) continue;
      const squeeze = (mask: number): number => (mask & (bit - 1)) | ((mask >> 1) & ~(bit - 1));
      without[id * k + l] = num(
        below.idOf,
        codeOf(
          k - 1,
          squeeze(present & ~bit),
          preds.filter((_, m) => m !== l).map((p) => squeeze(p & ~bit)),
        ),
      );
    }
    found.forEach((other, o) => {
      const less = (other.present & ~present) === 0 && other.preds.every((p, l) => (p & ~num(preds, l)) === 0);
      if (less && o !== id) implied[id * words + (o >> 5)] = i32(implied, id * words + (o >> 5)) | (1 << (o & 31));
    });
  });
  const table: SmallOrders = { k, count, words, idOf, next, without, implied, present: Uint8Array.from(found, (f) => f.present) };
  tables.set(k, table);
  return table;
}

/** How many bits are set. */
export function bitCount(mask: number): number {
  let count = 0;
  for (let bits = mask; bits !== 0; bits &= bits - 1) count++;
  return count;
}
