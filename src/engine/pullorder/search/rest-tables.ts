import { entryAt, i32, u8 } from '../../base/at.ts';
import type { TabledGroup } from './group-table.ts';
import type { SheetRows } from './sheet-rows.ts';

/**
 * What is still to come at least from a tuple of states, by splits of the letters into groups with
 * tables: the sum of a split's tables, of several splits the largest sum.
 */
export class RestTables {
  /** How many tables there are. */
  readonly tables: number;
  readonly #sheets: readonly SheetRows[];
  /** The tuple at hand; others write it. */
  readonly #now: Int32Array;
  readonly #letterCount: number;
  readonly #least: Uint8Array[];
  /** Tables of each split; those of one stand side by side. */
  readonly #sizes: Int32Array;
  /** Which table has a letter, splits × letters. */
  readonly #tableOf: Int32Array;
  /** By table and by split: what was still to come where `startFromNow` was called. */
  readonly #here: Int32Array;
  readonly #sums: Int32Array;

  constructor(splits: readonly (readonly TabledGroup[])[], sheets: readonly SheetRows[], now: Int32Array, letterCount: number) {
    const groups = splits.flat();
    this.tables = groups.length;
    this.#sheets = sheets;
    this.#now = now;
    this.#letterCount = letterCount;
    this.#least = groups.map((group) => group.table.least);
    this.#sizes = Int32Array.from(splits, (split) => split.length);
    this.#tableOf = new Int32Array(splits.length * letterCount);
    splits.forEach((split, s) => {
      for (const group of split) for (const l of group.letters) this.#tableOf[s * letterCount + l] = groups.indexOf(group);
    });
    this.#here = new Int32Array(groups.length);
    this.#sums = new Int32Array(splits.length);
  }

  /** From the tuple at hand. */
  now(): number {
    let most = 0;
    for (let s = 0, t = 0; s < this.#sizes.length; s++) {
      let sum = 0;
      for (let i = i32(this.#sizes, s); i > 0; i--, t++) sum += this.#leftOn(t);
      if (sum > most) most = sum;
    }
    return most;
  }

  /** Keeps what the tables say of the tuple at hand; `after` then looks up what a letter changes. */
  startFromNow(): void {
    for (let s = 0, t = 0; s < this.#sizes.length; s++) {
      let sum = 0;
      for (let i = i32(this.#sizes, s); i > 0; i--, t++) sum += this.#here[t] = this.#leftOn(t);
      this.#sums[s] = sum;
    }
  }

  /**
   * From the tuple at hand, which is the one kept with a letter more.
   * @param enough the rest of the splits is not looked at once this is reached
   */
  after(letter: number, enough: number): number {
    let left = 0;
    for (let s = 0; s < this.#sizes.length && left < enough; s++) {
      const t = i32(this.#tableOf, s * this.#letterCount + letter);
      left = Math.max(left, i32(this.#sums, s) - i32(this.#here, t) + this.#leftOn(t));
    }
    return left;
  }

  #leftOn(t: number): number {
    const now = this.#now;
    let place = 0;
    for (let c = 0; c < now.length; c++) place += entryAt(this.#sheets, c).get(i32(now, c), this.#letterCount + t);
    return u8(entryAt(this.#least, t), place);
  }
}
