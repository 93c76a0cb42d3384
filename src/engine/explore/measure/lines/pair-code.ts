import type { PlainCode } from '../../../base/code/plain-code.ts';
import { Int, type IntVariable, type Real } from '../../../base/code/values.ts';
import { type EdgeLists, MORE_PAIRS } from './edge-names.ts';

/** Writes how the pair of two cells is looked up, and how lengths are added to it: the same pairs as in `EdgeTally`. */
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

  /** Finds the pair of two cells, whichever is named first, made when new: both without branches, as it cannot be foreseen which. */
  find(a: Int, b: Int): void {
    const { code, lists, pair, low, high, slot, count } = this;
    const slots = lists.ints('slots');
    const mask = lists.int('slotMask');
    const cells = lists.ints('pairCells');
    code.set(low, a);
    code.set(high, b);
    code.set(pair, low.xor(high).and(Int.of(0).minus(high.below(low))));
    code.set(low, low.xor(pair));
    code.set(high, high.xor(pair));
    code.set(slot, low.times(0x9e3779b1 | 0).xor(high.times(0x85ebca6b | 0)));
    code.set(slot, slot.xor(slot.right(15)).and(mask));
    code.set(pair, slots.at(slot));
    const isThis = cells
      .at(pair.left(1))
      .is(low)
      .and(cells.at(pair.left(1), 1).is(high));
    // Where the slot is free this looks before the list, at what is no pair.
    code.during(isThis.not().and(pair.above(-1)), () => {
      code.set(slot, slot.plus(1).and(mask));
      code.set(pair, slots.at(slot));
    });
    const fresh = code.int(pair.right(31));
    code.set(pair, pair.plus(count.minus(pair).times(fresh)));
    code.add(count, fresh);
    code.when(count.is(lists.int('pairsRoom')), () => code.giveBack(MORE_PAIRS));
    code.put(cells, pair.left(1), low);
    code.put(cells, pair.left(1).plus(1), high);
    code.put(lists.reals('lengthMm'), count, 0);
    code.put(slots, slot, pair);
  }

  add(pair: Int, lengthMm: Real): void {
    const { code, lists } = this;
    const lengths = lists.reals('lengthMm');
    code.put(lengths, pair, lengths.at(pair).plus(lengthMm));
  }
}
