import { describe, expect, it } from 'vitest';
import type { Command } from '../../../../src/engine/project/commands/command.ts';
import { perform, startHistory, undo } from '../../../../src/engine/project/history.ts';
import { offeredNames } from '../../../../src/engine/recipe/chest/offered-names.ts';
import { type RecipeBranch, recipeTree } from '../../../../src/engine/recipe/chest/recipe-tree.ts';
import { labelsOf, pulledInks, type RecipeView, sortedRecipes } from '../../../../src/engine/recipe/chest/sorted-recipes.ts';
import { readRecipe } from '../../../../src/engine/recipe/read.ts';
import type { Recipe } from '../../../../src/engine/recipe/types.ts';
import { recipeOf, writeRecipe } from '../../../../src/engine/recipe/write.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench } = smallProject();
const recipe = (id: string, title: string, more: Partial<Recipe> = {}, pulls = bench): Recipe => ({
  ...recipeOf(pulls, drawer, { id, title }),
  ...more,
});
const kept = [
  recipe('a', 'Tide', { labels: ['blue', 'big'] }),
  recipe('b', 'anchor', { note: 'for the Tide series', parent: 'a' }, bench.slice(0, 1)),
  recipe('c', 'Buoy', { labels: ['blue'], parent: 'b' }, bench.slice(0, 2)),
];
const ids = (list: readonly { id: string }[]): string => list.map(({ id }) => id).join('');
const view = (change: Partial<RecipeView>) => ids(sortedRecipes(kept, { words: '', label: '', sort: 'oldest', ...change }));

describe('the shelf of the chest', () => {
  it('should sort by age, title and how many pulls', () => {
    expect(['oldest', 'newest', 'title', 'fewest pulls', 'most pulls'].map((sort) => view({ sort: sort as RecipeView['sort'] }))).toEqual([
      'abc',
      'cba',
      'bca',
      'bca',
      'acb',
    ]);
  });

  it('should find words in title, note, labels and names of inks, all of them', () => {
    expect(view({ words: 'tide' })).toBe('ab');
    expect(view({ words: 'TIDE series' })).toBe('b');
    expect(view({ words: 'foam' })).toBe('a');
    expect(view({ label: 'blue' })).toBe('ac');
    expect(view({ words: 'nothing' })).toBe('');
    expect(labelsOf(kept)).toEqual(['big', 'blue']);
  });

  it('should not count stock inks that are only weighed into a mix', () => {
    const [rust] = drawer.inks;
    const stock = { ...rust!, id: 'stock', stock: true as const };
    expect(pulledInks({ ...kept[1]!, inks: [...kept[1]!.inks, stock] }).map(({ id }) => id)).toEqual(['rust']);
  });
});

describe('recipes as they came of each other', () => {
  const text = (branches: readonly RecipeBranch[]): string =>
    branches.map(({ recipe: { id }, children }) => id + (children.length > 0 ? `(${text(children)})` : '')).join(' ');
  it('should hang each under the one that it came of', () => {
    expect(text(recipeTree(kept))).toBe('a(b(c))');
    expect(text(recipeTree(kept.slice(1)))).toBe('b(c)');
  });
  it('should hang a print of a wall under the kept print that it was found from, also by its grandparents', () => {
    const wall = (id: string, seed: string, index: number, more: Partial<Recipe> = {}): Recipe => recipe(id, id, { seed, index, ...more });
    const first = { seed: 'tide', index: 3 };
    const lineage = {
      seed: 'near',
      index: 1,
      way: 'nearer' as const,
      parents: [{ seed: 'mid', index: 8, way: 'nearer' as const, parents: [first] }],
    };
    expect(text(recipeTree([wall('x', 'tide', 3), wall('y', 'near', 1, { lineage })]))).toBe('x(y)');
  });
  it('should show recipes that name each other', () => {
    expect(text(recipeTree([recipe('p', 'p', { parent: 'q' }), recipe('q', 'q', { parent: 'p' })]))).toBe('q(p)');
  });
});

describe('several recipes together', () => {
  const start = startHistory({ ...smallProject(), recipes: kept });
  it('should be labelled and removed in one step each, which one undo takes back', () => {
    const labelled = perform(start, { kind: 'label-recipes', recipes: ['a', 'b'], label: ' sold ', on: true });
    expect(labelled.project.recipes.map(({ labels }) => labels)).toEqual([['blue', 'big', 'sold'], ['sold'], ['blue']]);
    const off = perform(labelled, { kind: 'label-recipes', recipes: ['a', 'b'], label: 'sold', on: false });
    expect(off.project.recipes[1]).not.toHaveProperty('labels');
    const gone = perform(start, { kind: 'remove-recipes', recipes: ['a', 'c'] });
    expect(ids(gone.project.recipes)).toBe('b');
    expect(undo(gone).project).toEqual(start.project);
  });
  it('should refuse a label that is none', () => {
    for (const label of [' ', 'x'.repeat(61)])
      expect(() => perform(start, { kind: 'label-recipes', recipes: ['a'], label, on: true } satisfies Command)).toThrow(/1 to 60/);
  });
  it('should keep labels in a file', () => {
    expect(readRecipe(writeRecipe(kept[0]!), 'tide').value?.labels).toEqual(['blue', 'big']);
  });
});

describe('names from what is seen', () => {
  it('should name the inks and the screen that lie on top over most of the sheet', () => {
    // By hand: of foam all 20,000 mm² are seen, of weed 20,000 − 10,000 under foam, of rust 20,000 − 10,000 − 2,400.
    expect(offeredNames({ pulls: bench }, drawer)[0]).toBe('Foam and weed');
    expect(offeredNames({ pulls: bench.toReversed() }, drawer)[0]).toMatch(/^Rust and /u);
    expect(offeredNames({ pulls: [{ ...bench[0]!, dxMm: 1500 }] }, drawer)).toEqual([]);
  });
});
