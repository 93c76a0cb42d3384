import { u32 } from '../../base/at.ts';
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
  }

  /** Moves the cells that a bit covers into groups of their own, listed in `made` and `from`. */
  split(map: CoveredCells, bit: number): void {
    const { of, size, child, stamp, made, from, free } = this;
    const { cover, words, cells } = map;
    const clock = (this.clock = (this.clock + 1) | 0);
    const mask = 1 << (bit & 31);
    let count = 0;
    for (let cell = 0, at = bit >> 5; cell < cells; cell++, at += words) {
      if ((u32(cover, at) & mask) === 0) continue;
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
}
