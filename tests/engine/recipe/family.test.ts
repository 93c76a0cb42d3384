import { describe, expect, it } from 'vitest';
import { recipeFamilies } from '../../../src/engine/recipe/family.ts';

const kin = (id: string, parent?: string): { id: string; title: string; parent?: string } => ({ id, title: id.toUpperCase(), ...(parent === undefined ? {} : { parent }) });
const members = (...recipes: Parameters<typeof recipeFamilies>[0]): string[][] => recipeFamilies(recipes).map((family) => [...family.members].sort());

describe('recipeFamilies', () => {
  it('should follow sheets as pulled back to the recipe they came from, over generations', () => {
    expect(members(kin('c', 'b'), kin('a'), kin('x'), kin('b', 'a'))).toEqual([['a', 'b', 'c'], ['x']]);
    expect(recipeFamilies([kin('c', 'b'), kin('a'), kin('b', 'a')])[0]).toMatchObject({ id: 'a', title: 'A' });
  });
  it('should hold children of a recipe that is gone together, and take an id once', () => {
    expect(members(kin('b', 'gone'), kin('c', 'gone'), kin('b', 'gone'))).toEqual([['b', 'c']]);
    expect(recipeFamilies([kin('b', 'gone')])[0]).toMatchObject({ id: 'b', title: 'B' });
  });
  it('should end where parents run in a ring', () => {
    expect(members(kin('b', 'c'), kin('c', 'b'), kin('d', 'd'), kin('e', 'b'))).toEqual([['b', 'c', 'e'], ['d']]);
  });
});
