import { i32 } from '../../../base/at.ts';
import type { Meter } from '../../model.ts';
import { LeftOnSets } from '../sets/left-on-sets.ts';
import type { SetOrder } from '../sets/set-order.ts';
import type { SetCounts } from './set-counts.ts';

/** Whether the times that are left of each three or each four letters can finish what is left on them. */
export class TimesLeft {
  readonly #counts: SetCounts;
  readonly #rests: LeftOnSets;
  readonly #meter: Meter;
  /** Units that a look at a set is worth. */
  readonly #look: number;
  /** Sets as bits of letters. */
  readonly #bits: Int32Array;
  /** Sets, those first that failed lately. */
  readonly #queue: Int32Array;

  /** @param sets of as many letters as `counts` is for */
  constructor(orders: readonly SetOrder[], sets: readonly (readonly number[])[], counts: SetCounts, meter: Meter) {
    this.#counts = counts;
    this.#meter = meter;
    this.#look = counts.sets.orders.words + (orders.length >> 4);
    this.#rests = new LeftOnSets(orders, sets, counts.sets.orders, meter);
    this.#bits = Int32Array.from(sets, (set) => set.reduce((bits, l) => bits | (1 << l), 0));
    this.#queue = Int32Array.from(sets, (_, t) => t);
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
    this.#meter.units += this.#look;
    let packed = 0;
    for (let i = 0; i < 4; i++) packed |= i32(times, this.#rests.letter(t, i)) << (2 * i);
    return this.#counts.suffice(this.#counts.sets.setOf(this.#rests.on(t, left)), packed);
  }
}
