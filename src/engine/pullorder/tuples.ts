import { i32, u16 } from '../base/at.ts';
import { grown } from './grown.ts';

/** Tuples of whole numbers up to 65535, all of one width, numbered as they come; equal ones are one. */
export class Tuples {
  readonly width: number;
  count = 0;
  /** Tuples that there is room for; lists of what belongs to each are grown to it. */
  room: number;
  /** Row-major, tuples × width. Another array after `add`. */
  values: Uint16Array;
  /** Hash table of tuples, −1 where empty; its length is a power of 2. */
  #table: Int32Array;
  /** Where `find` came to an end. */
  #slot = 0;

  /** @param room a power of 2 */
  constructor(width: number, room: number) {
    this.width = width;
    this.room = room;
    this.values = new Uint16Array(room * width);
    this.#table = new Int32Array(2 * room).fill(-1);
  }

  /** The number of a tuple, −1 when it is new. */
  find(tuple: Int32Array): number {
    const table = this.#table;
    const mask = table.length - 1;
    let slot = hashOf(tuple) & mask;
    let node = i32(table, slot);
    while (node >= 0 && !this.#is(node, tuple)) {
      slot = (slot + 1) & mask;
      node = i32(table, slot);
    }
    this.#slot = slot;
    return node;
  }

  /** Adds the tuple that `find` was asked for last and did not know. */
  add(tuple: Int32Array): number {
    const node = this.count++;
    this.#table[this.#slot] = node;
    this.values.set(tuple, node * this.width);
    if (this.count === this.room) {
      this.room *= 2;
      this.values = grown(this.values, this.room * this.width);
    }
    if (this.count * 2 > this.#table.length) this.#growTable();
    return node;
  }

  /** Copies a tuple out. */
  read(node: number, into: Int32Array): void {
    const at = node * this.width;
    for (let c = 0; c < this.width; c++) into[c] = u16(this.values, at + c);
  }

  #is(node: number, tuple: Int32Array): boolean {
    const { values } = this;
    const at = node * this.width;
    for (let c = 0; c < this.width; c++) if (values[at + c] !== tuple[c]) return false;
    return true;
  }

  #growTable(): void {
    const table = new Int32Array(this.#table.length * 2).fill(-1);
    const tuple = new Int32Array(this.width);
    for (let node = 0; node < this.count; node++) {
      this.read(node, tuple);
      let slot = hashOf(tuple) & (table.length - 1);
      while (i32(table, slot) >= 0) slot = (slot + 1) & (table.length - 1);
      table[slot] = node;
    }
    this.#table = table;
  }
}

function hashOf(tuple: Int32Array): number {
  let h = 0;
  for (let c = 0; c < tuple.length; c++) h = Math.imul(h ^ i32(tuple, c), 0x9e3779b1) ^ (h >>> 15);
  return h ^ (h >>> 13);
}
