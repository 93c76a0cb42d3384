import { defined, i32, num } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { Meter, Order } from '../model.ts';
import { precedenceOf } from './once/precedence.ts';

/** How much each two letters clash: what they need together beyond what each needs alone. */
export class Clashes {
  readonly #letters: readonly number[];
  readonly #random: Random;
  readonly #meter: Meter;
  readonly #excess = new Map<number, Map<number, number>>();

  constructor(letters: readonly number[], random: Random, meter: Meter) {
    this.#letters = letters;
    this.#random = random;
    this.#meter = meter;
  }

  /** Notes the excess of two letters. */
  set(a: number, b: number, excess: number): void {
    for (const [one, other] of [
      [a, b],
      [b, a],
    ] as const) {
      if (!this.#excess.has(one)) this.#excess.set(one, new Map());
      defined(this.#excess.get(one)).set(other, excess);
    }
  }

  /** Notes an excess of 1 for all letters that sheets have both ways round; for so many letters that looking at each pair costs too much. */
  seeIn(orders: readonly Order[]): void {
    const letters = this.#letters;
    const { clash, words } = precedenceOf(orders, letters, this.#meter);
    for (let i = 0; i < letters.length; i++) {
      for (let j = 0; j < i; j++) if ((i32(clash, i * words + (j >> 5)) >> (j & 31)) & 1) this.set(num(letters, j), num(letters, i), 1);
    }
    this.#meter.units += (letters.length ** 2) >> 3;
  }

  /** The excess of two letters, 0 when none was noted. */
  get(a: number, b: number): number {
    return this.#excess.get(a)?.get(b) ?? 0;
  }

  /**
   * Splits all letters into groups that clash much within; another split at each call.
   * @param size most letters in a group
   */
  split(size: number): number[][] {
    if (this.#excess.size === 0) return this.#letters.map((l) => [l]);
    this.#meter.units += this.#letters.length ** 2;
    const left = new Set(this.#random.shuffle(this.#letters));
    const groups: number[][] = [];
    for (const first of [...left]) {
      if (!left.delete(first)) continue;
      const group = [first];
      while (group.length < size && left.size > 0) {
        const next = this.#worst(group, left);
        if (next < 0) break;
        left.delete(next);
        group.push(next);
      }
      groups.push(group);
    }
    return groups;
  }

  /** The letter that clashes most with a group, −1 when none does. */
  #worst(group: readonly number[], left: Iterable<number>): number {
    let worst = -1;
    let most = 0;
    for (const l of left) {
      let clash = 0;
      for (const g of group) clash += this.get(g, l);
      if (clash > most) {
        most = clash;
        worst = l;
      }
    }
    return worst;
  }
}
