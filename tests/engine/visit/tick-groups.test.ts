import { describe, expect, it } from 'vitest';
import { type CardState, isSplit, tickedTogether } from '../../../src/engine/visit/set-up-cards.ts';

const state = (recipe: number, sheets: number[], prints: number[]) => ({ recipe, sheets, prints, before: [], after: [] }) as CardState;

describe('the sheets of a set-up', () => {
  it('should be ticked together by recipe and pulls, whatever is on them', () => {
    const states = [state(0, [2, 5], [1]), state(1, [7], [1]), state(0, [1, 4], [1]), state(0, [3], [1, 2])];
    expect(tickedTogether({ states }).map(({ recipe, sheets, prints }) => [recipe, sheets, prints])).toEqual([
      [0, [1, 2, 4, 5], [1]],
      [1, [7], [1]],
      [0, [3], [1, 2]],
    ]);
    expect([isSplit({ states }, { recipe: 0 }), isSplit({ states }, { recipe: 1 })]).toEqual([true, false]);
  });
});
