import { defined, i32, num } from '../../base/at.ts';
import type { Meter, Order } from '../model.ts';
import { MOST_SHEETS } from './capped/set-masks.ts';
import { askedOfThree, shortestOfThree, type PairRows } from './capped/three-needs.ts';

/** Parts of a mount in which a guess is given. */
export const GUESS_PARTS = 16;

/**
 * How much three letters are likely to make others need: what they need themselves, in parts of a
 * mount, less where many shortest words do. Each letter more of a word makes about eight times as many
 * do, so eight words count as a mount less.
 */
export class ThreeGuess {
  readonly #meter: Meter;
  readonly #rows: PairRows;

  /** @param letters different ones; places in this list stand for them */
  constructor(orders: readonly Order[], letters: readonly number[], meter: Meter) {
    const n = letters.length;
    const before = new Int32Array(n * n);
    this.#meter = meter;
    this.#rows = { letters: n, before };
    const place = new Map(letters.map((l, i) => [l, i]));
    orders.slice(0, MOST_SHEETS).forEach(({ letters: own, preds }, sheet) => {
      preds.forEach((earlier, p) => {
        const row = defined(place.get(num(own, p))) * n;
        for (const q of earlier) {
          const at = row + defined(place.get(num(own, q)));
          before[at] = i32(before, at) | (1 << sheet);
        }
      });
      meter.units += own.length;
    });
  }

  /** @param x places of three letters */
  of(x: number, y: number, z: number): number {
    const { least, words } = shortestOfThree(askedOfThree(this.#rows, x, y, z), 7);
    this.#meter.units += 2;
    // Thirds of the logarithm to base 2, straight between powers of 2.
    const power = 31 - Math.clz32(words);
    return Math.max(0, GUESS_PARTS * least - Math.round((GUESS_PARTS * (power + words / 2 ** power - 1)) / 3));
  }
}
