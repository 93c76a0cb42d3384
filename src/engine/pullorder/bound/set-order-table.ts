import { defined, entryAt, num, u16 } from '../../base/at.ts';
import type { Meter } from '../model.ts';
import type { SmallOrders } from './small-orders.ts';

/** One order on a few letters: bits of its letters, and for each letter the bits of those before it. */
export interface SetOrder {
  present: number;
  preds: number[];
}

/** One order on a few letters: its down-sets, where letters lead, and what is left on each four letters. */
export class SetOrderTable {
  /** The full down-set. */
  readonly last: number;
  readonly #letters: number;
  readonly #fours: number;
  /** Down-sets × letters. */
  readonly #steps: Uint16Array;
  /** Down-sets × fours; numbers of small orders. */
  readonly #left: Int16Array;

  /**
   * @param fours sets of four letters
   * @param small the numbering of orders on four letters
   */
  constructor(order: SetOrder, fours: readonly (readonly number[])[], small: SmallOrders, meter: Meter) {
    const k = order.preds.length;
    const downs = downSets(order);
    this.last = downs.length - 1;
    this.#letters = k;
    this.#fours = fours.length;
    const number = new Map(downs.map((down, s) => [down, s]));
    this.#steps = new Uint16Array(downs.length * k);
    this.#left = new Int16Array(downs.length * fours.length);
    const owns = fours.map((set) => set.map((l) => bitsOf(num(order.preds, l), set)));
    downs.forEach((down, s) => {
      for (let l = 0; l < k; l++) this.#steps[s * k + l] = comes(order, down, l) ? defined(number.get(down | (1 << l))) : s;
      const open = order.present & ~down;
      for (let t = 0; t < fours.length; t++) {
        const here = bitsOf(open, entryAt(fours, t));
        const own = entryAt(owns, t);
        let code = here;
        for (let i = 0; i < 4; i++) if ((here >> i) & 1) code |= (num(own, i) & here) << (4 * (i + 1));
        this.#left[s * fours.length + t] = num(small.idOf, code);
      }
    });
    meter.units += downs.length * (1 + (fours.length >> 2));
  }

  /** Where a letter leads; the same down-set when it finds no work. */
  step(down: number, letter: number): number {
    return u16(this.#steps, down * this.#letters + letter);
  }

  /** Number of what is left on a set of four letters. */
  left(down: number, four: number): number {
    return num(this.#left, down * this.#fours + four);
  }
}

/** The bits of a mask at four letters, as the lowest four bits. */
function bitsOf(mask: number, [a = 0, b = 0, c = 0, d = 0]: readonly number[]): number {
  return ((mask >> a) & 1) | (((mask >> b) & 1) << 1) | (((mask >> c) & 1) << 2) | (((mask >> d) & 1) << 3);
}

/** Whether a letter is left and its turn has come. */
function comes({ present, preds }: SetOrder, down: number, letter: number): boolean {
  return ((present & ~down) >> letter) & 1 ? (num(preds, letter) & ~down) === 0 : false;
}

/** All down-sets, as bits of letters; the empty one first, the full one last. */
function downSets(order: SetOrder): number[] {
  const downs = [0];
  const found = new Set(downs);
  for (let s = 0; s < downs.length; s++) {
    for (let l = 0; l < order.preds.length; l++) {
      const down = num(downs, s) | (1 << l);
      if (!comes(order, num(downs, s), l) || found.has(down)) continue;
      found.add(down);
      downs.push(down);
    }
  }
  return downs;
}
