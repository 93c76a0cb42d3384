import type { PlainCode } from '../../base/code/plain-code.ts';
import type { Int, IntVariable } from '../../base/code/values.ts';
import { MORE_PILES, type TreeLists } from './tree-names.ts';

/** Writes how the piles of a map's cells are found, see `FilmTree`. */
export function writeTreeCode(code: PlainCode, lists: TreeLists): void {
  new TreeCode(code, lists).write();
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
  private readonly word: IntVariable;
  private readonly base: IntVariable;

  constructor(code: PlainCode, lists: TreeLists) {
    this.code = code;
    this.lists = lists;
    [this.piles, this.pile, this.above, this.fresh] = code.ints();
    [this.hash, this.word, this.base] = code.ints();
  }

  write(): void {
    const { code, lists, piles, pile, above, fresh, base } = this;
    const cell = code.int();
    const cover = lists.ints('cover');
    code.repeat(
      () => {
        code.set(base, cell.times(lists.int('words')));
        this.ask((word) => cover.at(base.plus(word)).and(lists.ints('mask').at(word)));
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

  /** Puts a pattern where that of the next new pile would lie. */
  private ask(kept: (word: IntVariable) => Int): void {
    const { code, lists, hash, word } = this;
    const pattern = lists.ints('pattern');
    const [bits, to] = [code.int(), code.int(this.piles.times(lists.int('words')))];
    code.set(hash, 0);
    code.each(word, lists.int('words'), () => {
      code.set(bits, kept(word));
      code.put(pattern, to.plus(word), bits);
      code.set(hash, hash.xor(bits).times(0x9e3779b1 | 0));
      code.set(hash, hash.xor(hash.right(15)));
    });
  }

  private find(): void {
    const { code, lists, piles, pile, fresh, hash, word, base } = this;
    const [slots, pattern, words] = [lists.ints('slots'), lists.ints('pattern'), lists.int('words')];
    const [mask, slot, to, open] = [lists.int('slotMask'), code.int(), code.int(piles.times(words)), code.int(1)];
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
            code.set(pile, piles);
            code.put(slots, slot, pile);
            code.add(piles, 1);
            // The one after it must have room for its pattern as well.
            code.when(piles.is(lists.int('pilesRoom')), () => code.giveBack(MORE_PILES));
          },
          () => {
            code.set(base, pile.times(words));
            code.set(word, 0);
            const same = pattern.at(base.plus(word)).is(pattern.at(to.plus(word)));
            code.during([word.below(words), same], () => code.add(word, 1));
            code.set(open, word.below(words));
            code.set(slot, slot.plus(1).and(mask));
          },
        );
      },
      () => open,
    );
  }

  /** Notes the topmost layer of a new pile, and asks for the pile without it. */
  private takeTop(): void {
    const { code, lists, pile, above, fresh, word, base } = this;
    const [pattern, layerOf, first] = [lists.ints('pattern'), lists.ints('layerOf'), lists.ints('first')];
    const [bits, layer, top, bit, topBit] = [code.int(), code.int(), code.int(-1), code.int(), code.int()];
    code.set(base, pile.times(lists.int('words')));
    code.each(word, lists.int('coverWords'), () => {
      code.set(bits, pattern.at(base.plus(word)));
      code.during(bits, () => {
        code.set(bit, bits.lowest().plus(word.left(5)));
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
        this.ask((each) => pattern.at(base.plus(each)).and(each.is(topBit.right(5)).left(topBit.and(31)).xor(-1)));
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
