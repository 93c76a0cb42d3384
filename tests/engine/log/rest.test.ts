import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { planRest, type RestInput } from '../../../src/engine/log/rest.ts';
import type { LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { overlapsOf } from '../../../src/engine/order/index.ts';
import { type PressPlan, planVisit } from '../../../src/engine/output/visit.ts';
import { drawerOfRecipe, recipeOf } from '../../../src/engine/recipe/write.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const first = recipeOf(bench, drawer, { id: 'a', title: 'First' });
const turned = recipeOf([...bench].reverse(), drawer, { id: 'b', title: 'Turned' });
const recipes = [first, turned];
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes,
  sheets: [0, 0, 0, 1, 1].map((recipe, i) => ({ number: i + 1, recipe })),
};
const visit = { runs: [{ recipe: first, sheets: 3 }, { recipe: turned, sheets: 2 }], minDeltaE: 1, press, seed: 'x' };

function inputOf(events: LogEvent[]): RestInput {
  return { ...visit, rest: { recipes, sheets: sheetsAsPulled(head, events) } };
}
function last(steps: Iterable<PressPlan>): PressPlan {
  let plan: PressPlan | null = null;
  for (const step of steps) plan = step;
  return plan!;
}
const pulled = (sheet: number, ...pulls: string[]): LogEvent => ({ id: `${sheet} ${pulls.join()}`, atMs: 1, device: 'd', sheet, kind: 'pulled', pulls });

/** Replays the rest on paper: every sheet ends complete, and what overlaps visibly lies in order. */
function replay(plan: PressPlan, input: RestInput): void {
  for (const sheet of input.rest.sheets) {
    const order = [...sheet.done];
    for (const card of plan.cards) {
      for (const state of card.states) {
        if (!state.sheets.includes(sheet.number)) continue;
        expect(state.recipe).toBe(sheet.recipe);
        order.push(...state.prints);
        expect(state.after.map((pull) => pull.screen)).toEqual(order.map((at) => recipes[sheet.recipe]!.pulls[at]!.screen));
      }
    }
    if (sheet.spoiled) {
      expect(order).toEqual(sheet.done);
      continue;
    }
    expect([...order].sort()).toEqual([0, 1, 2]);
    const recipe = recipes[sheet.recipe]!;
    for (const { a, b } of overlapsOf({ pulls: recipe.pulls }, drawerOfRecipe(recipe), { toleranceMm: 0.05, minDeltaE: 1 })) {
      expect(order.indexOf(a)).toBeLessThan(order.indexOf(b));
    }
  }
}

describe('planRest', () => {
  it('should be the whole visit while nothing is done', () => {
    const input = inputOf([]);
    const rest = last(planRest(input, 200));
    const whole = last(planVisit(visit, 200));
    replay(rest, input);
    expect([rest.cards.length, rest.mounts, rest.sheets.length]).toEqual([whole.cards.length, whole.mounts, 5]);
  });
  it('should pull only what is left, under the numbers on the backs of the sheets', () => {
    const spoiled: LogEvent = { id: 's', atMs: 2, device: 'd', sheet: 2, kind: 'spoiled', note: '' };
    const input = inputOf([pulled(1, 'p1'), pulled(3, 'p1', 'p2'), pulled(2, 'p1'), spoiled, pulled(4, 'p3', 'p2', 'p1')]);
    const plan = last(planRest(input, 200));
    replay(plan, input);
    expect(plan.sheets.map((sheet) => sheet.number)).toEqual([1, 3, 5]);
    expect(plan.recipes.map((recipe) => recipe.sheets)).toEqual([[1, 3], [5]]);
  });
  it('should lay what went otherwise under what is left', () => {
    const otherwise: LogEvent = { id: 'o', atMs: 1, device: 'd', sheet: 1, kind: 'otherwise', pulls: ['p1'], how: { strokes: 3, dxMm: 0, dyMm: 0 }, note: '' };
    const plan = last(planRest(inputOf([otherwise, pulled(2, 'p1')]), 200));
    const strokes = (sheet: number): number[] =>
      plan.cards.flatMap((card) => card.states).find((state) => state.sheets.includes(sheet))!.before.map((pull) => pull.strokes);
    expect(strokes(1)).toEqual([3]);
    expect(strokes(2)).toEqual([1]);
  });
  it('should say that nothing is left', () => {
    const one = recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' });
    const input: RestInput = { ...visit, rest: { recipes: [one], sheets: [{ number: 1, recipe: 0, pulls: one.pulls, done: [0], spoiled: false }] } };
    expect(() => last(planRest(input, 50))).toThrow(/Nothing is left to pull/);
  });
});
