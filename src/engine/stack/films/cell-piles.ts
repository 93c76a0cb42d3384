import { entryAt, i32, u32 } from '../../base/at.ts';
import type { Layer } from '../layers.ts';
import type { CoveredCells } from './cell-groups.ts';

/**
 * Cells by what covers them of some layers only: cells that agree in these share a pile. Piles are
 * covered cells themselves, far fewer than the map's. Holds its buffers, for many maps.
 */
export class CellPiles implements CoveredCells {
  /** Number of piles. */
  cells = 0;
  words = 1;
  /** piles × words. */
  cover = new Uint32Array(0);
  /** Pile of each cell of the map. */
  of = new Uint32Array(0);
  private mask = new Uint32Array(1);
  private slots = new Int32Array(64);

  /**
   * Sorts a map's cells into piles by layers [from, to).
   * @param kinds a word a cell by which cells are told apart as well; it becomes the last word of their piles' cover
   */
  gather(map: CoveredCells, layers: readonly Layer[], [from, to]: readonly [number, number], kinds?: Uint32Array): void {
    this.fit(map, kinds === undefined ? map.words : map.words + 1);
    const { mask, of, cover, slots, words } = this;
    mask.fill(0);
    for (let i = from; i < to; i++)
      mask[entryAt(layers, i).bit >> 5] = u32(mask, entryAt(layers, i).bit >> 5) | (1 << (entryAt(layers, i).bit & 31));
    slots.fill(-1);
    const slotMask = slots.length - 1;
    let piles = 0;
    for (let cell = 0; cell < map.cells; cell++) {
      const at = cell * map.words;
      const next = piles * words;
      let hash = 0;
      for (let word = 0; word < words; word++) {
        const kept = word < map.words ? u32(map.cover, at + word) & u32(mask, word) : kinds === undefined ? 0 : u32(kinds, cell);
        // Where the next new pile would be; overwritten when this one is known already.
        cover[next + word] = kept;
        hash = Math.imul(hash ^ kept, 0x9e3779b1);
        hash ^= hash >>> 15;
      }
      let slot = hash & slotMask;
      let pile = i32(slots, slot);
      while (pile >= 0) {
        let word = 0;
        while (word < words && cover[pile * words + word] === cover[next + word]) word++;
        if (word === words) break;
        slot = (slot + 1) & slotMask;
        pile = i32(slots, slot);
      }
      if (pile < 0) slots[slot] = pile = piles++;
      of[cell] = pile;
    }
    this.cells = piles;
  }

  private fit(map: CoveredCells, words: number): void {
    this.words = words;
    if (this.mask.length !== map.words) this.mask = new Uint32Array(map.words);
    if (this.of.length < map.cells) this.of = new Uint32Array(map.cells * 2);
    const covers = (map.cells + 1) * words;
    if (this.cover.length < covers) this.cover = new Uint32Array(covers * 2);
    // At most half full, and no larger than that: it is cleared each time.
    const wanted = 4 << (31 - Math.clz32(map.cells));
    if (this.slots.length !== wanted) this.slots = new Int32Array(wanted);
  }
}
