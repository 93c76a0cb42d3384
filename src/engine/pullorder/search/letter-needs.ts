import { entryAt, i32, num } from '../../base/at.ts';
import type { Model } from '../model.ts';
import { worthTable } from './ranking.ts';

/** How many orders still need each letter, and what it is worth that fewer do. */
export class LetterNeeds {
  /** By place: how many orders have the letter. */
  readonly start: Int32Array;
  /** Where a letter stands in lists of needs, −1 for one that no order has. */
  readonly #place: Int32Array;
  /** By place and need: how much of the letter is dealt with, in thousandths. */
  readonly #worths: Int32Array[];

  constructor(model: Model) {
    this.#place = new Int32Array(model.letterCount).fill(-1);
    const totals: number[] = [];
    for (const order of model.orders) {
      for (const l of new Set(order.letters)) {
        if (i32(this.#place, l) < 0) this.#place[l] = totals.push(0) - 1;
        const place = i32(this.#place, l);
        totals[place] = num(totals, place) + 1;
      }
    }
    this.start = Int32Array.from(totals);
    this.#worths = totals.map(worthTable);
  }

  /** What it is worth that so many orders fewer need a letter, in thousandths. */
  gain(needs: Int32Array, letter: number, fewer: number): number {
    const place = i32(this.#place, letter);
    const worth = entryAt(this.#worths, place);
    const need = i32(needs, place);
    return i32(worth, need - fewer) - i32(worth, need);
  }

  /** Notes that so many orders fewer need a letter. */
  take(needs: Int32Array, letter: number, fewer: number): void {
    const place = i32(this.#place, letter);
    needs[place] = i32(needs, place) - fewer;
  }

  /** How much of all letters is dealt with, in thousandths of a letter. */
  worthOf(needs: Int32Array): number {
    let worth = 0;
    for (let place = 0; place < needs.length; place++) worth += i32(entryAt(this.#worths, place), i32(needs, place));
    return worth;
  }
}
