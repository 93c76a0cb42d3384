import { i32 } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';

/** Places that are told apart within a 32-bit word. */
const LOW = 5;
/** By low place: bits of a word whose sets hold it. */
const HOLDS = [0xaaaaaaaa, 0xcccccccc, 0xf0f0f0f0, 0xff00ff00, 0xffff0000].map((bits) => bits | 0);
/** By how many low places: bits of a word whose sets hold so many. */
const SIZES = Array.from({ length: LOW + 1 }, (_, size) => {
  let bits = 0;
  for (let low = 0; low < 32; low++) if (bitCount(low) === size) bits |= 1 << low;
  return bits;
});

/** Sets among a few letters that are ruled out, with all that hold them: one bit a set. */
export class RefutedSets {
  readonly #words: Int32Array;
  /** Where the search for sets of a size stands. */
  #size = -1;
  #at = 0;

  /** @param letters how many, at most 25 */
  constructor(letters: number) {
    this.#words = new Int32Array(1 << Math.max(0, letters - LOW));
    // Places that no letter has.
    for (let place = letters; place < LOW; place++) this.note(1 << place);
  }

  /** Rules out a set, as bits of places, and all that hold it. */
  note(set: number): void {
    let bits = -1;
    for (let place = 0; place < LOW; place++) if ((set >> place) & 1) bits &= HOLDS[place] ?? 0;
    const high = set >> LOW;
    const others = (this.#words.length - 1) & ~high;
    for (let more = others; ; more = (more - 1) & others) {
      this.#words[high | more] = i32(this.#words, high | more) | bits;
      if (more === 0) return;
    }
  }

  /** A set of so many letters that is not ruled out; −1 when there is none. What was looked at before is not again while the size stays. */
  next(size: number): number {
    if (this.#size !== size) this.#at = 0;
    this.#size = size;
    for (; this.#at < this.#words.length; this.#at++) {
      const low = size - bitCount(this.#at);
      if (low < 0 || low > LOW) continue;
      const open = (SIZES[low] ?? 0) & ~i32(this.#words, this.#at);
      if (open !== 0) return (this.#at << LOW) | (31 - Math.clz32(open & -open));
    }
    return -1;
  }
}
