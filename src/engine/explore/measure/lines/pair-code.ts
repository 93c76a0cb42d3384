import type { PlainCode } from '../../../base/code/plain-code.ts';
import { Int, type IntVariable, type Real } from '../../../base/code/values.ts';
import { type EdgeLists, MORE_PAIRS } from './edge-names.ts';

/** Writes how the pair of two cells is looked up, and how lengths are added to it: the same table as `EdgeTally`. */
export class PairCode {
  /** The pair that was found latest. */
  readonly pair: IntVariable;
  /** Pairs so far. */
  readonly count: IntVariable;
  private readonly code: PlainCode;
  private readonly lists: EdgeLists;
  private readonly low: IntVariable;
  private readonly high: IntVariable;
  private readonly slot: IntVariable;

  constructor(code: PlainCode, lists: EdgeLists) {
    this.code = code;
    this.lists = lists;
    [this.pair, this.count, this.low, this.high, this.slot] = [code.int(), code.int(), code.int(), code.int(), code.int()];
  }

  /** Finds the pair of two cells, whichever is named first, made when new. */
  find(a: Int, b: Int): void {
    const { code, lists, pair, low, high, slot } = this;
    const slots = lists.ints('slots');
    const mask = lists.int('slotMask');
    const cells = lists.ints('pairCells');
    code.set(low, a);
    code.set(high, b);
    code.when(high.below(low), () => {
      code.set(pair, low);
      code.set(low, high);
      code.set(high, pair);
    });
    code.set(slot, low.times(0x9e3779b1 | 0).xor(high.times(0x85ebca6b | 0)));
    code.set(slot, slot.xor(slot.right(15)).and(mask));
    code.set(pair, slots.at(slot));
    const differs = cells
      .at(pair.left(1))
      .xor(low)
      .or(cells.at(pair.left(1), 1).xor(high));
    code.during([pair.above(-1), differs], () => {
      code.set(slot, slot.plus(1).and(mask));
      code.set(pair, slots.at(slot));
    });
    code.when(pair.below(0), () => this.make());
  }

  add(pair: Int, lengthMm: Real): void {
    const { code, lists } = this;
    const lengths = lists.reals('lengthMm');
    code.put(lengths, pair, lengths.at(pair).plus(lengthMm));
  }

  private make(): void {
    const { code, lists, pair, count } = this;
    code.when(count.is(lists.int('pairsRoom')), () => code.giveBack(MORE_PAIRS));
    code.set(pair, count);
    code.add(count, 1);
    code.put(lists.ints('pairCells'), pair.left(1), this.low);
    code.put(lists.ints('pairCells'), pair.left(1).plus(1), this.high);
    code.put(lists.reals('lengthMm'), pair, 0);
    code.put(lists.ints('slots'), this.slot, pair);
  }
}
