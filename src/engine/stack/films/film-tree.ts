import { entryAt, u32 } from '../../base/at.ts';
import { CodeRoom } from '../../base/code/code-room.ts';
import type { Layer } from '../layers.ts';
import type { CellMap } from '../types.ts';
import { treeSize, writeTreeCode } from './tree-code.ts';
import { DONE, TREE_NAMES } from './tree-names.ts';

/** Cells and what covers them, as in a CellMap. */
export type CoveredCells = Pick<CellMap, 'cells' | 'words' | 'cover'>;

/** Cells of more words are left to plain code: functions are as long as they. */
const MOST_WORDS = 9;
/** Numbers of a step. */
export const STEP = 3;

/**
 * The piles of films that some layers make on a map's cells, and how each is made: by one film on the pile below it. Pile 0 is none.
 * Piles are met by cells, and a new one asks for what it is without its topmost film. Holds its buffers, for many maps and stacks.
 */
export class FilmTree {
  /** Number of piles. */
  count = 0;
  /** Three a step, lower layers first: the layer, the pile that it is laid on and the pile that this makes. */
  steps = new Uint32Array(0);
  /** Pile of each cell. */
  leaf = new Uint32Array(0);
  /** By pile its cells' kind, where there are kinds. */
  kinds: readonly number[] = [];
  private readonly room: CodeRoom<(typeof TREE_NAMES)[number]>;
  private pilesRoom = 1024;

  /** @param plain by plain code, as on machines that cannot run another; piles may have other numbers then */
  constructor(plain = false) {
    this.room = new CodeRoom(TREE_NAMES, writeTreeCode, { plain });
  }

  /**
   * Finds the piles of layers [from, to).
   * @param kinds whether the last word of a cell's cover is a kind, by which cells are told apart as well
   */
  find(map: CoveredCells, layers: readonly Layer[], part: readonly [from: number, to: number], kinds = false): void {
    if (!this.room.works || map.words > MOST_WORDS) {
      this.findPlain(map, layers, part, kinds);
      return;
    }
    const { cells, words } = map;
    for (;;) {
      const at = this.lay(map, layers.length, kinds);
      const { ints, words: numbers } = this.room;
      for (let i = part[0]; i < part[1]; i++) {
        const { bit } = entryAt(layers, i);
        const word = at.mask + (bit >> 5);
        ints[word] = u32(numbers, word) | (1 << (bit & 31));
        ints[at.layerOf + bit] = i;
      }
      if (kinds) ints[at.mask + words - 1] = -1;
      if (this.room.call() === DONE) {
        this.count = u32(numbers, at.found);
        this.steps = numbers.subarray(at.steps, at.steps + u32(numbers, at.found + 1));
        this.leaf = numbers.subarray(at.leaf, at.leaf + cells);
        if (kinds) this.kinds = Array.from({ length: this.count }, (_, pile) => u32(numbers, at.pattern + (pile + 1) * words - 1));
        return;
      }
      this.pilesRoom *= 2;
    }
  }

  private lay({ cells, words, cover }: CoveredCells, layers: number, kinds: boolean) {
    const { room, pilesRoom } = this;
    const slots = pilesRoom * 2;
    room.begin(treeSize(words, kinds));
    room.int('cells', cells);
    room.int('layers', layers);
    room.int('pilesRoom', pilesRoom);
    room.int('slotMask', slots - 1);
    const found = room.intList('found', 2);
    const covers = room.intList('cover', cells * words);
    const leaf = room.intList('leaf', cells);
    const mask = room.intList('mask', words);
    const layerOf = room.intList('layerOf', words * 32);
    const first = room.intList('first', layers);
    const slotsAt = room.intList('slots', slots);
    const pattern = room.intList('pattern', pilesRoom * words);
    room.intList('parent', pilesRoom);
    room.intList('next', pilesRoom);
    const steps = room.intList('steps', pilesRoom * STEP);
    room.fit();
    const { ints } = room;
    room.words.set(cover.subarray(0, cells * words), covers);
    ints.fill(0, mask, mask + words);
    ints.fill(-1, first, first + layers);
    ints.fill(-1, slotsAt, slotsAt + slots);
    return { found, leaf, mask, layerOf, pattern, steps };
  }

  private findPlain(
    { cells, words, cover }: CoveredCells,
    layers: readonly Layer[],
    [from, to]: readonly [number, number],
    kinds: boolean,
  ): void {
    const known = new Map<number, number>();
    const steps: [layer: number, on: number, made: number][] = [];
    const kindOf: number[] = [];
    const pileOn = (on: number, by: number): number => {
      const name = (on + 1) * 2 ** 32 + by;
      const pile = known.get(name) ?? known.size;
      if (pile === known.size) {
        known.set(name, pile);
        kindOf.push(by);
        if (on >= 0) steps.push([by, on, pile]);
      }
      return pile;
    };
    this.leaf = Uint32Array.from({ length: cells }, (_, cell) => {
      const word = (at: number): number => u32(cover, cell * words + at);
      let pile = pileOn(-1, kinds ? word(words - 1) : 0);
      for (let i = from; i < to; i++) {
        const { bit } = entryAt(layers, i);
        if (((word(bit >> 5) >> (bit & 31)) & 1) === 1) pile = pileOn(pile, i);
      }
      return pile;
    });
    this.count = known.size;
    this.steps = Uint32Array.from(steps.sort((a, b) => a[0] - b[0]).flat());
    this.kinds = kindOf;
  }
}
