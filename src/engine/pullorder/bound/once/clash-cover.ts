import { i32 } from '../../../base/at.ts';
import type { Precedence } from './precedence.ts';

/**
 * Splits some letters into classes of letters that all clash with each other: of each class one
 * letter at most comes once, so there are no more of such than classes. Greedy, lower places first.
 */
export class ClashCover {
  readonly #clash: Int32Array;
  readonly #words: number;
  readonly #open: Int32Array;
  readonly #class: Int32Array;

  constructor({ clash, words }: Precedence) {
    this.#clash = clash;
    this.#words = words;
    this.#open = new Int32Array(words);
    this.#class = new Int32Array(words);
  }

  /**
   * @param given letters as bits, from word `from` on
   * @param found `order` gets the letters class by class, `classes` the number of each one's class, from 1; from entry `to` on
   * @returns how many letters there are
   */
  cover({ set, from }: { set: Int32Array; from: number }, found: { order: Int32Array; classes: Int32Array; to: number }): number {
    const { order, classes, to } = found;
    const words = this.#words;
    const open = this.#open;
    const own = this.#class;
    for (let w = 0; w < words; w++) open[w] = i32(set, from + w);
    let count = 0;
    for (let first = 0, number = 1; ; number++) {
      while (first < words && open[first] === 0) first++;
      if (first === words) return count;
      for (let w = first; w < words; w++) own[w] = i32(open, w);
      for (let w = first; w < words;) {
        const bits = i32(own, w);
        if (bits === 0) {
          w++;
          continue;
        }
        const letter = w * 32 + 31 - Math.clz32(bits & -bits);
        open[w] = i32(open, w) & ~(bits & -bits);
        own[w] = bits & (bits - 1);
        for (let v = w; v < words; v++) own[v] = i32(own, v) & i32(this.#clash, letter * words + v);
        order[to + count] = letter;
        classes[to + count++] = number;
      }
    }
  }
}
