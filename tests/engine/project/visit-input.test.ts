import { describe, expect, it } from 'vitest';
import type { Project } from '../../../src/engine/project/types.ts';
import { sameVisitInput, visitInputOf } from '../../../src/engine/project/visit-input.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
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

describe('visitInputOf', () => {
  it('should take the recipes of which sheets are wanted, in the order in which they are kept', () => {
    // Of two sheets 12 % are an over, rounded up, and each recipe has a proof.
    const runs = [{ recipe: turned, sheets: 2, overs: 1, proofs: 1 }];
    expect(visitInputOf(project)).toEqual({ runs, press: small.press, minDeltaE: 1, seed: 'small' });
    const both = {
      ...project,
      visit: [
        { recipe: 'b', sheets: 2 },
        { recipe: 'a', sheets: 3 },
      ],
    };
    expect(visitInputOf(both).runs.map(({ recipe, sheets }) => [recipe.id, sheets])).toEqual([
      ['a', 3],
      ['b', 2],
    ]);
    expect(visitInputOf({ ...project, visit: [] }).runs).toEqual([]);
  });

  it('should take the overs and proofs that were said of a recipe', () => {
    const [run] = visitInputOf({ ...project, visit: [{ recipe: 'b', sheets: 5, overs: 0, proofs: 4 }] }).runs;
    expect(run).toMatchObject({ sheets: 5, overs: 0, proofs: 4 });
  });

  it('should give prints of which there is one no over of their own, but one test sheet to all', () => {
    const visit = [
      { recipe: 'a', sheets: 1 },
      { recipe: 'b', sheets: 1 },
    ];
    const input = visitInputOf({ ...project, visit });
    expect(input.runs.map(({ sheets, overs, proofs }) => [sheets, overs, proofs])).toEqual([
      [1, 0, 0],
      [1, 0, 0],
    ]);
    expect(input.testSheet).toBe(true);
  });
});

describe('sameVisitInput', () => {
  const one = visitInputOf(project);
  it('should hold for figures that are written alike', () => {
    expect(sameVisitInput(one, { ...one, press: structuredClone(one.press), runs: one.runs.map((run) => ({ ...run })) })).toBe(true);
  });
  it.each([
    ['a figure', { press: { ...one.press, days: one.press.days + 1 } }],
    ['the seed', { seed: 'other' }],
    ['the least difference', { minDeltaE: 2 }],
    ['the sheets', { runs: [{ recipe: turned, sheets: 3, overs: 1, proofs: 1 }] }],
    ['the overs', { runs: [{ recipe: turned, sheets: 2, overs: 2, proofs: 1 }] }],
    ['a test sheet', { testSheet: true }],
    ['a recipe that was changed', { runs: [{ recipe: { ...turned }, sheets: 2, overs: 1, proofs: 1 }] }],
    ['one recipe more', { runs: [...one.runs, { recipe: first, sheets: 1 }] }],
  ])('should see that %s is another', (_name, change) => {
    expect(sameVisitInput(one, { ...one, ...change })).toBe(false);
  });
});
