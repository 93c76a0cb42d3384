import { entryAt, i32, num } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import type { SetOrder } from '../sets/set-order.ts';

/** Most sheets that a search goes by, one bit each; leaving some out keeps a word for all one for those. */
export const MOST_SHEETS = 32;

/** Sheets as bits, with all but some letters struck out; letters stand by their place in the set. */
export interface SetMasks {
  /** By letter: sheets that have it. */
  whole: Int32Array;
  /** Letters × letters: sheets that have the second before the first. */
  before: Int32Array;
  /** The sheets, in the order of their bits. */
  sheets: readonly SetOrder[];
  /** Whether none was left out. */
  all: boolean;
}

/**
 * Where there are too many sheets, those are kept that put most pairs of the letters in order.
 * @param set letters of a block, as bits
 */
export function masksOf(orders: readonly SetOrder[], set: number): SetMasks {
  const places = new Int32Array(32);
  let letters = 0;
  for (let bits = set; bits !== 0; bits &= bits - 1) places[31 - Math.clz32(bits & -bits)] = letters++;
  const whole = new Int32Array(letters);
  const before = new Int32Array(letters * letters);
  const kept = orders.length > MOST_SHEETS ? thatAskMost(orders, set) : orders;
  kept.forEach(({ present, preds }, sheet) => {
    for (let own = present & set; own !== 0; own &= own - 1) {
      const l = 31 - Math.clz32(own & -own);
      const place = i32(places, l);
      whole[place] = i32(whole, place) | (1 << sheet);
      for (let earlier = num(preds, l) & set; earlier !== 0; earlier &= earlier - 1) {
        const at = place * letters + i32(places, 31 - Math.clz32(earlier & -earlier));
        before[at] = i32(before, at) | (1 << sheet);
      }
    }
  });
  return { whole, before, sheets: kept, all: kept.length === orders.length };
}

function thatAskMost(orders: readonly SetOrder[], set: number): SetOrder[] {
  const asked = Int32Array.from(orders, ({ present, preds }) => {
    let pairs = 0;
    for (let own = present & set; own !== 0; own &= own - 1) pairs += bitCount(num(preds, 31 - Math.clz32(own & -own)) & set);
    return pairs;
  });
  const sheets = Array.from(asked, (_, c) => c).sort((a, b) => i32(asked, b) - i32(asked, a) || a - b);
  return sheets.slice(0, MOST_SHEETS).map((c) => entryAt(orders, c));
}
