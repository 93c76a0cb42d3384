import { defined, i32, u16 } from '../../../base/at.ts';
import type { Meter } from '../../model.ts';
import { Asked, NONE } from './asked.ts';
import { smallOrders } from './small-orders.ts';

/** Letters up to which the words that begin with one letter are the bits of one number. */
const SHORT = 4;
const SMALL = smallOrders(4);
const WORDS = SMALL.words;

/**
 * How long a word must be that finishes a set of orders on four letters, and which letters a
 * shortest word may begin with; from tables of which words finish which order.
 *
 * Longer words do whatever shorter ones do, and a letter twice running says no more than once. So
 * of each length all words without such repeats are looked at, 4 · 3^(length − 1) of them, 27 or so
 * to a number: those that finish all orders are what is left of the tables' bits in common.
 */
export class FourNeeds {
  readonly #meter: Meter;
  /** Answers by sets as they are asked, and by sets without what other members imply. */
  readonly #raw = new Asked(WORDS);
  readonly #tidy = new Asked(WORDS);
  readonly #scratch = new Int32Array(WORDS);
  /** Scratch: tables of the orders of a set. */
  readonly #tables: Int32Array[] = [];

  constructor(meter: Meter) {
    this.#meter = meter;
  }

  /**
   * @param set numbers of orders on four letters, as bits; the empty one may be among them
   * @param from no word is shorter, as is known
   * @returns the length in all bits but the lowest four, which are the letters that shortest words begin with
   */
  of(set: Int32Array, from: number): number {
    const known = this.#raw.find(set);
    if (known !== NONE && (known & 15) !== 0) return known;
    const tidy = this.#tidied(set);
    const before = this.#tidy.find(tidy);
    if (before !== NONE && (before & 15) !== 0) return this.#raw.answer(before);
    const ids = membersOf(tidy);
    if (ids.length === 0) return 0;
    for (let length = Math.max(1, from, before === NONE ? 0 : before >> 4); ; length++) {
      const first = this.#firstOf(ids, length);
      if (first !== 0) return this.#raw.answer(this.#tidy.answer((length << 4) | first));
    }
  }

  /** As `of`, when the length is known to be this or one more; then the letters may be left out. */
  either(set: Int32Array, length: number): number {
    const known = this.#raw.find(set);
    if (known !== NONE) return known;
    const tidy = this.#tidied(set);
    const before = this.#tidy.find(tidy);
    if (before !== NONE) return this.#raw.answer(before);
    const ids = membersOf(tidy);
    if (ids.length === 0) return 0;
    const first = length === 0 ? 0 : this.#firstOf(ids, length);
    return this.#raw.answer(this.#tidy.answer(first === 0 ? (length + 1) << 4 : (length << 4) | first));
  }

  /** A set without the empty order and what other members imply. */
  #tidied(set: Int32Array): Int32Array {
    const { implied } = SMALL;
    const tidy = this.#scratch;
    tidy.set(set);
    tidy[0] = i32(tidy, 0) & ~1;
    for (let w = WORDS - 1; w >= 0; w--) {
      for (let bits = i32(tidy, w); bits !== 0;) {
        const bit = 31 - Math.clz32(bits);
        const row = ((w << 5) + bit) * WORDS;
        // What an order implies asks less and has a smaller number.
        for (let v = 0; v <= w; v++) tidy[v] = i32(tidy, v) & ~i32(implied, row + v);
        bits = i32(tidy, w) & ((1 << bit) - 1);
      }
    }
    this.#meter.units += 2;
    return tidy;
  }

  /** Letters that words of a length begin with which finish all orders. */
  #firstOf(ids: readonly number[], length: number): number {
    const tables = this.#tables;
    tables.length = 0;
    for (const id of ids) tables.push(wordsThatFinish(id, length));
    const a = defined(tables[0]);
    const b = tables[1] ?? a;
    const c = tables[2] ?? b;
    const size = a.length >> 2;
    let first = 0;
    for (let l = 0; l < 4; l++) {
      for (let i = l * size; i < (l + 1) * size; i++) {
        let words = i32(a, i) & i32(b, i) & i32(c, i);
        for (let t = 3; t < tables.length && words !== 0; t++) words &= i32(defined(tables[t]), i);
        if (words === 0) continue;
        first |= 1 << l;
        break;
      }
    }
    this.#meter.units += 2 + ((a.length + 4 * ids.length) >> 6);
    return first;
  }
}

/** Members of a set. Those that ask most, which the fewest words finish, have the highest numbers and come first. */
function membersOf(set: Int32Array): number[] {
  const ids: number[] = [];
  for (let w = WORDS - 1; w >= 0; w--) {
    for (let bits = i32(set, w); bits !== 0;) {
      const bit = 31 - Math.clz32(bits);
      bits &= ~(1 << bit);
      ids.push((w << 5) + bit);
    }
  }
  return ids;
}

/** By length and number of an order: bits of words, those that begin with one letter after those with another. */
const made: Int32Array[][] = [];

/** Which words of a length, no letter twice running, finish an order. Made once. */
function wordsThatFinish(id: number, length: number): Int32Array {
  const known = (made[length] ??= [])[id];
  if (known) return known;
  const size = length <= SHORT ? 1 : 3 ** (length - SHORT);
  const words = new Int32Array(4 * size);
  for (let l = 0; l < 4; l++) {
    const left = u16(SMALL.next, id * 4 + l);
    if (length === 1) words[l] = left === 0 ? 1 : 0;
    else {
      const rest = wordsThatFinish(left, length - 1);
      let place = 0;
      for (let m = 0; m < 4; m++) {
        if (m === l) continue;
        if (length <= SHORT) words[l] = i32(words, l) | (i32(rest, m) << (place * 3 ** (length - 2)));
        else words.set(rest.subarray((m * size) / 3, ((m + 1) * size) / 3), l * size + (place * size) / 3);
        place++;
      }
    }
  }
  return (defined(made[length])[id] = words);
}
