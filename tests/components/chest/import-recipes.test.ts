import { describe, it, expect } from 'vitest';
import { importRecipe } from '../../../src/components/chest/import-recipes.ts';
import { demoInks } from '../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../src/engine/ink/demo/demo-paper.ts';
import { readRecipe } from '../../../src/engine/recipe/read.ts';
import { recipeOf, writeRecipe } from '../../../src/engine/recipe/write.ts';

const RECIPE = recipeOf(
  [{ id: 'p', screen: 's', ink: demoInks()[0]!.id, dxMm: 0, dyMm: 0.4, turnDeg: 0, strokes: 1 }],
  {
    shapes: [{ id: 'sh', name: 'fender', rings: [[0, 0, 10, 0, 10, 20, 0, 20]], fillRule: 'nonzero', widthMm: 10, heightMm: 20 }],
    screens: [
      {
        id: 's',
        number: 1,
        name: 'fender',
        placed: [{ shape: 'sh', xMm: 280, yMm: 380, turnDeg: 0, scale: 1 }],
        mesh: { threadsPerCm: 90, threadUm: 48 },
      },
    ],
    inks: demoInks(),
    paper: DEMO_PAPER,
    strokeGain: 0.4,
  },
  { id: 'r', title: 'Ebb' },
);

const file = (text: string, name = 'ebb.recipe.json'): File => new File([text], name, { type: 'application/json' });

const read = async (each: File) => readRecipe(await each.text(), each.name);

describe('importRecipe', () => {
  it('should keep a recipe that is not there yet as it is', async () => {
    expect(await importRecipe(file(writeRecipe(RECIPE)), [], read)).toEqual({ kind: 'new', recipe: RECIPE });
  });

  it('should tell that a recipe is there already, whatever the order of its fields', async () => {
    const turned = JSON.stringify(Object.fromEntries(Object.entries(RECIPE).toReversed()));
    expect(await importRecipe(file(turned), [RECIPE], read)).toEqual({ kind: 'there', title: 'Ebb' });
  });

  it('should give another id to a recipe that differs from the one with its id', async () => {
    const found = await importRecipe(file(writeRecipe({ ...RECIPE, title: 'Flood' })), [RECIPE], read);
    expect(found).toMatchObject({ kind: 'new', recipe: { title: 'Flood' } });
    expect(found.kind === 'new' && found.recipe.id).not.toBe('r');
  });

  it('should refuse what is no recipe in a sentence that names the file', async () => {
    for (const text of ['', '{', '[]', writeRecipe(RECIPE).replace('"strokes": 1', '"strokes": -1')]) {
      const found = await importRecipe(file(text, 'bad.json'), [], read);
      expect(found).toEqual({ kind: 'refused', sentences: [expect.stringMatching(/^bad\.json: .+\.$/)] });
    }
  });
});
