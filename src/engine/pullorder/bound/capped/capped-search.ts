import { i32 } from '../../../base/at.ts';
import type { Meter } from '../../model.ts';
import { Tuples } from '../../tuples.ts';
import type { SetOrder } from '../sets/set-order.ts';
import { setsOf } from '../sets/sets-of.ts';
import type { SetCounts } from './set-counts.ts';
import { TimesLeft } from './times-left.ts';

/** Sets of four see more than sets of three, but cost more: they are looked at after so many steps. */
const STEPS_ON_THREES = 500;

/** What sets of three and of four letters need, remembered from search to search. */
export interface Counted {
  threes: SetCounts;
  fours: SetCounts;
  /** Steps before sets of four are looked at too; absent = as pays. */
  onThrees?: number;
}

/**
 * Whether some word that has each of a few letters only so many times finishes all orders on them.
 *
 * Depth first over words, by these facts, none of which loses a word:
 * - a letter whose turn has come wherever it is left finishes at once, and sooner is never worse;
 * - a letter that may come once more only must wait until its turn has come everywhere; letters that
 *   wait for one another in a ring wait for ever;
 * - what is left on any three or four letters must be finished with what is left of their times;
 * - what is left, with the times that are left, was seen to fail before.
 */
export class CappedSearch {
  readonly #meter: Meter;
  readonly #letters: number;
  /** What is left at first, by order. */
  readonly #whole: Int32Array;
  /** Orders × letters: letters before. */
  readonly #preds: Int32Array;
  readonly #threes: TimesLeft;
  #fours: TimesLeft | null = null;
  readonly #newFours: () => TimesLeft;
  readonly #onThrees: number;
  #steps = 0;
  readonly #failed: Tuples;
  /** Scratch: what is left and the times that are left. */
  readonly #key: Int32Array;
  /** Scratch: letters before each, on some sheet, of those left. */
  readonly #before: Int32Array;
  #until = 0;

  /** @param orders on letters 0 to `letters` − 1, at most 16 */
  constructor(orders: readonly SetOrder[], letters: number, counted: Counted, meter: Meter) {
    this.#onThrees = counted.onThrees ?? STEPS_ON_THREES;
    this.#meter = meter;
    this.#letters = letters;
    this.#whole = Int32Array.from(orders, ({ present }) => present);
    this.#preds = new Int32Array(orders.length * letters);
    orders.forEach(({ preds }, c) => this.#preds.set(preds, c * letters));
    const sets = (k: number): number[][] => [...setsOf([...Array(letters).keys()], k)];
    this.#threes = new TimesLeft(orders, sets(3), counted.threes, meter);
    this.#newFours = () => new TimesLeft(orders, sets(4), counted.fours, meter);
    this.#failed = new Tuples(orders.length + letters, 64);
    this.#key = new Int32Array(orders.length + letters);
    this.#before = new Int32Array(letters);
  }

  /**
   * @param times how often each letter may come, at most `MOST_TIMES`
   * @param units work after which it gives up
   * @returns null when it gave up
   */
  fits(times: readonly number[], units: number): boolean | null {
    this.#until = this.#meter.units + units;
    const own = new Int32Array(32);
    own.set(times);
    return this.#go(Int32Array.from(this.#whole), own, -1);
  }

  /** @param changed letters that have just come; the lists are written over */
  #go(left: Int32Array, times: Int32Array, changed: number): boolean | null {
    const need = this.#finishFree(left);
    if (need === 0) return true;
    let wait = 0;
    for (let l = 0; l < this.#letters; l++) {
      if (!((need >> l) & 1)) continue;
      const own = i32(times, l);
      if (own === 0) return false;
      if (own === 1) wait |= 1 << l;
    }
    if (this.#hasRing(wait)) return false;
    if (this.#meter.units > this.#until) return null;
    this.#setKey(left, times, need);
    if (this.#failed.find(this.#key) >= 0) return false;
    // What finished of itself leaves less to do, and its times do not count any more.
    if (this.#threes.fail(left, times, changed)) return false;
    if (++this.#steps > this.#onThrees && (this.#fours ??= this.#newFours()).fail(left, times, changed)) return false;
    for (const { letter, rest } of this.#ways(left, need & ~wait)) {
      const fewer = Int32Array.from(times);
      fewer[letter] = i32(fewer, letter) - 1;
      const found = this.#go(rest, fewer, 1 << letter);
      if (found !== false) return found;
    }
    this.#setKey(left, times, need);
    if (this.#failed.find(this.#key) < 0) this.#failed.add(this.#key);
    return false;
  }

  #setKey(left: Int32Array, times: Int32Array, need: number): void {
    this.#key.set(left);
    for (let l = 0; l < this.#letters; l++) this.#key[left.length + l] = (need >> l) & 1 ? i32(times, l) : 0;
  }

  /** Finishes letters whose turn has come wherever they are left. @returns letters that are left on some sheet */
  #finishFree(left: Int32Array): number {
    const before = this.#before;
    const k = this.#letters;
    for (;;) {
      before.fill(0);
      let need = 0;
      for (let c = 0, at = 0; c < left.length; c++, at += k) {
        const own = i32(left, c);
        need |= own;
        for (let bits = own; bits !== 0; bits &= bits - 1) {
          const l = 31 - Math.clz32(bits & -bits);
          before[l] = i32(before, l) | (i32(this.#preds, at + l) & own);
        }
      }
      this.#meter.units += 1 + (left.length >> 3);
      let free = 0;
      for (let l = 0; l < k; l++) if ((need >> l) & 1 && before[l] === 0) free |= 1 << l;
      if (free === 0) return need;
      for (let c = 0; c < left.length; c++) left[c] = i32(left, c) & ~free;
    }
  }

  /** Whether some of these letters wait for one another in a ring. */
  #hasRing(letters: number): boolean {
    for (let ring = letters; ring !== 0;) {
      let out = 0;
      for (let bits = ring; bits !== 0; bits &= bits - 1) {
        const l = 31 - Math.clz32(bits & -bits);
        if ((i32(this.#before, l) & ring) === 0) out |= 1 << l;
      }
      if (out === 0) return true;
      ring &= ~out;
    }
    return false;
  }

  /** Letters that may come next and what they leave, those first that come on most sheets. */
  #ways(left: Int32Array, letters: number): { letter: number; rest: Int32Array; on: number }[] {
    const ways: { letter: number; rest: Int32Array; on: number }[] = [];
    for (let bits = letters; bits !== 0; bits &= bits - 1) {
      const letter = 31 - Math.clz32(bits & -bits);
      const rest = Int32Array.from(left);
      let on = 0;
      for (let c = 0; c < left.length; c++) {
        const own = i32(left, c);
        if (!((own >> letter) & 1) || (i32(this.#preds, c * this.#letters + letter) & own) !== 0) continue;
        rest[c] = own & ~(1 << letter);
        on++;
      }
      this.#meter.units += 1 + (left.length >> 4);
      if (on > 0) ways.push({ letter, rest, on });
    }
    return ways.sort((x, y) => y.on - x.on);
  }
}
