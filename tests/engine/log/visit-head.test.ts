import { describe, expect, it } from 'vitest';
import { visitHeadOf } from '../../../src/engine/log/visit-head.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { bench, drawer, press } = smallProject();
const recipes = ['a', 'b'].map((id) => recipeOf(id === 'a' ? bench : [...bench].reverse(), drawer, { id, title: id }));

describe('visitHeadOf', () => {
  it('should hold the sheets of the order and the recipes they become', () => {
    let plan: PressPlan | null = null;
    for (const step of planVisit(
      {
        runs: [
          { recipe: recipes[0]!, sheets: 2 },
          { recipe: recipes[1]!, sheets: 1 },
        ],
        minDeltaE: 1,
        press,
        seed: 'x',
      },
      50,
    ))
      plan = step;
    const stamp = { id: 'v', title: 'Slack tide', begunMs: 5, minDeltaE: 1 };
    expect(visitHeadOf(plan!, recipes, stamp)).toEqual({
      ...stamp,
      recipes,
      sheets: [
        { number: 1, recipe: 0 },
        { number: 2, recipe: 0 },
        { number: 3, recipe: 1 },
      ],
    });
  });
});
