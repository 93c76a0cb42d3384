import { describe, expect, it } from 'vitest';
import { apply } from '../../../src/engine/project/apply.ts';
import { takenFit } from '../../../src/engine/project/take-fit.ts';
import type { Project } from '../../../src/engine/project/types.ts';
import { visitInputOf } from '../../../src/engine/project/visit-input.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import type { FitChoice } from '../../../src/engine/visit/fit-choice.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { smallProject } from '../../helpers/small-project.ts';

const small = smallProject();
const first = recipeOf(small.bench, small.drawer, { id: 'a', title: 'First' });
const turned = recipeOf([...small.bench].reverse(), small.drawer, { id: 'b', title: 'Turned' });
const project: Project = {
  ...small,
  recipes: [first, turned],
  visit: [
    { recipe: 'b', sheets: 2 },
    { recipe: 'a', sheets: 0 },
  ],
};

function planned(of: Project): PressPlan {
  let last: PressPlan | null = null;
  for (const step of planVisit(visitInputOf(of), 50)) last = step;
  return last!;
}

describe('takenFit', () => {
  const thin = { ...turned, id: 'thinned for the search', title: 'Turned, thinned' };
  const choice: FitChoice = {
    steps: [],
    runs: [
      { recipe: first, sheets: 1 },
      { recipe: thin, sheets: 2 },
    ],
    press: { days: 5 },
    savedSetUps: 1,
    savedMinutes: 30,
    daysNeeded: 5,
    fits: true,
    plan: planned({
      ...project,
      recipes: [first, thin],
      visit: [
        { recipe: 'a', sheets: 1 },
        { recipe: thin.id, sheets: 2 },
      ],
    }),
  };

  it('should keep what was thinned out beside what it came from, so that the order given is that of the project', () => {
    const { command, plan } = takenFit(choice, project.recipes, () => 'new');
    const { project: after } = apply(project, command);
    expect(after.recipes.map(({ id, title }) => [id, title])).toEqual([
      ['a', 'First'],
      ['b', 'Turned'],
      ['new', 'Turned, thinned'],
    ]);
    expect(visitInputOf(after).runs.map(({ recipe, sheets }) => [recipe.id, sheets])).toEqual([
      ['a', 1],
      ['new', 2],
    ]);
    expect(after.press.days).toBe(5);
    expect(plan!.recipes.map(({ id }) => id)).toEqual(['a', 'new']);
    expect(plan!.cards).toBe(choice.plan!.cards);
  });

  it('should make nothing new where kept recipes are printed less, and have no order where none was made', () => {
    const { command, plan } = takenFit({ ...choice, runs: [{ recipe: first, sheets: 1 }], plan: null }, project.recipes, () => {
      throw new Error('no id is needed');
    });
    expect(command).toEqual({ kind: 'thin-visit', recipes: [], runs: [{ recipe: 'a', sheets: 1 }], press: { days: 5 } });
    expect(plan).toBeNull();
  });
});
