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
  /** The pulls of each letter on each order, in masks. */
  readonly #own: Int32Array;
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
    this.#own = new Int32Array(orders.length * letterCount * words);
    const set = (masks: Int32Array, at: number, p: number): void => {
      masks[at + (p >>> 5)] = i32(masks, at + (p >>> 5)) | (1 << (p & 31));
    };
    for (const [c, { letters, preds }] of orders.entries()) {
      for (const [p, letter] of letters.entries()) {
        set(this.full, c * words, p);
        set(this.#own, (c * letterCount + letter) * words, p);
        this.letter[c * size + p] = letter;
        for (const q of entryAt(preds, p)) {
          set(this.#preds, (c * size + p) * words, q);
          set(this.#succs, (c * size + q) * words, p);
        }
      }
    }
  }

  /** Whether an order has a letter. */
  has(c: number, letter: number): boolean {
    const { words } = this;
    const own = (c * this.#letters + letter) * words;
    for (let w = 0; w < words; w++) if (this.#own[own + w] !== 0) return true;
    return false;
  }

  /**
   * Prints a letter on order c, as long as it finds work; the mask of what is printed stands at `at`.
   * @returns whether it printed any
   */
  forward(masks: Int32Array, at: number, c: number, letter: number): boolean {
    const { words } = this;
    const own = (c * this.#letters + letter) * words;
    let any = false;
    for (let w = 0; w < words; w++) {
      let left = i32(this.#own, own + w) & ~i32(masks, at + w);
      while (left !== 0) {
        const bit = 31 - Math.clz32(left & -left);
        left &= left - 1;
        if (!this.#met(this.#preds, masks, at, 32 * (c * words + w) + bit)) continue;
        masks[at + w] = i32(masks, at + w) | (1 << bit);
        any = true;
      }
    }
    return any;
  }

  /** The same with time running backwards; the mask is of what comes later. */
  backward(masks: Int32Array, at: number, c: number, letter: number): boolean {
    const { words } = this;
    const own = (c * this.#letters + letter) * words;
    let any = false;
    for (let w = words - 1; w >= 0; w--) {
      let left = i32(this.#own, own + w) & ~i32(masks, at + w);
      while (left !== 0) {
        const bit = 31 - Math.clz32(left);
        left &= ~(1 << bit);
        if (!this.#met(this.#succs, masks, at, 32 * (c * words + w) + bit)) continue;
        masks[at + w] = i32(masks, at + w) | (1 << bit);
        any = true;
      }
    }
    return any;
  }

  #met(needs: Int32Array, masks: Int32Array, at: number, pull: number): boolean {
    const { words } = this;
    for (let w = 0; w < words; w++) if ((i32(needs, pull * words + w) & ~i32(masks, at + w)) !== 0) return false;
    return true;
  }

  /** Whether a letter has a pull on order c that fits between what is printed in the two masks, both at `at`. */
  prints(early: Int32Array, late: Int32Array, at: number, [c, letter]: readonly [number, number]): boolean {
    const { words } = this;
    const own = (c * this.#letters + letter) * words;
    for (let w = 0; w < words; w++) {
      let left = i32(this.#own, own + w);
      while (left !== 0) {
        const bit = 31 - Math.clz32(left);
        left &= ~(1 << bit);
        if (this.fits(early, late, at, 32 * (c * words + w) + bit)) return true;
      }
    }
    return false;
  }

  /** Whether a pull can be printed after what is printed in the one mask and before what comes in the other, both at `at`. */
  fits(early: Int32Array, late: Int32Array, at: number, pull: number): boolean {
    return this.#met(this.#preds, early, at, pull) && this.#met(this.#succs, late, at, pull);
  }
}
