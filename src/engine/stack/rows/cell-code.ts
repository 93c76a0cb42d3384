import type { PlainCode } from '../../base/code/plain-code.ts';
import { Int, type Ints, type IntVariable } from '../../base/code/values.ts';
import { type MapLists, MORE_CELLS } from './map-names.ts';

/**
 * Writes how a cell is looked up: cells lie in an open table by the hash of their covers, and are verified by these.
 */
export class CellCode {
  private readonly code: PlainCode;
  private readonly lists: MapLists;
  private readonly known: { cell: IntVariable; next: IntVariable; cells: IntVariable; words: number };
  /** The cover that is looked up. */
  private readonly wanted: readonly IntVariable[];
  /** Where the cover of a cell begins. */
  private readonly base: IntVariable;
  private readonly hash: IntVariable;
  private readonly slot: IntVariable;

  /** @param known a cell; the one that is found; how many there are; and words of a cover */
  constructor(code: PlainCode, lists: MapLists, known: CellCode['known']) {
    this.code = code;
    this.lists = lists;
    this.known = known;
    this.wanted = Array.from({ length: known.words }, () => code.int());
    [this.base, this.hash, this.slot] = code.ints();
  }

  /** Finds the cell whose cover is that of `cell` with the screens [from, to) of a list turned over in it; made when new. */
  lookUp(list: Ints, [from, to]: readonly [Int, Int]): void {
    const { code, lists, hash, base, wanted } = this;
    const { cell, words } = this.known;
    const [i, bit, inWord, turned] = code.ints();
    code.set(base, cell.times(words));
    wanted.forEach((word, at) => code.set(word, lists.ints('cover').at(base, at)));
    code.set(hash, lists.ints('hashOf').at(cell));
    code.set(i, from);
    code.repeat(
      () => {
        code.set(bit, list.at(i));
        code.set(inWord, bit.right(5));
        code.set(turned, Int.of(1).left(bit.and(31)));
        wanted.forEach((word, at) => code.set(word, word.xor(Int.of(0).minus(inWord.is(at)).and(turned))));
        code.set(hash, hash.xor(lists.ints('bitHash').at(bit)));
        code.add(i, 1);
      },
      () => i.below(to),
    );
    this.find();
  }

  /** Finds the cell whose cover is `wanted`. */
  private find(): void {
    const { code, lists, hash, slot, base } = this;
    const { next, words } = this.known;
    const mask = lists.int('slotMask');
    const open = code.int(1);
    code.set(slot, hash.and(mask));
    code.repeat(
      () => {
        code.set(next, lists.ints('slots').at(slot));
        code.when(
          next.below(0),
          () => {
            this.make();
            code.set(open, 0);
          },
          () => {
            code.when(lists.ints('hashOf').at(next).is(hash), () => {
              code.set(base, next.times(words));
              const others = this.wanted.map((word, at) => lists.ints('cover').at(base, at).is(word).not());
              code.set(
                open,
                others.reduce((any, other) => any.or(other)),
              );
            });
            code.set(slot, slot.plus(1).and(mask));
          },
        );
      },
      () => open,
    );
  }

  private make(): void {
    const { code, lists, base } = this;
    const { next, cells } = this.known;
    code.when(cells.is(lists.int('cellsRoom')), () => code.giveBack(MORE_CELLS));
    code.set(next, cells);
    code.add(cells, 1);
    code.set(base, next.times(this.known.words));
    this.wanted.forEach((word, at) => code.put(lists.ints('cover'), base.plus(at), word));
    code.put(lists.reals('areaMm2'), next, 0);
    code.put(lists.ints('hashOf'), next, this.hash);
    code.put(lists.ints('slots'), this.slot, next);
  }
}
