import { i32, u32 } from '../../base/at.ts';
import type { CellMap } from '../types.ts';

/** Cells and what covers them, as in a CellMap. */
export type CoveredCells = Pick<CellMap, 'cells' | 'words' | 'cover'>;

/**
 * Cells in groups: those that are covered by the same layers so far. A layer splits every group that
 * it covers in part and renames those that it covers whole. Holds its buffers, for many maps.
 */
export class CellGroups {
  /** Group of each cell. */
  of = new Uint32Array(256);
  /** Groups that the last layer made, `made[0 … madeCount − 1]`. */
  made = new Uint32Array(256);
  /** What each of them was before. */
  from = new Uint32Array(256);
  madeCount = 0;
  /** Group numbers stay below this. */
  capacity = 0;
  private size = new Uint32Array(256);
  private child = new Uint32Array(256);
  private stamp = new Int32Array(256);
  private free = new Uint32Array(256);
  private freeCount = 0;
  private groups = 0;
  private clock = 0;
  /** By bit the first entry of its list, −1 for none; by entry its cell and the next entry. */
  private first = new Int32Array(32);
  private cell = new Uint32Array(1024);
  private next = new Int32Array(1024);

  /** All cells in group 0. */
  start(map: CoveredCells): void {
    // A layer may at most double the groups before the emptied ones are free again.
    const wanted = 2 * map.cells + 1;
    if (this.capacity < wanted) {
      this.capacity = 2 * wanted;
      for (const name of ['of', 'made', 'from', 'size', 'child', 'free'] as const) {
        this[name] = new Uint32Array(this.capacity);
      }
      this.stamp = new Int32Array(this.capacity);
    }
    this.of.fill(0, 0, map.cells);
    this.size[0] = map.cells;
    this.groups = 1;
    this.freeCount = 0;
    this.made[0] = 0;
    this.madeCount = 1;
    this.list(map);
  }

  /** Moves the cells that a bit covers into groups of their own, listed in `made` and `from`. */
  split(bit: number): void {
    const { of, size, child, stamp, made, from, free, cell: cellOf, next } = this;
    const clock = (this.clock = (this.clock + 1) | 0);
    let count = 0;
    for (let entry = i32(this.first, bit); entry >= 0; entry = i32(next, entry)) {
      const cell = u32(cellOf, entry);
      const group = u32(of, cell);
      let to = u32(child, group);
      if (stamp[group] !== clock) {
        to = this.freeCount > 0 ? u32(free, --this.freeCount) : this.groups++;
        stamp[group] = clock;
        child[group] = to;
        size[to] = 0;
        made[count] = to;
        from[count++] = group;
      }
      size[group] = u32(size, group) - 1;
      size[to] = u32(size, to) + 1;
      of[cell] = to;
    }
    this.madeCount = count;
    // Not sooner: what an emptied group stood for is still needed to make the new one from.
    for (let i = 0; i < count; i++) {
      const group = u32(from, i);
      if (size[group] === 0) free[this.freeCount++] = group;
    }
  }

  /** Lists the cells by the bits that cover them, lower numbers first. */
  private list({ cells, words, cover }: CoveredCells): void {
    if (this.first.length < words * 32) this.first = new Int32Array(words * 32);
    const { first } = this;
    first.fill(-1);
    let entries = 0;
    for (let cell = cells - 1; cell >= 0; cell--) {
      if (this.next.length < entries + words * 32) this.grow(entries + words * 32);
      const { cell: cellOf, next } = this;
      for (let word = 0; word < words; word++) {
        for (let bits = u32(cover, cell * words + word) | 0; bits !== 0; bits &= bits - 1) {
          const bit = word * 32 + 31 - Math.clz32(bits & -bits);
          cellOf[entries] = cell;
          next[entries] = i32(first, bit);
          first[bit] = entries++;
        }
      }
    }
  }

  private grow(entries: number): void {
    const [cell, next] = [new Uint32Array(entries * 2), new Int32Array(entries * 2)];
    cell.set(this.cell);
    next.set(this.next);
    this.cell = cell;
    this.next = next;
  }
}
