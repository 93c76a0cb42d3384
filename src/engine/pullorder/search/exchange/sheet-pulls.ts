import { entryAt, i32 } from '../../../base/at.ts';
import type { Model } from '../../model.ts';

/** The pulls of all orders as masks, a bit a pull, so that a letter is printed in a few steps; of models that cascade. */
export class SheetPulls {
  /** Orders, and numbers of 32 bits that the mask of one takes. */
  readonly count: number;
  readonly words: number;
  /** All pulls of each order. */
  readonly full: Int32Array;
  /** Letter of each pull, by order and pull. */
  readonly letter: Int32Array;
  /** What must come before and after each pull, by order and pull, in masks. */
  readonly #preds: Int32Array;
  readonly #succs: Int32Array;
  /** Where the pulls of each letter on each order begin in `#pulls`. */
  readonly #starts: Int32Array;
  readonly #pulls: Int32Array;
  readonly #letters: number;

  constructor({ orders, letterCount }: Model) {
    const most = orders.reduce((n, { letters }) => Math.max(n, letters.length), 1);
    const words = (most + 31) >>> 5;
    const size = 32 * words;
    this.count = orders.length;
    this.words = words;
    this.#letters = letterCount;
    this.full = new Int32Array(orders.length * words);
    this.letter = new Int32Array(orders.length * size);
    this.#preds = new Int32Array(orders.length * size * words);
    this.#succs = new Int32Array(orders.length * size * words);
    this.#starts = new Int32Array(orders.length * letterCount + 1);
    const set = (masks: Int32Array, at: number, p: number): void => {
      masks[at + (p >>> 5)] = i32(masks, at + (p >>> 5)) | (1 << (p & 31));
    };
    const pulls: number[] = [];
    for (const [c, { letters, preds }] of orders.entries()) {
      const own: number[][] = Array.from({ length: letterCount }, () => []);
      for (const [p, letter] of letters.entries()) {
        set(this.full, c * words, p);
        this.letter[c * size + p] = letter;
        entryAt(own, letter).push(p);
        for (const q of entryAt(preds, p)) {
          set(this.#preds, (c * size + p) * words, q);
          set(this.#succs, (c * size + q) * words, p);
        }
      }
      for (const [letter, of] of own.entries()) {
        this.#starts[c * letterCount + letter] = pulls.length;
        for (const p of of) pulls.push(c * size + p);
      }
    }
    this.#starts[orders.length * letterCount] = pulls.length;
    this.#pulls = Int32Array.from(pulls);
  }

  /** Prints a letter on order c, as long as it finds work; the mask of what is printed stands at `at`. */
  forward(masks: Int32Array, at: number, c: number, letter: number): void {
    const end = i32(this.#starts, c * this.#letters + letter + 1);
    for (let n = i32(this.#starts, c * this.#letters + letter); n < end; n++) this.#add(this.#preds, masks, at, i32(this.#pulls, n));
  }

  /** The same with time running backwards; the mask is of what comes later. */
  backward(masks: Int32Array, at: number, c: number, letter: number): void {
    const start = i32(this.#starts, c * this.#letters + letter);
    for (let n = i32(this.#starts, c * this.#letters + letter + 1) - 1; n >= start; n--)
      this.#add(this.#succs, masks, at, i32(this.#pulls, n));
  }

  /** Prints pull `pull` (by order and pull) of the order whose mask stands at `at`, where its needs are met. */
  #add(needs: Int32Array, masks: Int32Array, at: number, pull: number): void {
    if (!this.#met(needs, masks, at, pull)) return;
    const p = pull % (32 * this.words);
    masks[at + (p >>> 5)] = i32(masks, at + (p >>> 5)) | (1 << (p & 31));
  }

  #met(needs: Int32Array, masks: Int32Array, at: number, pull: number): boolean {
    const { words } = this;
    for (let w = 0; w < words; w++) if ((i32(needs, pull * words + w) & ~i32(masks, at + w)) !== 0) return false;
    return true;
  }

  /** Whether a pull can be printed after what is printed in the one mask and before what comes in the other, both at `at`. */
  fits(early: Int32Array, late: Int32Array, at: number, pull: number): boolean {
    return this.#met(this.#preds, early, at, pull) && this.#met(this.#succs, late, at, pull);
  }
}
