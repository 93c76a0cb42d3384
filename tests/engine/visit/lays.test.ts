import { describe, expect, it } from 'vitest';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { type PressPlan, planVisit } from '../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, press } = smallProject();

/** One pull of one screen on each of several sheets. */
function planned(changes: Parameters<typeof pullOf>[3][], registrationMm: number): PressPlan {
  const runs = changes.map((change, i) => ({
    recipe: recipeOf([pullOf('x', 's1', 'rust', change)], drawer, { id: `r${i}`, title: `R${i}` }),
    sheets: i === 0 ? 2 : 1,
  }));
  return [...planVisit({ runs, minDeltaE: 1, press: { ...press, registrationMm }, seed: 'x' }, 20)].at(-1)!;
}

describe('a set-up', () => {
  it('should hold pulls that differ in strokes alone, with an instruction for each', () => {
    const { cards, registerMoves } = planned([{ strokes: 1 }, { strokes: 2 }], 0);
    expect([cards.length, registerMoves]).toEqual([1, 0]);
    expect(cards[0]!.instructions!.map(({ strokes, sheets }) => [strokes, sheets])).toEqual([
      [1, [1, 2]],
      [2, [3]],
    ]);
  });

  it('should hold offsets that lie nearer than the table holds register, each with its own instruction', () => {
    const { cards, registerMoves } = planned([{}, { dxMm: 0.3, dyMm: 0.3 }], 0.5);
    expect([cards.length, registerMoves]).toEqual([1, 0]);
    // The offset of most sheets is the set-up's; nothing is moved in the recipes.
    expect([cards[0]!.dxMm, cards[0]!.dyMm]).toEqual([0, 0]);
    expect(cards[0]!.instructions!.map(({ dxMm, dyMm, sheets }) => [dxMm, dyMm, sheets])).toEqual([
      [0, 0, [1, 2]],
      [0.3, 0.3, [3]],
    ]);
  });

  it.each([
    ['further than that', { dxMm: 0.5 }, 0.5],
    ['with a table that holds every tenth', { dxMm: 0.1 }, 0],
    ['turned', { turnDeg: 0.1 }, 0.5],
  ])('should keep offsets apart %s', (_words, change, registrationMm) => {
    const { cards, registerMoves } = planned([{}, change], registrationMm);
    expect([cards.length, registerMoves]).toEqual([2, 1]);
  });

  it('should print a film over itself in two, however near', () => {
    const twice = recipeOf([pullOf('x', 's1', 'rust'), pullOf('y', 's1', 'rust', { dxMm: 0.2, strokes: 2 })], drawer, {
      id: 't',
      title: 'Twice',
    });
    const plan = [
      ...planVisit({ runs: [{ recipe: twice, sheets: 1 }], minDeltaE: 1, press: { ...press, registrationMm: 0.5 }, seed: 'x' }, 20),
    ];
    expect(plan.at(-1)!.cards.map((card) => card.states[0]!.prints)).toEqual([[0], [1]]);
  });
});
