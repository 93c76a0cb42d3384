import { describe, expect, it } from 'vitest';
import { freePlaces } from '../../../../src/engine/order/free-places.ts';
import { orderLayers } from '../../../../src/engine/order/parts/order-layers.ts';
import { pullsBetween, pullsOf } from '../../../../src/engine/stack/edit/choose-pulls.ts';
import { movedTo, placeBeside } from '../../../../src/engine/stack/edit/rearrange.ts';
import { stackChange } from '../../../../src/engine/stack/edit/stack-change.ts';
import { pullOf } from '../../../helpers/small-project.ts';

const names = (pulls: readonly { id: string }[]): string => pulls.map(({ id }) => id).join('');
const stack = [...'abcdefgh'].map((id, i) => pullOf(id, `s${i % 3}`, i % 2 === 0 ? 'rust' : 'tar'));

describe('pulls chosen together', () => {
  it('should take a range from either end, and all of an ink or a screen', () => {
    expect(pullsBetween(stack, 'c', 'f').join('')).toBe('cdef');
    expect(pullsBetween(stack, 'f', 'c').join('')).toBe('cdef');
    expect(pullsBetween(stack, 'd', 'd').join('')).toBe('d');
    expect(pullsBetween(stack, 'd', 'gone')).toEqual([]);
    expect(pullsOf(stack, 'ink', 'tar').join('')).toBe('bdfh');
    expect(pullsOf(stack, 'screen', 's1').join('')).toBe('beh');
  });

  it('should come together at a place in their own order', () => {
    expect(names(movedTo(stack, new Set('gb'), 3))).toBe('acdbgefh');
    expect(names(movedTo(stack, new Set('a'), 99))).toBe('bcdefgha');
    expect(names(movedTo(stack, new Set('h'), -5))).toBe('habcdefg');
  });

  it('should come right over or under another, wherever they were', () => {
    const beside = (moved: string, pull: string, side: 'over' | 'under') =>
      names(movedTo(stack, new Set(moved), placeBeside(stack, new Set(moved), { pull, side })));
    expect(beside('b', 'f', 'over')).toBe('acdefbgh');
    expect(beside('b', 'f', 'under')).toBe('acdebfgh');
    expect(beside('h', 'c', 'over')).toBe('abchdefg');
    expect(beside('ah', 'd', 'under')).toBe('bcahdefg');
    expect(placeBeside(stack, new Set('a'), { pull: 'a', side: 'over' })).toBe(-1);
  });
});

describe('what became of a stack', () => {
  it('should name what a pull now lies over of those that it touches', () => {
    const after = movedTo(stack, new Set('b'), 6);
    expect(names(after)).toBe('acdefgbh');
    // b is at 6 now; c at 1 and g at 5 touch it, and so does h, whose side is the same as before.
    const touching = [
      { a: 1, b: 6 },
      { a: 5, b: 6 },
      { a: 6, b: 7 },
      { a: 0, b: 3 },
    ];
    const { passed, ...rest } = stackChange(stack, after, touching);
    expect(passed.map(({ pull, at, over, under }) => [pull.id, at, names(over), names(under)])).toEqual([['b', 6, 'cg', '']]);
    expect(rest).toEqual({ added: [], removed: [], recoloured: [], shifted: [], restroked: [] });
  });

  it('should tell colours, offsets, strokes, what came and what went from each other', () => {
    const after = [
      ...stack.slice(1).map((pull) => {
        if (pull.id === 'c') return { ...pull, ink: 'blue' };
        if (pull.id === 'd') return { ...pull, turnDeg: 180 };
        return pull.id === 'e' ? { ...pull, strokes: 2 } : pull;
      }),
      pullOf('new', 's1', 'rust'),
    ];
    const change = stackChange(stack, after, null);
    expect(names(change.removed)).toBe('a');
    expect(names(change.added)).toBe('new');
    expect(change.recoloured.map(([was, is]) => [was.ink, is.ink])).toEqual([['rust', 'blue']]);
    expect(change.shifted.map(([, is]) => is.id)).toEqual(['d']);
    expect(change.restroked.map(([, is]) => is.id)).toEqual(['e']);
    expect(change.passed).toEqual([]);
  });

  it('should say of two neighbours that changed places what now lies over the other', () => {
    const after = movedTo(stack, new Set('d'), 2);
    const { passed } = stackChange(stack, after, [{ a: 2, b: 3 }]);
    expect(passed.map(({ pull, over }) => [pull.id, names(over)])).toEqual([['c', 'd']]);
  });
});

describe('the layers of an order', () => {
  it('should lie as deep as the longest chain under each pull', () => {
    // A chain 0–2–4 with 3 on 2 as well, and 1 by itself.
    expect(
      orderLayers(5, [
        { a: 0, b: 2 },
        { a: 4, b: 2 },
        { a: 2, b: 3 },
      ]),
    ).toEqual([0, 0, 1, 2, 2]);
    expect(orderLayers(3, [])).toEqual([0, 0, 0]);
  });
});

describe('what holds a pull in its place', () => {
  it('should leave it all places up to the next pull whose order shows', () => {
    const edges = [
      { a: 1, b: 4 },
      { a: 4, b: 2 },
      { a: 4, b: 7 },
      { a: 0, b: 9 },
    ];
    expect(freePlaces(4, 10, edges)).toEqual({ over: [2, 1], under: [7], from: 3, to: 6 });
    expect(freePlaces(5, 10, edges)).toEqual({ over: [], under: [], from: 0, to: 9 });
  });
});
