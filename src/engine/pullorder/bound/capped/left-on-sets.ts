import { i32, num, u8 } from '../../../base/at.ts';
import { bitsAt } from '../../../base/bits.ts';
import type { Meter } from '../../model.ts';
import type { SetOrder } from '../set-order-table.ts';
import { codeOf, type SmallOrders } from '../small-orders.ts';
import type { SetCounts } from './set-counts.ts';

/** A place that no letter has; its bit is never set. */
const NONE = 31;

/**
 * What is left of some orders on each three or each four of their letters, and whether the times
 * that are left of those letters can finish it.
 */
export class LeftOnSets {
  readonly #counts: SetCounts;
  readonly #meter: Meter;
  readonly #part: Int16Array;
  readonly #orders: number;
  /** Sets × 4: their letters. */
  readonly #sets: Uint8Array;
  /** Sets as bits of letters. */
  readonly #bits: Int32Array;
  /** Sets × orders: numbers of the whole orders on a set. */
  readonly #whole: Int16Array;
  /** Sets, those first that failed lately. */
  readonly #queue: Int32Array;
  /** Scratch: a set of small orders. */
  readonly #mask: Int32Array;

  /** @param sets of as many letters as `counts` is for */
  constructor(orders: readonly SetOrder[], sets: readonly (readonly number[])[], counts: SetCounts, meter: Meter) {
    const small = counts.sets.orders;
    this.#counts = counts;
    this.#meter = meter;
    this.#part = partsOf(small);
    this.#orders = orders.length;
    this.#sets = new Uint8Array(4 * sets.length).fill(NONE);
    sets.forEach((set, t) => this.#sets.set(set, 4 * t));
    this.#bits = Int32Array.from(sets, (set) => set.reduce((bits, l) => bits | (1 << l), 0));
    this.#queue = Int32Array.from(sets, (_, t) => t);
    this.#mask = new Int32Array(small.words);
    this.#whole = new Int16Array(sets.length * orders.length);
    const masks = [0, 0, 0, 0];
    sets.forEach((set, t) =>
      orders.forEach(({ present, preds }, c) => {
        set.forEach((l, i) => (masks[i] = (present >> l) & 1 ? bitsAt(num(preds, l), set) : 0));
        this.#whole[t * orders.length + c] = num(small.idOf, codeOf(small.k, bitsAt(present, set), masks));
      }),
    );
    meter.units += this.#whole.length;
  }

  /**
   * Whether what is left on some set with a changed letter cannot be finished.
   * @param left letters that are left, by order; what words lead to
   * @param times by letter, how often it may come; 32 of them
   * @param changed bits of letters
   */
  fail(left: Int32Array, times: Int32Array, changed: number): boolean {
    const queue = this.#queue;
    for (let q = 0; q < queue.length; q++) {
      const t = i32(queue, q);
      if ((i32(this.#bits, t) & changed) === 0 || this.#suffice(t, left, times)) continue;
      queue.copyWithin(1, 0, q);
      queue[0] = t;
      return true;
    }
    return false;
  }

  #suffice(t: number, left: Int32Array, times: Int32Array): boolean {
    const a = u8(this.#sets, 4 * t);
    const b = u8(this.#sets, 4 * t + 1);
    const c = u8(this.#sets, 4 * t + 2);
    const d = u8(this.#sets, 4 * t + 3);
    const mask = this.#mask;
    mask.fill(0);
    for (let s = 0, at = t * this.#orders; s < this.#orders; s++, at++) {
      const own = i32(left, s);
      const here = ((own >> a) & 1) | (((own >> b) & 1) << 1) | (((own >> c) & 1) << 2) | (((own >> d) & 1) << 3);
      const id = num(this.#part, (num(this.#whole, at) << 4) | here);
      mask[id >> 5] = i32(mask, id >> 5) | (1 << (id & 31));
    }
    this.#meter.units += mask.length + (this.#orders >> 4);
    const packed = i32(times, a) | (i32(times, b) << 2) | (i32(times, c) << 4) | (i32(times, d) << 6);
    return this.#counts.suffice(this.#counts.sets.setOf(mask), packed);
  }
}

const parts = new WeakMap<SmallOrders, Int16Array>();

/** Numbers of orders × masks of letters that are left → the number of what is left; for masks that words lead to. */
function partsOf(orders: SmallOrders): Int16Array {
  const known = parts.get(orders);
  if (known) return known;
  const table = new Int16Array(orders.count << 4);
  const enter = (whole: number, id: number): void => {
    table[(whole << 4) | u8(orders.present, id)] = id;
    for (let l = 0; l < orders.k; l++) {
      const next = num(orders.next, id * orders.k + l);
      if (next !== id) enter(whole, next);
    }
  };
  for (let id = 0; id < orders.count; id++) enter(id, id);
  parts.set(orders, table);
  return table;
}
