import { i32, num } from '../../../base/at.ts';
import { bitsAt } from '../../../base/bits.ts';
import type { Meter } from '../../model.ts';
import { implies } from '../sets/letter-sets.ts';
import type { SetOrder } from '../sets/set-order.ts';
import { setsOf } from '../sets/sets-of.ts';
import type { SetCounts } from './set-counts.ts';
import { TimesLeft } from './times-left.ts';

/** Whether what is left on each four letters can be finished with what is left of their times; tables are made when it is first asked. */
export class FoursLeft {
  readonly #sheets: readonly SetOrder[];
  readonly #places: number[];
  readonly #counts: SetCounts;
  readonly #meter: Meter;
  #rests: TimesLeft | null = null;
  /** Bits of sheets that no other one implies; what is left of those implies what is left of the others. */
  #kept: number[] = [];
  /** Scratch: letters that are left, by kept sheet; times by letter. */
  #left = new Int32Array(0);
  readonly #times = new Int32Array(32);

  /** @param set letters as bits; from here on they stand by their place in it */
  constructor(sheets: readonly SetOrder[], set: number, counts: SetCounts, meter: Meter) {
    this.#sheets = sheets;
    this.#places = [...Array(32).keys()].filter((l) => (set >>> l) & 1);
    this.#counts = counts;
    this.#meter = meter;
  }

  /**
   * @param rows from `at` on: for each letter bits of the sheets that it is left on, then times in two bits a letter
   * @param changed the letter that has just come, −1 for none
   */
  fail(rows: Int32Array, at: number, changed: number): boolean {
    const rests = (this.#rests ??= this.#begin());
    const k = this.#places.length;
    const left = this.#left;
    for (let c = 0; c < left.length; c++) {
      const sheet = num(this.#kept, c);
      let letters = 0;
      for (let l = 0; l < k; l++) letters |= ((i32(rows, at + l) >>> sheet) & 1) << l;
      left[c] = letters;
    }
    for (let l = 0; l < k; l++) this.#times[l] = (i32(rows, at + k) >>> (2 * l)) & 3;
    return rests.fail(left, this.#times, changed < 0 ? -1 : 1 << changed);
  }

  #begin(): TimesLeft {
    const places = this.#places;
    const orders = this.#sheets.map(({ present, preds }) => ({
      present: bitsAt(present, places),
      preds: places.map((p) => ((present >> p) & 1 ? bitsAt(num(preds, p), places) : 0)),
    }));
    const kept = orders.flatMap((a, i) => (orders.some((b, j) => i !== j && implies(b, a) && (j < i || !implies(a, b))) ? [] : [i]));
    this.#kept = kept;
    this.#left = new Int32Array(kept.length);
    this.#meter.units += (orders.length ** 2) >> 1;
    const fours = [...setsOf([...places.keys()], 4)];
    return new TimesLeft(
      orders.filter((_, i) => kept.includes(i)),
      fours,
      this.#counts,
      this.#meter,
    );
  }
}
