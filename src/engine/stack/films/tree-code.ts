import type { PlainCode } from '../../base/code/plain-code.ts';
import type { Int, IntVariable } from '../../base/code/values.ts';
import { MORE_PILES, type TreeLists } from './tree-names.ts';

/**
 * Writes how the piles of a map's cells are found, see `FilmTree`.
 * @param size words of a cell, as `treeSize` gives it
 */
export function writeTreeCode(code: PlainCode, lists: TreeLists, size: number): void {
  new TreeCode(code, lists, size).write();
}

/** What a function is written for: words of a cell, and whether the last of them is its kind. */
export function treeSize(words: number, kinds: boolean): number {
  return words * 2 + (kinds ? 1 : 0);
}

class TreeCode {
  private readonly code: PlainCode;
  private readonly lists: TreeLists;
  /** Piles so far; a pile, and the one that it lies on; whether it is new. */
  private readonly piles: IntVariable;
  private readonly pile: IntVariable;
  private readonly above: IntVariable;
  private readonly fresh: IntVariable;
  private readonly hash: IntVariable;
  private readonly base: IntVariable;
  /** The pattern that is asked for, and how many of its words tell layers. */
  private readonly asked: readonly IntVariable[];
  private readonly coverWords: number;

  constructor(code: PlainCode, lists: TreeLists, size: number) {
    this.code = code;
    this.lists = lists;
    [this.piles, this.pile, this.above, this.fresh] = code.ints();
    [this.hash, this.base] = code.ints();
    this.asked = Array.from({ length: size >> 1 }, () => code.int());
    this.coverWords = (size >> 1) - (size & 1);
  }

  write(): void {
    const { code, lists, piles, pile, above, fresh, base } = this;
    const cell = code.int();
    const cover = lists.ints('cover');
    code.repeat(
      () => {
        code.set(base, cell.times(this.asked.length));
        this.ask((_, word) => cover.at(base, word).and(lists.ints('mask').at(word)));
        code.set(above, -1);
        code.repeat(
          () => {
            this.find();
            code.when(
              above.below(0),
              () => code.put(lists.ints('leaf'), cell, pile),
              () => code.put(lists.ints('parent'), above, pile),
            );
            code.when(fresh, () => this.takeTop());
          },
          () => fresh,
        );
        code.add(cell, 1);
      },
      () => cell.below(lists.int('cells')),
    );
    this.list();
    code.put(lists.ints('found'), 0, piles);
  }

  /** Asks for another pattern. */
  private ask(kept: (bits: Int, word: number) => Int): void {
    const { code, hash } = this;
    code.set(hash, 0);
    this.asked.forEach((bits, word) => {
      code.set(bits, kept(bits, word));
      code.set(hash, hash.xor(bits).times(0x9e3779b1 | 0));
      code.set(hash, hash.xor(hash.right(15)));
    });
  }

  private find(): void {
    const { code, lists, piles, pile, fresh, hash, base, asked } = this;
    const [slots, pattern] = [lists.ints('slots'), lists.ints('pattern')];
    const [mask, slot, open] = [lists.int('slotMask'), code.int(), code.int(1)];
    code.set(slot, hash.and(mask));
    code.set(fresh, 0);
    code.repeat(
      () => {
        code.set(pile, slots.at(slot));
        code.when(
          pile.below(0),
          () => {
            code.set(open, 0);
            code.set(fresh, 1);
            code.when(piles.is(lists.int('pilesRoom')), () => code.giveBack(MORE_PILES));
            code.set(pile, piles);
            code.put(slots, slot, pile);
            code.set(base, pile.times(asked.length));
            asked.forEach((bits, word) => code.put(pattern, base.plus(word), bits));
            code.add(piles, 1);
          },
          () => {
            code.set(base, pile.times(asked.length));
            const others = asked.map((bits, word) => pattern.at(base, word).xor(bits));
            code.set(
              open,
              others
                .reduce((any, other) => any.or(other))
                .not()
                .not(),
            );
            code.set(slot, slot.plus(1).and(mask));
          },
        );
      },
      () => open,
    );
  }

  /** Notes the topmost layer of a new pile, and asks for the pile without it. */
  private takeTop(): void {
    const { code, lists, pile, above, fresh, asked } = this;
    const [layerOf, first] = [lists.ints('layerOf'), lists.ints('first')];
    const [bits, layer, top, bit, topBit] = [code.int(), code.int(), code.int(-1), code.int(), code.int()];
    asked.slice(0, this.coverWords).forEach((asked, word) => {
      code.set(bits, asked);
      code.during(bits, () => {
        code.set(bit, bits.lowest().plus(word * 32));
        code.set(layer, layerOf.at(bit));
        code.when(layer.above(top), () => {
          code.set(top, layer);
          code.set(topBit, bit);
        });
        code.set(bits, bits.and(bits.minus(1)));
      });
    });
    code.set(above, pile);
    code.when(
      top.below(0),
      () => code.set(fresh, 0),
      () => {
        code.put(lists.ints('next'), above, first.at(top));
        code.put(first, top, above);
        this.ask((bits, word) => bits.and(topBit.right(5).is(word).left(topBit.and(31)).xor(-1)));
      },
    );
  }

  /** Lists what is laid, layer after layer: the layer, the pile it is laid on and the one that this makes. */
  private list(): void {
    const { code, lists, pile } = this;
    const [layer, step, steps] = [code.int(), code.int(), lists.ints('steps')];
    code.upTo(layer, lists.int('layers'), () => {
      code.set(pile, lists.ints('first').at(layer));
      code.during(pile.above(-1), () => {
        code.put(steps, step, layer);
        code.put(steps, step.plus(1), lists.ints('parent').at(pile));
        code.put(steps, step.plus(2), pile);
        code.add(step, 3);
        code.set(pile, lists.ints('next').at(pile));
      });
    });
    code.put(lists.ints('found'), 1, step);
  }
}
