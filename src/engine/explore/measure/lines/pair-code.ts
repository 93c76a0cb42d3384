import type { PlainCode } from '../../../base/code/plain-code.ts';
import { Int, type IntVariable, type Real } from '../../../base/code/values.ts';
import { type EdgeLists, MORE_NOTES } from './edge-names.ts';

/**
 * Writes how lengths of edges are noted, and summed up by pairs of cells as `EdgeTally` does. More than half of the pairs that a walk meets are
 * new to it, and a table of thousands of them is read from far memory: sorted by their lower cells, they are told apart by a short list.
 */
export class PairCode {
  /** Notes so far, the latest being the one before. */
  readonly notes: IntVariable;
  private readonly code: PlainCode;
  private readonly lists: EdgeLists;
  private readonly low: IntVariable;
  private readonly high: IntVariable;
  private readonly turned: IntVariable;

  constructor(code: PlainCode, lists: EdgeLists) {
    this.code = code;
    this.lists = lists;
    [this.notes, this.low, this.high, this.turned] = code.ints();
  }

  /** Notes a length of the edge between two cells; counts notes by their lower cells. */
  note(a: Int, b: Int, lengthMm: Real): void {
    const { code, lists, notes, low, high, turned } = this;
    const [noteCells, ofCell] = [lists.ints('noteCells'), lists.ints('ofCell')];
    code.when(notes.is(lists.int('notesRoom')), () => code.giveBack(MORE_NOTES));
    code.set(low, a);
    code.set(high, b);
    // Without branches, as it cannot be foreseen which is the lower one.
    code.set(turned, low.xor(high).and(Int.of(0).minus(high.below(low))));
    code.set(low, low.xor(turned));
    code.put(noteCells, notes.left(1), low);
    code.put(noteCells, notes.left(1).plus(1), high.xor(turned));
    code.put(ofCell, low, ofCell.at(low).plus(1));
    code.put(lists.reals('noteMm'), notes, lengthMm);
    code.add(notes, 1);
  }

  /** Adds to what was noted. */
  add(note: Int, lengthMm: Real): void {
    const { code, lists } = this;
    const noteMm = lists.reals('noteMm');
    code.put(noteMm, note, noteMm.at(note).plus(lengthMm));
  }

  /** Sums the notes up. */
  sumUp(): void {
    this.sort();
    const { code, lists } = this;
    const [pairCells, lengthMm, pairOf] = [lists.ints('pairCells'), lists.reals('lengthMm'), lists.ints('pairOf')];
    const [i, cell, note, high] = code.ints();
    const [pair, pairs, first, fresh] = [code.int(), code.int(0), code.int(), code.int()];
    code.each(cell, lists.int('cells'), () => {
      code.set(first, pairs);
      code.upTo(i, lists.ints('ofCell').at(cell), () => {
        code.set(note, lists.ints('order').at(i));
        code.set(high, lists.ints('noteCells').at(note.left(1), 1));
        code.set(pair, pairOf.at(high));
        // What lies before the first pair of this cell is one of another. Without branches, as it cannot be foreseen which.
        code.set(fresh, pair.below(first));
        code.set(pair, pair.plus(pairs.minus(pair).and(Int.of(0).minus(fresh))));
        code.put(lengthMm, pairs, 0);
        code.add(pairs, fresh);
        code.put(pairOf, high, pair);
        code.put(pairCells, pair.left(1), cell);
        code.put(pairCells, pair.left(1).plus(1), high);
        code.put(lengthMm, pair, lengthMm.at(pair).plus(lists.reals('noteMm').at(note)));
      });
    });
    code.put(lists.ints('found'), 0, pairs);
  }

  /** Lists the notes by their lower cells. */
  private sort(): void {
    const { code, lists, notes, low } = this;
    const [noteCells, ofCell] = [lists.ints('noteCells'), lists.ints('ofCell')];
    const [i, at, sum] = [code.int(), code.int(), code.int(0)];
    code.each(i, lists.int('cells'), () => {
      code.set(at, ofCell.at(i));
      code.put(ofCell, i, sum);
      code.add(sum, at);
    });
    code.set(i, 0);
    code.upTo(i, notes, () => {
      code.set(low, noteCells.at(i.left(1)));
      code.set(at, ofCell.at(low));
      code.put(ofCell, low, at.plus(1));
      code.put(lists.ints('order'), at, i);
    });
  }
}
