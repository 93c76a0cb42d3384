import { i32, u32 } from '../../../base/at.ts';

/** How long the edges between each two cells are; the same for every colouring of a map. */
export interface EdgeLengths {
  /** Two cells, the lower number first, for each pair that meets. */
  cells: Uint32Array;
  /** One a pair, mm. */
  lengthMm: Float64Array;
}

/** Pairs of cells in the order in which they first met, each with a length. Holds its buffers, for many maps. */
export class EdgeTally {
  /** Length of each pair, mm; pairs that are new begin at 0. */
  lengthMm = new Float64Array(512);
  /** Pairs so far. */
  count = 0;
  private cells = new Uint32Array(2 * 512);
  /** Pairs by their cells, open addressing, at most half full; −1 is free. */
  private slots = new Int32Array(1024);

  start(): void {
    this.count = 0;
    this.slots.fill(-1);
  }

  /**
   * Number of a pair, whichever cell is named first, made when new.
   * It is not given the length to add: numbers with fractions that go into a function are put on the heap.
   */
  pairOf(a: number, b: number): number {
    const low = a < b ? a : b;
    const high = a < b ? b : a;
    const { cells, slots } = this;
    const mask = slots.length - 1;
    let slot = slotOf(low, high) & mask;
    for (let pair = i32(slots, slot); pair >= 0; pair = i32(slots, slot)) {
      if (cells[pair * 2] === low && cells[pair * 2 + 1] === high) return pair;
      slot = (slot + 1) & mask;
    }
    slots[slot] = this.count;
    return this.make(low, high);
  }

  /** What was added up, in arrays of its own. */
  lengths(): EdgeLengths {
    return { cells: this.cells.slice(0, this.count * 2), lengthMm: this.lengthMm.slice(0, this.count) };
  }

  private make(low: number, high: number): number {
    const pair = this.count++;
    if (pair * 2 + 2 > this.cells.length) this.grow();
    this.cells[pair * 2] = low;
    this.cells[pair * 2 + 1] = high;
    this.lengthMm[pair] = 0;
    if (this.count * 2 > this.slots.length) this.rehash();
    return pair;
  }

  private grow(): void {
    const cells = new Uint32Array(this.cells.length * 2);
    const lengthMm = new Float64Array(this.lengthMm.length * 2);
    cells.set(this.cells);
    lengthMm.set(this.lengthMm);
    this.cells = cells;
    this.lengthMm = lengthMm;
  }

  private rehash(): void {
    const slots = new Int32Array(this.slots.length * 2).fill(-1);
    const mask = slots.length - 1;
    for (let pair = 0; pair < this.count; pair++) {
      let slot = slotOf(u32(this.cells, pair * 2), u32(this.cells, pair * 2 + 1)) & mask;
      while (i32(slots, slot) >= 0) slot = (slot + 1) & mask;
      slots[slot] = pair;
    }
    this.slots = slots;
  }
}

function slotOf(low: number, high: number): number {
  const h = Math.imul(low, 0x9e3779b1) ^ Math.imul(high, 0x85ebca6b);
  return h ^ (h >>> 15);
}
