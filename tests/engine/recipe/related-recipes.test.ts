import { describe, expect, it } from 'vitest';
import { relatedRecipes } from '../../../src/engine/recipe/related-recipes.ts';

const derived = (id: string, parent?: string): { id: string; title: string; parent?: string } => ({
  id,
  title: id.toUpperCase(),
  ...(parent === undefined ? {} : { parent }),
});
const members = (...recipes: Parameters<typeof relatedRecipes>[0]): string[][] =>
  relatedRecipes(recipes).map((family) => [...family.members].sort());

describe('relatedRecipes', () => {
  it('should follow sheets as pulled back to the recipe they came from, over generations', () => {
    expect(members(derived('c', 'b'), derived('a'), derived('x'), derived('b', 'a'))).toEqual([['a', 'b', 'c'], ['x']]);
    expect(relatedRecipes([derived('c', 'b'), derived('a'), derived('b', 'a')])[0]).toMatchObject({ id: 'a', title: 'A' });
  });
  it('should hold children of a recipe that is gone together, and take an id once', () => {
    expect(members(derived('b', 'gone'), derived('c', 'gone'), derived('b', 'gone'))).toEqual([['b', 'c']]);
    expect(relatedRecipes([derived('b', 'gone')])[0]).toMatchObject({ id: 'b', title: 'B' });
  });
  it('should end where parents run in a ring', () => {
    expect(members(derived('b', 'c'), derived('c', 'b'), derived('d', 'd'), derived('e', 'b'))).toEqual([['b', 'c', 'e'], ['d']]);
  });
});
