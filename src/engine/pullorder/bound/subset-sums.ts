import { num, u16, u8 } from '../../base/at.ts';
import type { Meter } from '../model.ts';

/** Most letters: a million sets of them. */
export const MAX_SUMMED = 20;
/** Largest number of times that is told apart for `noteCap`. */
const MOST_CAP = 255;
/** Sets that are looked at between two pauses. */
const A_PAUSE = 1 << 16;

/**
 * How often the letters of every set among a few must come together at least, from what is known of
 * some of the sets.
 *
 * Leave each letter of a set of k out in turn: every letter lies in k − 1 of the sets that are left,
 * so the set needs their sum over k − 1; and as letters come in whole numbers, that is rounded up.
 * Rounding at every size, from pairs to all, shows what fractions do not: where four letters need 10,
 * five need 12.5, thus 13, and each letter more adds 3 in the end and not 2.5. It comes as far as a
 * solver of whole numbers on all triples and fours of 20 letters, in a hundredth of its time.
 */
export class SubsetSums {
  readonly letters: readonly number[];
  readonly #meter: Meter;
  readonly #counts: readonly number[];
  /** By set, as bits of places in `letters`. */
  readonly #least: Uint16Array;
  /** By set: no word has each of its letters only so many times. */
  readonly #cap: Uint8Array;

  /**
   * @param letters different letters, at most `MAX_SUMMED`
   * @param counts fewest times of each on its own
   */
  constructor(letters: readonly number[], counts: readonly number[], meter: Meter) {
    this.letters = letters;
    this.#meter = meter;
    this.#counts = counts;
    this.#least = new Uint16Array(2 ** letters.length);
    this.#cap = new Uint8Array(2 ** letters.length);
  }

  /** Notes what a set needs. @returns false when that was known */
  note(set: readonly number[], least: number): boolean {
    const bits = this.#bitsOf(set);
    if (bits < 0 || u16(this.#least, bits) >= least) return false;
    this.#least[bits] = least;
    return true;
  }

  /** Notes that no word has each letter of a set, as bits of places, only `cap` times; nor has it of any set that holds this one. */
  noteCap(set: number, cap: number): void {
    const others = (this.#least.length - 1) & ~set;
    for (let more = others; ; more = (more - 1) & others) {
      const bits = set | more;
      if (u8(this.#cap, bits) < cap) this.#cap[bits] = cap;
      if (more === 0) break;
    }
    this.#meter.units += (others >> 6) + 1;
  }

  /** What a set needs, as bits of places, as far as it was concluded. */
  leastOf(set: number): number {
    return u16(this.#least, set);
  }

  /** Whether it is known that no word has each letter of a set only `cap` times. */
  exceeds(set: number, cap: number): boolean {
    return u8(this.#cap, set) >= cap;
  }

  /** What all the letters need. */
  get total(): number {
    return u16(this.#least, this.#least.length - 1);
  }

  /** Draws the conclusion for all sets, smaller ones first. */
  *sum(): Generator<void, void> {
    const least = this.#least;
    for (let from = 1; from < least.length; from += A_PAUSE) {
      const to = Math.min(least.length, from + A_PAUSE);
      for (let bits = from; bits < to; bits++) {
        least[bits] = this.#concluded(bits);
      }
      this.#meter.units += ((to - from) * this.letters.length) >> 6;
      if (to < least.length) yield;
    }
  }

  /** What a set needs for all that its parts need. */
  #concluded(bits: number): number {
    const least = this.#least;
    let size = 0;
    let sum = 0;
    let most = u16(least, bits);
    let fewest = Infinity;
    let cap = u8(this.#cap, bits);
    for (let left = bits; left !== 0; left &= left - 1) {
      const bit = left & -left;
      const without = u16(least, bits ^ bit);
      const own = without + num(this.#counts, 31 - Math.clz32(bit));
      const capped = u8(this.#cap, bits ^ bit);
      sum += without;
      size++;
      if (own > most) most = own;
      if (without < fewest) fewest = without;
      if (capped > cap) cap = capped;
    }
    if (size > 1) most = Math.max(most, Math.ceil(sum / (size - 1)));
    // Some letter comes more often than the mean, rounded down.
    cap = Math.min(MOST_CAP, Math.max(cap, Math.floor((most - 1) / size)));
    this.#cap[bits] = cap;
    return cap > 0 ? Math.max(most, cap + 1 + fewest) : most;
  }

  /** −1 when some letter is none of these. */
  #bitsOf(set: readonly number[]): number {
    let bits = 0;
    for (const l of set) {
      const place = this.letters.indexOf(l);
      if (place < 0) return -1;
      bits |= 1 << place;
    }
    return bits;
  }
}
