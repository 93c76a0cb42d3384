import { i32, u8 } from '../../../base/at.ts';
import type { SetMasks } from '../capped/set-masks.ts';

/** Longest word that is looked at. */
export const MAX_WORD = 255;

/**
 * How many times a letter must come at least in a word that finishes all sheets on some other letters.
 *
 * On each sheet it must come in some gap of the word: no sooner than what precedes it is done, no later
 * than what follows it can still be done. So each sheet asks for a point in an interval of gaps, and the
 * fewest points that meet all intervals are taken greedily (piercing of intervals; from memory). What is
 * done on the other letters is worked out once a word (`read`), for all letters that are put in.
 */
export class WordPoints {
  /** By gap, after `of`: sheets whose interval holds it. */
  readonly open = new Int32Array(MAX_WORD + 1);
  readonly whole: Int32Array;
  readonly #k: number;
  readonly #before: Int32Array;
  readonly #after: Int32Array;
  /** By gap and letter: sheets that it is left on, from the start as soon as can be, and from the end. */
  readonly #left: Int32Array;
  readonly #right: Int32Array;
  /** By place in the word: sheets that its letter comes on, either way. */
  readonly #first: Int32Array;
  readonly #last: Int32Array;
  readonly #begun = new Int32Array(MAX_WORD + 1);
  #word: Uint8Array = new Uint8Array(0);
  #at = 0;
  #length = 0;
  #members: Int32Array = new Int32Array(0);

  constructor({ whole, before }: SetMasks) {
    const k = whole.length;
    this.#k = k;
    this.whole = whole;
    this.#before = before;
    this.#after = new Int32Array(k * k);
    for (let a = 0; a < k; a++) for (let b = 0; b < k; b++) this.#after[a * k + b] = i32(before, b * k + a);
    this.#left = new Int32Array((MAX_WORD + 1) * k);
    this.#right = new Int32Array((MAX_WORD + 1) * k);
    this.#first = new Int32Array(MAX_WORD);
    this.#last = new Int32Array(MAX_WORD);
  }

  /**
   * Reads the word that begins at `at`.
   * @param members the letters that it finishes
   */
  read(word: Uint8Array, at: number, length: number, members: Int32Array): void {
    this.#word = word;
    this.#at = at;
    this.#length = length;
    this.#members = members;
    const k = this.#k;
    const n = members.length;
    const left = this.#left;
    const right = this.#right;
    for (let i = 0; i < n; i++) {
      const l = i32(members, i);
      left[l] = right[length * k + l] = i32(this.whole, l);
    }
    for (let g = 0, row = 0; g < length; g++, row += k) {
      const l = u8(word, at + g);
      const l0 = l * k;
      let held = 0;
      for (let i = 0; i < n; i++) {
        const a = i32(members, i);
        const own = i32(left, row + a);
        left[row + k + a] = own;
        held |= i32(this.#before, l0 + a) & own;
      }
      const own = i32(left, row + l);
      left[row + k + l] = own & held;
      this.#first[g] = own & ~held;
    }
    for (let g = length - 1, row = g * k; g >= 0; g--, row -= k) {
      const l = u8(word, at + g);
      const l0 = l * k;
      let held = 0;
      for (let i = 0; i < n; i++) {
        const a = i32(members, i);
        const own = i32(right, row + k + a);
        right[row + a] = own;
        held |= i32(this.#after, l0 + a) & own;
      }
      const own = i32(right, row + k + l);
      right[row + l] = own & held;
      this.#last[g] = own & ~held;
    }
  }

  /** Fewest times that a letter must come in the word that was read last. */
  of(letter: number): number {
    const k = this.#k;
    const b = letter * k;
    const before = this.#before;
    const after = this.#after;
    const word = this.#word;
    const at = this.#at;
    const length = this.#length;
    const begun = this.#begun;
    const open = this.open;
    const all = i32(this.whole, letter);
    let now = all & ~this.#held(this.#left, 0, before, b);
    begun[0] = now;
    for (let g = 0; g < length; g++) {
      if (now !== all && (i32(before, b + u8(word, at + g)) & i32(this.#first, g)) !== 0)
        now = all & ~this.#held(this.#left, (g + 1) * k, before, b);
      begun[g + 1] = now;
    }
    let can = ~this.#held(this.#right, length * k, after, b);
    let wait = all;
    let points = 0;
    for (let g = length; ; g--) {
      const here = i32(begun, g) & can;
      open[g] = here;
      // Where it has only just begun there is no gap before.
      const close = g === 0 ? here : here & ~i32(begun, g - 1);
      if ((wait & close) !== 0) {
        points++;
        wait &= ~here;
      }
      if (g === 0) return points;
      if ((i32(after, b + u8(word, at + g - 1)) & i32(this.#last, g - 1)) !== 0) can = ~this.#held(this.#right, (g - 1) * k, after, b);
    }
  }

  /** Sheets on which some letter that a letter stands behind is left. */
  #held(rows: Int32Array, row: number, behind: Int32Array, b: number): number {
    const members = this.#members;
    let held = 0;
    for (let i = 0; i < members.length; i++) {
      const a = i32(members, i);
      held |= i32(behind, b + a) & i32(rows, row + a);
    }
    return held;
  }
}
