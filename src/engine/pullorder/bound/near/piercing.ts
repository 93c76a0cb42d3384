import { i32, num, u8 } from '../../../base/at.ts';
import { grown } from '../../grown.ts';
import type { SetMasks } from '../capped/set-masks.ts';

/** Longest word that is looked at. */
const MAX_WORD = 255;
/** Bytes that a list of words has room for at first. */
const FIRST_ROOM = 1024;

/** Words of one length, one after another. */
export interface Words {
  count: number;
  letters: Uint8Array;
}

/**
 * Puts a letter into words that finish all sheets on some other letters, such that they finish the
 * letter too.
 *
 * On each sheet the letter must come in some gap of the word: no sooner than what precedes it is done,
 * no later than what follows it can still be done. So a sheet asks for a point in an interval of gaps,
 * and how many times the letter is needed is how many points meet all intervals: the last possible
 * point for the interval that is first to close, over and over (piercing of intervals, greedy; from
 * memory). Sheets are bits of one number.
 */
export class Piercing {
  readonly #k: number;
  readonly #masks: SetMasks;
  /** How many other letters there are. */
  #count = 0;
  /** By letter: its place among the others. */
  readonly #places: Int32Array;
  /** By place: sheets that have the letter. */
  readonly #whole: Int32Array;
  /** Places × places: sheets that have the second before the first, and after it. */
  readonly #before: Int32Array;
  readonly #after: Int32Array;
  /** By place: sheets that have it before the letter that is put in, and after it. */
  readonly #ahead: Int32Array;
  readonly #behind: Int32Array;
  #letter = 0;
  #sheets = 0;
  /** Scratch: sheets that each letter is left on, by place. */
  readonly #left: Int32Array;
  /** By gap: sheets whose interval has begun; and those of them that it has not ended for. */
  readonly #begun = new Int32Array(MAX_WORD + 1);
  readonly #open = new Int32Array(MAX_WORD + 1);
  readonly #word = new Uint8Array(MAX_WORD + 1);
  #from: Uint8Array = new Uint8Array(0);
  #at = 0;
  #length = 0;
  #same = 0;
  #out: Words = { count: 0, letters: new Uint8Array(0) };

  /** @param masks sheets on all letters */
  constructor(masks: SetMasks) {
    const k = masks.whole.length;
    this.#k = k;
    this.#masks = masks;
    this.#places = new Int32Array(k);
    this.#whole = new Int32Array(k);
    this.#before = new Int32Array(k * k);
    this.#after = new Int32Array(k * k);
    this.#ahead = new Int32Array(k);
    this.#behind = new Int32Array(k);
    this.#left = new Int32Array(k);
  }

  /**
   * Makes ready for words on some letters.
   * @param others the letters of the words
   * @param letter the one that is put in
   */
  prepare(others: readonly number[], letter: number): void {
    const k = this.#k;
    const { whole, before } = this.#masks;
    this.#letter = letter;
    this.#sheets = i32(whole, letter);
    const n = (this.#count = others.length);
    for (let i = 0; i < n; i++) {
      const l = num(others, i);
      this.#places[l] = i;
      this.#whole[i] = i32(whole, l);
      this.#ahead[i] = i32(before, letter * k + l);
      this.#behind[i] = i32(before, l * k + letter);
      for (let j = 0; j < n; j++) {
        this.#before[i * n + j] = i32(before, l * k + num(others, j));
        this.#after[i * n + j] = i32(before, num(others, j) * k + l);
      }
    }
  }

  /** Whether so many of the letter do in the word that begins at `at`. */
  does(letters: Uint8Array, at: number, length: number, times: number): boolean {
    this.#from = letters;
    this.#at = at;
    this.#length = length;
    this.#begin();
    return this.#end(times);
  }

  /** Forward over the word: what must precede the letter is done as soon as can be. */
  #begin(): void {
    const n = this.#count;
    const left = this.#left;
    const before = this.#before;
    const ahead = this.#ahead;
    const sheets = this.#sheets;
    for (let i = 0; i < n; i++) left[i] = i32(this.#whole, i);
    for (let g = 0; ; g++) {
      let held = 0;
      for (let i = 0; i < n; i++) held |= i32(ahead, i) & i32(left, i);
      this.#begun[g] = sheets & ~held;
      if (g === this.#length) return;
      const p = i32(this.#places, u8(this.#from, this.#at + g));
      held = 0;
      for (let i = 0, row = p * n; i < n; i++) held |= i32(before, row + i) & i32(left, i);
      left[p] = i32(left, p) & held;
    }
  }

  /** Backward: what must follow is done as late as can be; points are taken as early as can be. */
  #end(times: number): boolean {
    const n = this.#count;
    const left = this.#left;
    const after = this.#after;
    const behind = this.#behind;
    for (let i = 0; i < n; i++) left[i] = i32(this.#whole, i);
    let wait = this.#sheets;
    let points = 0;
    for (let g = this.#length; ; g--) {
      let held = 0;
      for (let i = 0; i < n; i++) held |= i32(behind, i) & i32(left, i);
      const can = i32(this.#begun, g) & ~held;
      this.#open[g] = can;
      // Where it has only just begun there is no gap before.
      const last = g === 0 ? can : can & ~i32(this.#begun, g - 1);
      if ((wait & last) !== 0) {
        if (++points > times) return false;
        wait &= ~can;
      }
      if (g === 0) return wait === 0;
      const p = i32(this.#places, u8(this.#from, this.#at + g - 1));
      held = 0;
      for (let i = 0, row = p * n; i < n; i++) held |= i32(after, row + i) & i32(left, i);
      left[p] = i32(left, p) & held;
    }
  }

  /**
   * Writes all words with exactly so many of the letter put in, after `does`.
   * @param same most of them side by side
   */
  write(times: number, same: number, out: Words): void {
    this.#out = out;
    this.#same = same;
    this.#put({ gap: 0, to: 0 }, this.#sheets, times);
  }

  /** Goes on from a gap of the word that is looked at, and a place in the one that is written. */
  #put({ gap, to }: { gap: number; to: number }, wait: number, times: number): void {
    const length = this.#length;
    if (times === 0) {
      this.#copy(gap, to);
      return;
    }
    for (let g = gap, at = to; ; g++, at++) {
      const here = i32(this.#open, g);
      const rest = wait & ~here;
      for (let own = 1; own <= times && own <= this.#same; own++) {
        if (own === times && rest !== 0) break;
        this.#word[at + own - 1] = this.#letter;
        if (g < length) {
          this.#word[at + own] = u8(this.#from, this.#at + g);
          this.#put({ gap: g + 1, to: at + own + 1 }, rest, times - own);
        } else if (own === times) this.#copy(length, at + own);
      }
      // What closes here would never be met.
      if (g === length || (wait & here & ~i32(this.#open, g + 1)) !== 0) return;
      this.#word[at] = u8(this.#from, this.#at + g);
    }
  }

  /** Adds the word at hand with what is left of the one that is looked at. */
  #copy(gap: number, to: number): void {
    const out = this.#out;
    const size = to + this.#length - gap;
    const at = out.count * size;
    if (at + size > out.letters.length) out.letters = grown(out.letters, Math.max(FIRST_ROOM, 2 * (at + size)));
    for (let i = 0; i < to; i++) out.letters[at + i] = u8(this.#word, i);
    for (let i = to, g = this.#at + gap; i < size; i++, g++) out.letters[at + i] = u8(this.#from, g);
    out.count++;
  }
}
