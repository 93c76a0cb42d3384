import { i32, num, u16, u8 } from '../../../base/at.ts';
import { bitsAt } from '../../../base/bits.ts';
import type { Meter } from '../../model.ts';
import type { SetOrder } from './set-order.ts';
import { codeOf, type SmallOrders } from './small-orders.ts';

/** A place that no letter has; its bit is never set. */
const NONE = 31;

/** What is left of some orders on each three or each four of their letters. */
export class LeftOnSets {
  readonly #part: Uint16Array;
  readonly #orders: number;
  /** Sets × 4: their letters. */
  readonly #sets: Uint8Array;
  /** Sets × orders: numbers of the whole orders on a set. */
  readonly #whole: Uint16Array;
  /** Scratch: a set of small orders. */
  readonly #mask: Int32Array;

  /** @param sets of as many letters as `small` has, three or four */
  constructor(orders: readonly SetOrder[], sets: readonly (readonly number[])[], small: SmallOrders, meter: Meter) {
    this.#part = partsOf(small);
    this.#orders = orders.length;
    this.#sets = new Uint8Array(4 * sets.length).fill(NONE);
    sets.forEach((set, t) => this.#sets.set(set, 4 * t));
    this.#mask = new Int32Array(small.words);
    this.#whole = new Uint16Array(sets.length * orders.length);
    const masks = [0, 0, 0, 0];
    sets.forEach((set, t) =>
      orders.forEach(({ present, preds }, c) => {
        set.forEach((l, i) => (masks[i] = (present >> l) & 1 ? bitsAt(num(preds, l), set) : 0));
        this.#whole[t * orders.length + c] = num(small.idOf, codeOf(small.k, bitsAt(present, set), masks));
      }),
    );
    meter.units += this.#whole.length;
  }

  /** The letters of a set, the first of them 0; 31 for a fourth that there is not. */
  letter(t: number, place: number): number {
    return u8(this.#sets, 4 * t + place);
  }

  /** The place of a letter in a set that holds it. */
  placeOf(t: number, letter: number): number {
    let place = 0;
    while (u8(this.#sets, 4 * t + place) !== letter) place++;
    return place;
  }

  /**
   * What is left on a set, as numbers of small orders; overwritten by the next question.
   * @param left letters that are left, by order; what words lead to
   */
  on(t: number, left: Int32Array): Int32Array {
    const a = u8(this.#sets, 4 * t);
    const b = u8(this.#sets, 4 * t + 1);
    const c = u8(this.#sets, 4 * t + 2);
    const d = u8(this.#sets, 4 * t + 3);
    const mask = this.#mask;
    mask.fill(0);
    for (let s = 0, at = t * this.#orders; s < this.#orders; s++, at++) {
      const own = i32(left, s);
      const here = ((own >> a) & 1) | (((own >> b) & 1) << 1) | (((own >> c) & 1) << 2) | (((own >> d) & 1) << 3);
      const id = u16(this.#part, (u16(this.#whole, at) << 4) | here);
      mask[id >> 5] = i32(mask, id >> 5) | (1 << (id & 31));
    }
    mask[0] = i32(mask, 0) & ~1;
    return mask;
  }
}

const parts = new WeakMap<SmallOrders, Uint16Array>();

/** Numbers of orders × masks of letters that are left → the number of what is left; for masks that words lead to. */
function partsOf(orders: SmallOrders): Uint16Array {
  const known = parts.get(orders);
  if (known) return known;
  const table = new Uint16Array(orders.count << 4);
  const enter = (whole: number, id: number): void => {
    table[(whole << 4) | u8(orders.present, id)] = id;
    for (let l = 0; l < orders.k; l++) {
      const next = u16(orders.next, id * orders.k + l);
      if (next !== id) enter(whole, next);
    }
  };
  for (let id = 0; id < orders.count; id++) enter(id, id);
  parts.set(orders, table);
  return table;
}
