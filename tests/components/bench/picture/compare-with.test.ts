import { describe, expect, it } from 'vitest';
import { AS_OPENED, NONE, otherStack } from '../../../../src/components/bench/picture/compare-with.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { bench, drawer } = smallProject();
const recipe = recipeOf(bench.slice(0, 2), drawer, { id: 'a', title: 'Ebb' });
const opened = { pulls: bench, drawer };

describe('otherStack', () => {
  it('should find what was chosen, and nothing once a recipe is gone', () => {
    expect(otherStack(NONE, opened, [recipe])).toBeNull();
    expect(otherStack(AS_OPENED, opened, [recipe])).toEqual({ name: 'As it was opened', pulls: bench, drawer });
    expect(otherStack('a', opened, [recipe])).toMatchObject({
      name: 'Ebb',
      pulls: recipe.pulls,
      drawer: { paper: recipe.paper, inks: recipe.inks },
    });
    expect(otherStack('a', opened, [])).toBeNull();
  });

  it('should give a recipe the same drawer each time, so that its picture is drawn once', () => {
    const drawerNow = () => otherStack('a', opened, [recipe])!.drawer;
    expect(drawerNow()).toBe(drawerNow());
    expect(otherStack('a', opened, [{ ...recipe }])!.drawer).not.toBe(drawerNow());
  });
});
