import { i32 } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import type { Meter } from '../../model.ts';
import type { SetOrder } from '../sets/set-order.ts';
import { FoursLeft } from './fours-left.ts';
import { SeenRows } from './seen-rows.ts';
import type { SetCounts } from './set-counts.ts';
import { masksOf } from './set-masks.ts';
import { askedOfThree, timesThatDo, type PairRows } from './three-needs.ts';

/** Sets of four see more than sets of three, but cost more: they are looked at after so many steps. */
const STEPS_ON_THREES = 1000;

/**
 * Whether some word that has each of a few letters only so many times finishes all orders on them.
 *
 * Depth first over words, with the sheets as bits of one number, by these facts, none of which loses
 * a word:
 * - a letter whose turn has come wherever it is left finishes at once, and sooner is never worse;
 * - a letter that may come once more only must wait until its turn has come everywhere; letters that
 *   wait for one another in a ring wait for ever;
 * - what is left on any three letters must be finished with what is left of their times
 *   (`timesThatDo`), and so must what is left on any four (`FoursLeft`);
 * - what is left, with the times that are left, was seen to fail before.
 */
export class CappedSearch {
  readonly #meter: Meter;
  readonly #letters: number;
  readonly #before: Int32Array;
  readonly #allSheets: boolean;
  /** By depth: for each letter the sheets that it is left on, then the times that are left in two bits a letter. */
  readonly #rows: Int32Array;
  readonly #width: number;
  /** By depth and letter: sheets where its turn has come. */
  readonly #ready: Int32Array;
  /** Scratch, letters × letters: sheets where both are left, the second before the first. */
  readonly #held: PairRows;
  /** Scratch: letters before each, on some sheet. */
  readonly #waitsFor: Int32Array;
  readonly #failed: SeenRows;
  readonly #fours: FoursLeft;
  #onThrees = 0;
  #steps = 0;
  #until = 0;

  /**
   * @param orders of a block of letters
   * @param set letters of the block, as bits; at most 16
   * @param counts what sets of four letters need, remembered from search to search
   */
  constructor(orders: readonly SetOrder[], set: number, counts: SetCounts, meter: Meter) {
    const { whole, before, sheets, all } = masksOf(orders, set);
    const k = whole.length;
    this.#meter = meter;
    this.#letters = k;
    this.#before = before;
    this.#allSheets = all;
    this.#width = k + 1;
    // A letter comes three times at most.
    this.#rows = new Int32Array((3 * k + 2) * this.#width);
    this.#rows.set(whole);
    this.#ready = new Int32Array((3 * k + 2) * k);
    this.#held = { letters: k, before: new Int32Array(k * k) };
    this.#waitsFor = new Int32Array(k);
    this.#failed = new SeenRows(this.#width);
    this.#fours = new FoursLeft(sheets, set, counts, meter);
    meter.units += 40 + 4 * orders.length;
  }

  /**
   * @param times how often each letter may come, at most `MOST_TIMES`
   * @param units work after which it gives up
   * @param onThrees steps before sets of four are looked at too
   * @returns null when it gave up, or left out sheets and found a word without them
   */
  fits(times: readonly number[], units: number, onThrees = STEPS_ON_THREES): boolean | null {
    this.#onThrees = onThrees;
    this.#steps = 0;
    this.#until = this.#meter.units + units;
    this.#rows[this.#letters] = times.reduce((packed, own, l) => packed | (own << (2 * l)), 0);
    const found = this.#go(0, -1);
    return found === true && !this.#allSheets ? null : found;
  }

  /** @param changed the letter that has just come, −1 for none */
  #go(depth: number, changed: number): boolean | null {
    const k = this.#letters;
    const rows = this.#rows;
    const at = depth * this.#width;
    const need = this.#settle(depth);
    if (need === 0) return true;
    let wait = 0;
    let times = i32(rows, at + k);
    for (let l = 0; l < k; l++) {
      if (!((need >> l) & 1)) {
        // What finished leaves its times without meaning.
        times &= ~(3 << (2 * l));
        continue;
      }
      const own = (times >>> (2 * l)) & 3;
      if (own === 0) return false;
      if (own === 1) wait |= 1 << l;
    }
    rows[at + k] = times;
    if (this.#hasRing(wait)) return false;
    if (this.#meter.units > this.#until) return null;
    if (this.#threesFail(need, times, changed)) return false;
    if (this.#failed.has(rows, at)) return false;
    if (++this.#steps > this.#onThrees && this.#fours.fail(rows, at, changed)) return false;
    for (const way of this.#ways(depth, need & ~wait)) {
      const letter = way & 31;
      for (let i = 0; i < k; i++) rows[at + this.#width + i] = i32(rows, at + i);
      rows[at + this.#width + letter] = i32(rows, at + letter) & ~i32(this.#ready, depth * k + letter);
      rows[at + this.#width + k] = times - (1 << (2 * letter));
      const found = this.#go(depth + 1, letter);
      if (found !== false) return found;
    }
    this.#failed.add(rows, at);
    return false;
  }

  /** Finishes letters whose turn has come wherever they are left. @returns letters that are left on some sheet */
  #settle(depth: number): number {
    const k = this.#letters;
    const at = depth * this.#width;
    const rows = this.#rows;
    for (;;) {
      let need = 0;
      let free = 0;
      for (let l = 0; l < k; l++) {
        const own = i32(rows, at + l);
        let letters = 0;
        let held = 0;
        for (let a = 0; a < k; a++) {
          const both = own & i32(this.#before, l * k + a) & i32(rows, at + a);
          this.#held.before[l * k + a] = both;
          if (both === 0) continue;
          letters |= 1 << a;
          held |= both;
        }
        this.#waitsFor[l] = letters;
        this.#ready[depth * k + l] = own & ~held;
        if (own === 0) continue;
        need |= 1 << l;
        if (held === 0) free |= 1 << l;
      }
      this.#meter.units++;
      if (free === 0) return need;
      for (let l = 0; l < k; l++) if ((free >> l) & 1) rows[at + l] = 0;
    }
  }

  /** Whether some of these letters wait for one another in a ring. */
  #hasRing(letters: number): boolean {
    for (let ring = letters; ring !== 0;) {
      let out = 0;
      for (let bits = ring; bits !== 0; bits &= bits - 1) {
        const l = 31 - Math.clz32(bits & -bits);
        if ((i32(this.#waitsFor, l) & ring) === 0) out |= 1 << l;
      }
      if (out === 0) return true;
      ring &= ~out;
    }
    return false;
  }

  /** Whether what is left on some three letters, with that which has just come among them, cannot be finished. */
  #threesFail(need: number, times: number, changed: number): boolean {
    const k = this.#letters;
    if (changed >= 0) return ((need >> changed) & 1) === 1 && this.#threesWithFail(changed, need, times);
    for (let l = 0; l < k; l++) if ((need >> l) & 1 && this.#threesWithFail(l, need & ~((1 << l) - 1), times)) return true;
    return false;
  }

  #threesWithFail(x: number, need: number, times: number): boolean {
    const timesX = 9 * ((times >>> (2 * x)) & 3) - 13;
    let looked = 0;
    for (let others = need & ~(1 << x); others !== 0; others &= others - 1) {
      const y = 31 - Math.clz32(others & -others);
      const timesXY = timesX + 3 * ((times >>> (2 * y)) & 3);
      for (let rest = others & (others - 1); rest !== 0; rest &= rest - 1) {
        const z = 31 - Math.clz32(rest & -rest);
        const asked = askedOfThree(this.#held, x, y, z);
        looked++;
        if (((timesThatDo(asked) >> (timesXY + ((times >>> (2 * z)) & 3))) & 1) === 0) {
          this.#meter.units += 1 + (looked >> 3);
          return true;
        }
      }
    }
    this.#meter.units += 1 + (looked >> 3);
    return false;
  }

  /** Letters that may come next, in the lowest five bits; those first that come on most sheets. */
  #ways(depth: number, letters: number): number[] {
    const ways: number[] = [];
    for (let bits = letters; bits !== 0; bits &= bits - 1) {
      const letter = 31 - Math.clz32(bits & -bits);
      const on = i32(this.#ready, depth * this.#letters + letter);
      if (on !== 0) ways.push((bitCount(on) << 5) | letter);
    }
    return ways.sort((a, b) => b - a);
  }
}
