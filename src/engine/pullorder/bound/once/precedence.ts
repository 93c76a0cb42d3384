import { i32, num } from '../../../base/at.ts';
import type { Meter, Order } from '../../model.ts';

/** Which letters some sheet has before which: rows of bits, `words` a letter. */
export interface Precedence {
  letters: number;
  words: number;
  /** Bit b of row a: some sheet has a pull of a before one of b. */
  after: Int32Array;
  /** The same turned about. */
  before: Int32Array;
  /** Both ways: two letters of which one must come twice. */
  clash: Int32Array;
}

/**
 * What precedes what among some letters, over all sheets.
 * @param letters different ones; places in this list stand for them
 * Cost O(pairs of pulls of which one precedes the other).
 */
export function precedenceOf(orders: readonly Order[], letters: readonly number[], meter: Meter): Precedence {
  const words = Math.max(1, (letters.length + 31) >> 5);
  const [after, before, clash] = [0, 1, 2].map(() => new Int32Array(letters.length * words)) as [Int32Array, Int32Array, Int32Array];
  const place = new Map(letters.map((l, i) => [l, i]));
  for (const order of orders) {
    const places = order.letters.map((l) => place.get(l) ?? -1);
    order.preds.forEach((preds, p) => {
      const b = num(places, p);
      if (b < 0) return;
      for (const q of preds) {
        const a = num(places, q);
        if (a < 0 || a === b) continue;
        after[a * words + (b >> 5)] = i32(after, a * words + (b >> 5)) | (1 << (b & 31));
        before[b * words + (a >> 5)] = i32(before, b * words + (a >> 5)) | (1 << (a & 31));
      }
      meter.units += preds.length >> 3;
    });
  }
  for (let i = 0; i < clash.length; i++) clash[i] = i32(after, i) & i32(before, i);
  return { letters: letters.length, words, after, before, clash };
}

/** Some of the letters only, numbered anew in the order of their places. */
export function partOf(of: Precedence, places: ArrayLike<number>): Precedence {
  const words = Math.max(1, (places.length + 31) >> 5);
  const part = (rows: Int32Array): Int32Array => {
    const own = new Int32Array(places.length * words);
    for (let i = 0; i < places.length; i++) {
      for (let j = 0; j < places.length; j++) {
        const other = num(places, j);
        if ((i32(rows, num(places, i) * of.words + (other >> 5)) >> (other & 31)) & 1)
          own[i * words + (j >> 5)] = i32(own, i * words + (j >> 5)) | (1 << (j & 31));
      }
    }
    return own;
  };
  return { letters: places.length, words, after: part(of.after), before: part(of.before), clash: part(of.clash) };
}
