import { i32 } from '../../../base/at.ts';
import { grown } from '../../grown.ts';

/** Rows of whole numbers of one width, remembered. */
export class SeenRows {
  readonly #width: number;
  #count = 0;
  #rows: Int32Array;
  /** Hash table of rows, −1 where empty; its length is a power of 2. */
  #table: Int32Array;

  constructor(width: number) {
    this.#width = width;
    this.#rows = new Int32Array(64 * width);
    this.#table = new Int32Array(256).fill(-1);
  }

  /** @param list the row begins at `at` */
  has(list: Int32Array, at: number): boolean {
    return i32(this.#table, this.#slotOf(list, at)) >= 0;
  }

  add(list: Int32Array, at: number): void {
    const slot = this.#slotOf(list, at);
    if (i32(this.#table, slot) >= 0) return;
    const width = this.#width;
    const to = this.#count * width;
    if (to === this.#rows.length) this.#rows = grown(this.#rows, 2 * to);
    for (let i = 0; i < width; i++) this.#rows[to + i] = i32(list, at + i);
    this.#table[slot] = this.#count++;
    if (this.#count * 2 > this.#table.length) this.#growTable();
  }

  /** Where a row stands, or would. */
  #slotOf(list: Int32Array, at: number): number {
    const width = this.#width;
    const mask = this.#table.length - 1;
    let h = 0;
    for (let i = 0; i < width; i++) h = Math.imul(h ^ i32(list, at + i), 0x9e3779b1) ^ (h >>> 15);
    for (let slot = (h ^ (h >>> 13)) & mask; ; slot = (slot + 1) & mask) {
      const row = i32(this.#table, slot);
      if (row < 0) return slot;
      let i = 0;
      while (i < width && this.#rows[row * width + i] === list[at + i]) i++;
      if (i === width) return slot;
    }
  }

  #growTable(): void {
    this.#table = new Int32Array(4 * this.#table.length).fill(-1);
    for (let row = 0; row < this.#count; row++) this.#table[this.#slotOf(this.#rows, row * this.#width)] = row;
  }
}
