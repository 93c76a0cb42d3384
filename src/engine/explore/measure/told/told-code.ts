import type { PlainCode } from '../../../base/code/plain-code.ts';
import { Int, Ints, type IntVariable, Real, type RealVariable, Singles } from '../../../base/code/values.ts';
import { ReachCode } from './reach-code.ts';
import * as names from './told-names.ts';

/** How wide bins are, how many lie below 0, how many there are. */
const AXES = {
  l: { width: names.L_WIDTH, from: 0, bins: names.L_BINS },
  ab: { width: names.AB_WIDTH, from: names.AB_BINS / 2, bins: names.AB_BINS },
  part: { width: names.PART_L, from: 0, bins: names.PARTS },
};

type ThreeReals = [RealVariable, RealVariable, RealVariable];

/** Puts the function down that tells the colours of cells apart, see `ToldRoom`. */
export function writeToldCode(code: PlainCode, lists: names.ToldLists): void {
  new ToldCode(code, lists).write();
}

class ToldCode {
  private readonly code: PlainCode;
  private readonly lists: names.ToldLists;
  private readonly reach: ReachCode;
  private readonly from: IntVariable;
  private readonly to: IntVariable;
  private readonly pairs: IntVariable;
  private readonly count: IntVariable;
  private readonly blocks: IntVariable;
  private readonly unknown: IntVariable;
  private readonly lab: ThreeReals;

  constructor(code: PlainCode, lists: names.ToldLists) {
    this.code = code;
    this.lists = lists;
    const [asked, state] = [lists.ints('asked'), lists.ints('state')];
    this.from = code.int(asked.at(names.FROM));
    this.to = code.int(asked.at(names.TO));
    this.pairs = code.int();
    this.count = code.int(state.at(names.COUNT));
    this.blocks = code.int(state.at(names.BLOCKS));
    this.unknown = code.int(state.at(names.UNKNOWN));
    this.lab = [code.real(), code.real(), code.real()];
    this.reach = new ReachCode(code, lists.reals('deltaE').at(0));
  }

  write(): void {
    const { code, lists } = this;
    const state = lists.ints('state');
    const asked = lists.ints('asked').at(names.DO);
    code.when(asked.is(names.TELL), () => {
      this.tellUnknown();
      this.ask(false);
    });
    code.when(asked.is(names.JOIN), () => {
      this.join();
      this.pairUnknown();
    });
    code.when(asked.is(names.TO_SWATCHES), () => this.ask(true));
    code.when(asked.is(names.LIST_FAR), () => this.listFar());
    code.put(state, names.PAIRS, this.pairs);
    code.put(state, names.COUNT, this.count);
    code.put(state, names.BLOCKS, this.blocks);
    code.put(state, names.UNKNOWN, this.unknown);
  }

  /** Puts down what is asked of `findCode`, or of `findSwatchCode`. */
  private ask(ofSwatches: boolean): void {
    const { code, lists, from, to } = this;
    const [place, at, cell] = [code.int(from), code.int(0), code.int()];
    const asks = lists.ints('asks').address;
    code.upTo(place, to, () => {
      code.set(cell, lists.ints('list').at(place));
      this.read(cell);
      this.lab.forEach((value, i) => code.put(new Singles(asks), at.plus(i), value));
      const [l, a, b] = this.lab;
      const block = ofSwatches ? lists.ints('parts').at(this.place(l, 'part')) : lists.ints('first').at(this.bin(l, a, b));
      code.put(new Ints(asks), at.plus(3), block);
      code.put(new Ints(asks), at.plus(4), cell);
      if (ofSwatches) code.put(new Singles(asks), at.plus(5), a.times(a).plus(b.times(b)).root());
      code.add(at, names.ASK);
    });
  }

  /** Lists the cells that are near none of what they were paired with. */
  private listFar(): void {
    const { code, lists, from, to } = this;
    const [state, far] = [lists.ints('state'), lists.ints('far')];
    const [place, pair, end, near, fars] = [code.int(from), code.int(0), code.int(), code.int(), code.int(state.at(names.FARS))];
    code.upTo(place, to, () => {
      code.set(near, 0);
      code.set(end, lists.ints('ends').at(place.minus(from)));
      code.upTo(pair, end, () => code.set(near, near.or(lists.ints('near').at(pair))));
      code.put(far, fars, lists.ints('list').at(place));
      code.add(fars, near.not());
    });
    code.put(state, names.FARS, fars);
  }

  /** Lets cells join the first colour that they are near, and lists those that are near none. */
  private join(): void {
    const { code, lists, from, to, unknown } = this;
    const [place, pair, end] = [code.int(from), code.int(0), code.int()];
    const near = lists.ints('near');
    code.set(unknown, 0);
    code.upTo(place, to, () => {
      code.set(end, lists.ints('ends').at(place.minus(from)));
      code.during([pair.below(end), near.at(pair).not()], () => code.add(pair, 1));
      code.when(
        pair.below(end),
        () => code.put(lists.ints('colourOf'), place, lists.ints('numberOf').at(lists.ints('pairs').at(pair.left(1)))),
        () => {
          code.put(lists.ints('unknown'), unknown, place);
          code.add(unknown, 1);
        },
      );
      code.set(pair, end);
    });
  }

  /** Pairs those that are near none with each other, the earlier first, where L allows it. */
  private pairUnknown(): void {
    const { code, lists, unknown, pairs } = this;
    const [i, j, cell, other] = [code.int(), code.int(0), code.int(), code.int()];
    const [reachL, l] = [code.real(), this.lab[0]];
    const cellAt = (of: IntVariable): Int => lists.ints('list').at(lists.ints('unknown').at(of));
    code.upTo(j, unknown, () => {
      code.set(cell, cellAt(j));
      code.set(l, lists.reals('lab').at(cell.times(3)));
      code.set(reachL, this.reach.inL(l));
      code.set(i, 0);
      code.upTo(i, j, () => {
        code.set(other, cellAt(i));
        code.put(lists.ints('pairs'), pairs.left(1), other);
        code.put(lists.ints('pairs'), pairs.left(1).plus(1), cell);
        code.add(pairs, lists.reals('lab').at(other.times(3)).minus(l).size().atMost(reachL));
      });
      code.put(lists.ints('ends'), j, pairs);
    });
  }

  /** What is near no colour of before is a new one, or near one of those since. */
  private tellUnknown(): void {
    const { code, lists, unknown, count } = this;
    const [j, place, pair, end, number, other, known] = code.ints();
    const near = lists.ints('near');
    const earlier = lists.ints('pairs').at(pair.left(1));
    code.set(known, count);
    code.set(pair, 0);
    code.set(j, 0);
    code.upTo(j, unknown, () => {
      code.set(place, lists.ints('unknown').at(j));
      code.set(end, lists.ints('ends').at(j));
      code.set(number, -1);
      code.upTo(pair, end, () => {
        code.when([number.below(0), near.at(pair)], () => {
          code.set(other, lists.ints('numberOf').at(earlier));
          // Of what came before in this list, only what is a colour has a number.
          const isColour = [other.below(known).not(), other.below(count), lists.ints('cellOf').at(other).is(earlier)];
          code.when(isColour, () => code.set(number, other));
        });
      });
      code.when(number.below(0), () => {
        code.set(number, count);
        this.make(lists.ints('list').at(place));
      });
      code.put(lists.ints('colourOf'), place, number);
    });
    code.set(unknown, 0);
  }

  /** A new colour, entered in each bin where something may be near it. */
  private make(from: Int): void {
    const { code, lists, count, lab, reach } = this;
    const cell = code.int(from);
    code.put(lists.ints('cellOf'), count, cell);
    code.put(lists.ints('numberOf'), cell, count);
    this.read(cell);
    const [l, a, b] = lab;
    const [reachL, reachAb] = [code.real(reach.inL(l)), code.real()];
    const { near, far } = reach.inAb(a, b);
    const shares = [reachL, near, far].map((value) => code.real(Real.of(1).over(value.times(value))));
    // Where nothing below b = 0 is within reach, what is within lies nearer.
    code.when(
      b.below(far),
      () => code.set(reachAb, far),
      () => code.set(reachAb, near),
    );
    const { place } = this;
    const [inL, inA, inB] = code.ints();
    const each = (i: IntVariable, [first, last]: readonly [Int, Int], body: () => void): void => {
      const end = code.int(last);
      code.set(i, first);
      code.during(i.above(end).not(), () => {
        body();
        code.add(i, 1);
      });
    };
    const span = (value: Real, by: Real, axis: 'l' | 'ab'): [Int, Int] => [place(value.minus(by), axis), place(value.plus(by), axis)];
    each(inL, span(l, reachL, 'l'), () =>
      each(inA, span(a, reachAb, 'ab'), () =>
        each(inB, span(b, reachAb, 'ab'), () =>
          this.enter(inL.times(names.AB_BINS).plus(inA).times(names.AB_BINS).plus(inB), [cell, [...lab, ...shares]]),
        ),
      ),
    );
    code.add(count, 1);
  }

  private enter(into: Int, [cell, numbers]: readonly [cell: Int, numbers: readonly Real[]]): void {
    const { code, lists, blocks } = this;
    const [first, last, filled] = [lists.ints('first'), lists.ints('last'), lists.ints('filled')];
    const [words, singles] = [new Ints(Int.of(0)), new Singles(Int.of(0))];
    const bin = code.int(into);
    const place = code.int(filled.at(bin).and(3));
    const block = code.int(last.at(bin));
    code.when(place.not(), () => {
      code.when(blocks.is(lists.int('blocksRoom')), () => code.giveBack(names.MORE));
      const fresh = code.int(lists.ints('blocks').address.plus(blocks.times(names.BLOCK * 4)));
      code.when(
        filled.at(bin),
        () => code.put(words, block.right(2).plus(names.NEXT), fresh),
        () => code.put(first, bin, fresh),
      );
      code.put(last, bin, fresh);
      code.set(block, fresh);
      code.add(blocks, 1);
      for (let i = 0; i < 4; i++) {
        code.put(singles, block.right(2).plus(i), names.FAR);
        code.put(singles, block.right(2).plus(12 + i), 1);
      }
    });
    code.put(filled, bin, filled.at(bin).plus(1));
    const at = code.int(block.right(2).plus(place));
    numbers.forEach((value, i) => code.put(singles, at.plus(4 * i), value));
    code.put(words, at.plus(names.NAME), cell);
  }

  private read(cell: IntVariable): void {
    const { code, lab } = this;
    const at = code.int(cell.times(3));
    lab.forEach((value, i) => code.set(value, this.lists.reals('lab').at(at, i)));
  }

  private bin(l: Real, a: Real, b: Real): Int {
    return this.place(l, 'l').times(names.AB_BINS).plus(this.place(a, 'ab')).times(names.AB_BINS).plus(this.place(b, 'ab'));
  }

  /** Which bin of an axis a place lies in. */
  private readonly place = (value: Real, axis: keyof typeof AXES): IntVariable => {
    const { code } = this;
    const { width, from, bins } = AXES[axis];
    const last = bins - 1;
    const at = code.int(
      value
        .times(1 / width)
        .plus(from)
        .whole(),
    );
    code.when(at.below(0), () => code.set(at, 0));
    code.when(at.above(last), () => code.set(at, last));
    return at;
  };
}
