import { i32, num } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';

/** All partial orders on up to k letters, numbered; 0 is the empty one. */
export interface SmallOrders {
  k: number;
  count: number;
  /** 32-bit words of a set of them. */
  words: number;
  /** Code (see `codeOf`) → number, −1 for what is no partial order. */
  idOf: Int16Array;
  /** Row-major, orders × letters: what is left when the letter comes. */
  next: Uint16Array;
  /** Row-major, orders × letters: with the letter left out, among those on k − 1 letters. */
  without: Uint16Array;
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

/** Letters of an order, as bits, and for each letter the bits of those before it. */
interface BitOrder {
  present: number;
  preds: number[];
}

/** The table for k letters, 1 to 4: 2, 6, 32, 318 orders. Made once. */
export function smallOrders(k: number): SmallOrders {
  const known = tables.get(k);
  if (known) return known;
  const below = k > 1 ? smallOrders(k - 1) : null;
  const idOf = new Int16Array(1 << (k * (k + 1))).fill(-1);
  // Those that ask least first: the empty one is 0.
  const found = allOrders(k).sort((a, b) => asked(a) - asked(b));
  found.forEach(({ present, preds }, id) => (idOf[codeOf(k, present, preds)] = id));
  const count = found.length;
  const words = (count + 31) >> 5;
  const next = new Uint16Array(count * k);
  const without = new Uint16Array(count * k);
  const implied = new Int32Array(count * words);
  found.forEach((order, id) => {
    for (let l = 0; l < k; l++) {
      const comes = (order.present & (1 << l)) !== 0 && order.preds[l] === 0;
      next[id * k + l] = comes ? num(idOf, codeAfter(k, order, l)) : id;
      if (below) without[id * k + l] = num(below.idOf, codeWithout(k, order, l));
    }
    found.forEach((other, o) => {
      if (o !== id && asksLess(other, order)) implied[id * words + (o >> 5)] = i32(implied, id * words + (o >> 5)) | (1 << (o & 31));
    });
  });
  const table: SmallOrders = { k, count, words, idOf, next, without, implied, present: Uint8Array.from(found, (f) => f.present) };
  tables.set(k, table);
  return table;
}

/** How much an order asks: pairs first, then letters. */
function asked({ present, preds }: BitOrder): number {
  return 8 * preds.reduce((n, mask) => n + bitCount(mask), 0) + bitCount(present);
}

/** All partial orders on up to k letters. */
function allOrders(k: number): BitOrder[] {
  const found: BitOrder[] = [];
  const pairs: [number, number][] = [];
  for (let b = 0; b < k; b++) for (let a = 0; a < k; a++) if (a !== b) pairs.push([a, b]);
  for (let present = 0; present < 1 << k; present++) {
    const own = pairs.filter(([a, b]) => (present >> a) & (present >> b) & 1);
    for (let choice = 0; choice < 1 << own.length; choice++) {
      const preds = new Array<number>(k).fill(0);
      own.forEach(([a, b], i) => {
        if ((choice >> i) & 1) preds[b] = num(preds, b) | (1 << a);
      });
      if (isClosed(preds)) found.push({ present, preds });
    }
  }
  return found;
}

/** Whether a relation is a partial order: no letter before itself, and before what is before. */
function isClosed(preds: readonly number[]): boolean {
  return preds.every((mask, b) => ((mask >> b) & 1) === 0 && preds.every((before, a) => !((mask >> a) & 1) || (before & ~mask) === 0));
}

/** Code of what is left of an order when a letter comes. */
function codeAfter(k: number, { present, preds }: BitOrder, letter: number): number {
  const bit = 1 << letter;
  const left = preds.map((mask, l) => (l === letter ? 0 : mask & ~bit));
  return codeOf(k, present & ~bit, left);
}

/** Code, among orders on k − 1 letters, of an order with a letter left out. */
function codeWithout(k: number, { present, preds }: BitOrder, letter: number): number {
  const bit = 1 << letter;
  const squeeze = (mask: number): number => (mask & (bit - 1)) | ((mask >> 1) & ~(bit - 1));
  const left = preds.filter((_, l) => l !== letter).map((mask) => squeeze(mask & ~bit));
  return codeOf(k - 1, squeeze(present & ~bit), left);
}

/** Whether every word that finishes the second order finishes the first. */
function asksLess(a: BitOrder, b: BitOrder): boolean {
  return (a.present & ~b.present) === 0 && a.preds.every((mask, l) => (mask & ~num(b.preds, l)) === 0);
}
