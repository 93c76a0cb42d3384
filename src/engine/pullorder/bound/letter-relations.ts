import { num, u8 } from '../../base/at.ts';
import type { Meter, Model } from '../model.ts';
import { codeOf } from './small-orders.ts';

/** Bytes that tables may take. */
const MOST = 4_000_000;

/** Which letters each order has, and which come before which; for letters that come once a sheet at most. */
export class LetterRelations {
  readonly orders: number;
  readonly #letters: number;
  /** Orders × letters. */
  readonly #has: Uint8Array;
  /** Orders × letters × letters: 1 where the second letter comes before the first. */
  readonly #before: Uint8Array;
  readonly #twice = new Set<number>();
  /** Scratch: letters before each. */
  readonly #masks = [0, 0, 0, 0];

  private constructor({ orders, letterCount }: Model) {
    this.orders = orders.length;
    this.#letters = letterCount;
    this.#has = new Uint8Array(orders.length * letterCount);
    this.#before = new Uint8Array(orders.length * letterCount ** 2);
    orders.forEach(({ letters, preds }, c) => {
      letters.forEach((l, p) => {
        if (u8(this.#has, c * letterCount + l) === 1) this.#twice.add(l);
        this.#has[c * letterCount + l] = 1;
        for (const q of preds[p] ?? []) this.#before[(c * letterCount + l) * letterCount + num(letters, q)] = 1;
      });
    });
  }

  /** The tables of a model; null when they would be long. */
  static of(model: Model, meter: Meter): LetterRelations | null {
    const size = model.orders.length * model.letterCount ** 2;
    if (size > MOST) return null;
    meter.units += (size >> 6) + model.orders.reduce((n, { preds }) => n + preds.reduce((m, own) => m + own.length, 0), 0);
    return new LetterRelations(model);
  }

  /** Whether some of these letters comes twice on a sheet. */
  anyTwice(letters: readonly number[]): boolean {
    return letters.some((l) => this.#twice.has(l));
  }

  /** Code of an order with all but some letters struck out (`codeOf`); at most four letters. */
  code(order: number, letters: readonly number[]): number {
    const k = letters.length;
    let present = 0;
    for (let a = 0; a < k; a++) present |= u8(this.#has, order * this.#letters + num(letters, a)) << a;
    if (present === 0) return 0;
    for (let a = 0; a < k; a++) {
      const at = (order * this.#letters + num(letters, a)) * this.#letters;
      let mask = 0;
      for (let b = 0; b < k; b++) mask |= u8(this.#before, at + num(letters, b)) << b;
      this.#masks[a] = mask;
    }
    return codeOf(k, present, this.#masks);
  }
}
