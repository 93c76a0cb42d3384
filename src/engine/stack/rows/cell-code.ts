import type { PlainCode } from '../../base/code/plain-code.ts';
import { Int, type Ints, type IntVariable } from '../../base/code/values.ts';
import { type MapLists, MORE_CELLS } from './map-names.ts';

/**
 * Writes how a cell is looked up: cells lie in an open table by the hash of their covers, and are verified by these.
 */
export class CellCode {
  private readonly code: PlainCode;
  private readonly lists: MapLists;
  private readonly known: { cell: IntVariable; next: IntVariable; cells: IntVariable };
  private readonly word: IntVariable;
  /** Where the cover of a cell begins. */
  private readonly base: IntVariable;
  private readonly hash: IntVariable;
  private readonly slot: IntVariable;

  /** @param known a cell; the one that is found; and how many there are */
  constructor(code: PlainCode, lists: MapLists, known: CellCode['known']) {
    this.code = code;
    this.lists = lists;
    this.known = known;
    [this.word, this.base, this.hash, this.slot] = code.ints();
  }

  /** Finds the cell whose cover is that of `cell` with the screens [from, to) of a list turned over in it; made when new. */
  lookUp(list: Ints, [from, to]: readonly [Int, Int]): void {
    const { code, lists, hash } = this;
    const { cell } = this.known;
    const wanted = lists.ints('wanted');
    const [i, bit] = code.ints();
    this.eachWord(cell, (word, at) => code.put(wanted, word, at));
    code.set(hash, lists.ints('hashOf').at(cell));
    code.set(i, from);
    code.repeat(
      () => {
        code.set(bit, list.at(i));
        code.put(wanted, bit.right(5), wanted.at(bit.right(5)).xor(Int.of(1).left(bit.and(31))));
        code.set(hash, hash.xor(lists.ints('bitHash').at(bit)));
        code.add(i, 1);
      },
      () => i.below(to),
    );
    this.find();
  }

  /** Finds the cell whose cover is `wanted`. */
  private find(): void {
    const { code, lists, hash, slot, word, base } = this;
    const { next } = this.known;
    const words = lists.int('words');
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
              code.set(word, 0);
              const same = lists.ints('cover').at(base.plus(word)).is(lists.ints('wanted').at(word));
              code.during([word.below(words), same], () => code.add(word, 1));
              code.set(open, word.below(words));
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
    this.eachWord(next, (word) => code.put(lists.ints('cover'), base.plus(word), lists.ints('wanted').at(word)));
    code.put(lists.reals('areaMm2'), next, 0);
    code.put(lists.ints('hashOf'), next, this.hash);
    code.put(lists.ints('slots'), this.slot, next);
  }

  private eachWord(cell: IntVariable, body: (word: IntVariable, at: Int) => void): void {
    const { code, lists, word, base } = this;
    code.set(base, cell.times(lists.int('words')));
    code.each(word, lists.int('words'), () => body(word, lists.ints('cover').at(base.plus(word))));
  }
}
