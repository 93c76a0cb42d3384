import { i16, i32, num, u8 } from '../../base/at.ts';
import type { Meter, Model } from '../model.ts';

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
  /** Letters × words: orders that have a letter, as bits. */
  readonly #words: number;
  readonly #ordersWith: Int32Array;
  /** Letters × letters: 1 where some order has the second letter before the first. */
  readonly #somewhere: Uint8Array;

  private constructor({ orders, letterCount }: Model) {
    this.orders = orders.length;
    this.#letters = letterCount;
    this.#has = new Uint8Array(orders.length * letterCount);
    this.#before = new Uint8Array(orders.length * letterCount ** 2);
    this.#words = (orders.length + 31) >> 5;
    this.#ordersWith = new Int32Array(letterCount * this.#words);
    this.#somewhere = new Uint8Array(letterCount ** 2);
    orders.forEach(({ letters, preds }, c) => {
      letters.forEach((l, p) => {
        if (u8(this.#has, c * letterCount + l) === 1) this.#twice.add(l);
        this.#has[c * letterCount + l] = 1;
        const word = l * this.#words + (c >> 5);
        this.#ordersWith[word] = i32(this.#ordersWith, word) | (1 << (c & 31));
        for (const q of preds[p] ?? []) {
          this.#before[(c * letterCount + l) * letterCount + num(letters, q)] = 1;
          this.#somewhere[l * letterCount + num(letters, q)] = 1;
        }
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

  /**
   * What orders ask of a few letters, each of which some order has.
   * @param letters two to four; of three those orders are looked at that hold all of them, and what others ask of two
   * @param ids numbers of small orders on so many letters, by code
   * @param set to enter the numbers in, as bits
   */
  enter(letters: readonly number[], ids: Int16Array, set: Int32Array): void {
    if (letters.length !== 3) {
      for (let c = 0; c < this.orders; c++) enterBit(set, i16(ids, this.#code(c, letters)));
      return;
    }
    for (let x = 0; x < 3; x++) {
      enterBit(set, i16(ids, 1 << x));
      for (let y = 0; y < 3; y++)
        if (u8(this.#somewhere, num(letters, x) * this.#letters + num(letters, y)) === 1)
          enterBit(set, i16(ids, (1 << x) | (1 << y) | (1 << (3 * (x + 1) + y))));
    }
    for (let w = 0; w < this.#words; w++) {
      let all = -1;
      for (let x = 0; x < 3; x++) all &= i32(this.#ordersWith, num(letters, x) * this.#words + w);
      for (; all !== 0; all &= all - 1) enterBit(set, i16(ids, this.#code((w << 5) + 31 - Math.clz32(all & -all), letters)));
    }
  }

  /** Code of an order with all but some letters struck out (`codeOf`); at most four letters. */
  #code(order: number, letters: readonly number[]): number {
    const n = this.#letters;
    const k = letters.length;
    let code = 0;
    for (let a = 0; a < k; a++) {
      const own = order * n + num(letters, a);
      if (u8(this.#has, own) === 0) continue;
      code |= 1 << a;
      for (let b = 0; b < k; b++) code |= u8(this.#before, own * n + num(letters, b)) << (k * (a + 1) + b);
    }
    return code;
  }
}

/** Takes a number into a set of bits. */
export function enterBit(set: Int32Array, number: number): void {
  set[number >> 5] = i32(set, number >> 5) | (1 << (number & 31));
}
