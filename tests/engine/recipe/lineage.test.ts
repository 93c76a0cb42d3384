import { describe, expect, it } from 'vitest';
import { checkProject } from '../../../src/engine/project/read.ts';
import {
  cutLineage,
  lineageSentence,
  MOST_GENERATIONS,
  printName,
  printTitle,
  type PrintLineage,
} from '../../../src/engine/recipe/lineage.ts';
import { readRecipe } from '../../../src/engine/recipe/read.ts';
import { recipeOf, writeRecipe } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

const project = smallProject();
const twelve: PrintLineage = { seed: 'tide-3', index: 11 };
const five: PrintLineage = { seed: 'tide-3', index: 4 };
const chosen: PrintLineage = { seed: 'as chosen 0f', index: 3, way: 'taste', parents: [{ seed: 'tide-3', index: 4 }, twelve] };
const near: PrintLineage = { seed: '(tide-3:11) nearer', index: 1, way: 'nearer', parents: [twelve] };

function kept(lineage?: PrintLineage) {
  return recipeOf(project.bench, project.drawer, {
    id: 'r',
    title: 't',
    seed: 'tide-3',
    index: 11,
    ...(lineage === undefined ? {} : { lineage }),
  });
}

/** A print so many times nearer to one. */
function deep(generations: number): PrintLineage {
  return generations === 0 ? twelve : { seed: `deep ${generations}`, index: 0, way: 'nearer', parents: [deep(generations - 1)] };
}

describe('lineageSentence', () => {
  it.each<[PrintLineage, string]>([
    [twelve, 'No. 12 of wall “tide-3”.'],
    [near, 'Nearer to no. 12 of wall “tide-3”.'],
    [{ ...near, way: 'away' }, 'Away from no. 12 of wall “tide-3”.'],
    [{ seed: 's', index: 0, way: 'between', parents: [five, twelve] }, 'On the way from no. 5 to no. 12 of wall “tide-3”.'],
    [
      { seed: 's', index: 0, way: 'cross', parents: [five, { seed: 'ebb', index: 0 }] },
      'A cross of no. 5 of wall “tide-3” and no. 1 of wall “ebb”.',
    ],
    [
      { seed: 's', index: 6, way: 'cross', parents: [near, five] },
      'A cross of no. 2 of the prints near no. 12 of wall “tide-3” and no. 5 of wall “tide-3”.',
    ],
    [
      { seed: 's', index: 6, way: 'cross', parents: [near, { ...near, index: 4 }] },
      'A cross of no. 2 and no. 5 of the prints near no. 12 of wall “tide-3”.',
    ],
    [{ seed: 's', index: 6, way: 'taste', parents: [five, twelve] }, 'Found by your choices from no. 5 and no. 12 of wall “tide-3”.'],
    [
      { seed: 's', index: 6, way: 'taste', parents: [near] },
      'Found by your choices from no. 2 of the prints near no. 12 of wall “tide-3”.',
    ],
    [
      { seed: 's', index: 6, way: 'cross', parents: [chosen, { ...chosen, index: 8, parents: [five] }] },
      'A cross of no. 4 and no. 9 of prints found by your choices.',
    ],
    [{ seed: 's', index: 6, way: 'cross' }, 'No. 7 of a wall found from earlier prints.'],
  ])('should tell %j', (lineage, sentence) => {
    expect(lineageSentence(lineage)).toBe(sentence);
  });

  it('should call a print by its number on its wall', () => {
    expect(printTitle(twelve)).toBe('Print 12 of “tide-3”');
    expect(printTitle(near)).toBe('Print 2 near no. 12');
    expect(printTitle({ seed: 's', index: 6, way: 'cross', parents: [near, five] })).toBe('Print 7, no. 2 × no. 5');
    expect(printTitle(chosen)).toBe('Print 4 by choice, of no. 5 and no. 12');
    expect(printTitle({ ...chosen, parents: [five] })).toBe('Print 4 by choice, of no. 5');
    expect(printName(chosen)).toBe('no. 4 of the prints found by your choices from no. 5 and no. 12 of wall “tide-3”');
    expect(printName(near)).toBe('no. 2 of the prints near no. 12 of wall “tide-3”');
  });
});

describe('a recipe with its lineage', () => {
  it('should come back from a file as it was', () => {
    const lineage: PrintLineage = { seed: 'x', index: 3, way: 'cross', parents: [near, chosen] };
    const recipe = kept(lineage);
    expect(recipe.lineage).toEqual(lineage);
    expect(readRecipe(writeRecipe(recipe), 'a.json')).toEqual({ value: recipe, problems: [] });
    expect(checkProject({ ...project, recipes: [recipe] }, 'p.json').value?.recipes[0]).toEqual(recipe);
  });

  it('should be read without one, as recipes from before', () => {
    const old = kept();
    expect('lineage' in old).toBe(false);
    expect(readRecipe(writeRecipe(old), 'a.json').value).toEqual(old);
  });

  it('should keep only so many generations, and read those', () => {
    const recipe = kept(deep(MOST_GENERATIONS + 20));
    expect(recipe.lineage).toEqual(cutLineage(deep(MOST_GENERATIONS + 20)));
    let generations = 0;
    for (let at = recipe.lineage; at?.parents !== undefined; at = at.parents[0]) generations++;
    expect(generations).toBe(MOST_GENERATIONS);
    expect(readRecipe(writeRecipe(recipe), 'a.json').value).toEqual(recipe);
  });

  it.each([
    { seed: 'a' },
    { seed: 'a', index: -1 },
    { seed: 'a', index: 0, way: 'sideways' },
    { seed: 'a', index: 0, way: 'nearer', parents: [] },
  ])('should refuse the lineage %j and name it', (lineage) => {
    const { value, problems } = readRecipe(JSON.stringify({ ...kept(), lineage }), 'a.json');
    expect(value).toBeNull();
    expect(problems[0]!.message).toMatch(/^a\.json: .*lineage/u);
  });
});
