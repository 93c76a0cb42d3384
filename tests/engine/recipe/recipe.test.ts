import { describe, expect, it } from 'vitest';
import { demoStocks } from '../../../src/engine/ink/demo/demo-stocks.ts';
import { letDown } from '../../../src/engine/ink/mix/mix.ts';
import { readRecipe } from '../../../src/engine/recipe/read.ts';
import type { Recipe } from '../../../src/engine/recipe/types.ts';
import { studioOfRecipe, recipeOf, writeRecipe } from '../../../src/engine/recipe/write.ts';
import { paintView } from '../../../src/engine/stack/view.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const project = smallProject();
const recipe = recipeOf(project.bench, project.drawer, { id: 'r1', title: 'First', seed: 'small', index: 4 });

/** The text of the recipe with one field changed, by its path. */
function changed(path: (string | number)[], value: unknown): string {
  const copy = JSON.parse(writeRecipe(recipe)) as Record<string | number, unknown>;
  let at = copy;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>;
  at[path.at(-1)!] = value;
  return JSON.stringify(copy);
}

describe('recipeOf', () => {
  it('should carry only what its pulls use', () => {
    const small = recipeOf([pullOf('p', 's2', 'weed')], project.drawer, { id: 'r', title: 't' });
    expect(small.screens.map((screen) => screen.id)).toEqual(['s2']);
    expect(small.shapes.map((shape) => shape.id)).toEqual(['tall']);
    expect(small.inks.map((ink) => ink.id)).toEqual(['weed']);
  });

  it('should carry the stock inks that its inks are mixed from, and read them again', () => {
    const [base, , soot] = demoStocks();
    const mist = letDown(soot!, base!, 3);
    const mesh = { threadsPerCm: 77, threadUm: 55, fabricUm: 85, statedVolumeCm3PerM2: 26 };
    const drawer = {
      ...project.drawer,
      inks: [...project.drawer.inks, ...demoStocks(), mist],
      screens: project.drawer.screens.map((screen) => ({ ...screen, mesh })),
    };
    const mixed = recipeOf([pullOf('p', 's2', mist.id)], drawer, { id: 'r', title: 't' });
    expect(mixed.inks.map((ink) => ink.id)).toEqual([base!.id, soot!.id, mist.id]);
    expect(readRecipe(writeRecipe(mixed), 'mixed.json').value).toEqual(mixed);
  });

  it('should refuse a pull whose screen the drawer lacks', () => {
    expect(() => recipeOf([pullOf('p', 's9', 'weed')], project.drawer, { id: 'r', title: 't' })).toThrow(/"s9"/);
  });
});

describe('readRecipe', () => {
  it('should give back the identical stack and picture', () => {
    const read = readRecipe(writeRecipe(recipe), 'first.json');
    expect(read.value).toEqual(recipe);
    const view = { xMm: 80, yMm: 100, widthMm: 300, heightMm: 260, widthPx: 150, heightPx: 130 };
    const before = paintView(project.drawer, { pulls: project.bench }, view);
    const after = paintView(studioOfRecipe(read.value!), { pulls: read.value!.pulls }, view);
    expect(after).toEqual(before);
    expect(new Set(before).size).toBeGreaterThan(6);
  });

  const bad: [string, string, RegExp][] = [
    ['an empty file', '', /kept\.json: the file is empty/],
    ['a truncated file', writeRecipe(recipe).slice(0, 500), /not whole JSON/],
    ['another kind of JSON', '{"a":1}', /"format"/],
    ['a newer version', changed(['version'], 99), /"version" is 99/],
    ['no version', changed(['version'], undefined), /"version"/],
    ['negative strokes', changed(['pulls', 1, 'strokes'], -1), /pulls\[1\]\.strokes is -1, but must be 1 or more/],
    ['half strokes', changed(['pulls', 1, 'strokes'], 1.5), /pulls\[1\]\.strokes is 1\.5, but must be a whole number/],
    ['NaN, which JSON writes as null', changed(['pulls', 0, 'dxMm'], Number.NaN), /pulls\[0\]\.dxMm is null, but must be a number/],
    ['an unknown screen', changed(['pulls', 2, 'screen'], 'ghost'), /pulls\[2\]\.screen names "ghost"/],
    ['an unknown ink', changed(['pulls', 2, 'ink'], 'ghost'), /pulls\[2\]\.ink names "ghost"/],
    ['an unknown shape', changed(['screens', 0, 'placed', 0, 'shape'], 'ghost'), /screens\[0\]\.placed\[0\]\.shape names "ghost"/],
    ['two pulls of one id', changed(['pulls', 2, 'id'], 'p1'), /pulls\[2\]\.id is "p1"/],
    ['too few bands', changed(['inks', 0, 'kx'], [1, 2]), /inks\[0\]\.kx is a list of 2/],
    [
      'a mesh without openings',
      changed(['screens', 0, 'mesh'], { threadsPerCm: 150, threadUm: 80 }),
      /screens\[0\]\.mesh is an object, but must be a mesh whose threads leave an opening/,
    ],
    [
      'a mix of an ink that is not there',
      changed(['inks', 0, 'mix'], [{ ink: 'ghost', parts: 1 }]),
      /inks\[0\]\.mix\[0\]\.ink names "ghost"/,
    ],
    [
      'a mix of no parts',
      changed(['inks', 0, 'mix'], [{ ink: 'weed', parts: 0 }]),
      /inks\[0\]\.mix\[0\]\.parts is 0, but must be more than 0/,
    ],
    [
      'a mix of a mix',
      changed(['inks', 0, 'mix'], [{ ink: 'rust', parts: 1 }]),
      /inks\[0\]\.mix\[0\]\.ink names "rust", which is itself a mix/,
    ],
    ['no pulls', changed(['pulls'], []), /pulls is a list of 0/],
    [
      'a ring with half a point',
      changed(['shapes', 0, 'rings', 0], [0, 0, 1, 0, 1, 1, 2]),
      /shapes\[0\]\.rings\[0\] is a list of 7, but must be an x and a y for each corner/,
    ],
    ['a list for a paper', changed(['paper'], []), /paper is a list of 0, but must be an object/],
    ['what is not text', undefined as unknown as string, /the file is not text/],
  ];
  it.each(bad)('should refuse %s in one sentence', (_name, text, sentence) => {
    const read = readRecipe(text, 'kept.json');
    expect(read.value).toBeNull();
    expect(read.problems).toHaveLength(1);
    expect(read.problems[0]!.message).toMatch(sentence);
    expect(read.problems[0]!.message).toMatch(/^kept\.json: .*\.$/);
  });

  it('should never throw on values swapped at random places', () => {
    const text = writeRecipe(recipe);
    const values = ['null', '-1', '1e999', '""', '[]', '{}', '"x"'];
    for (let i = 0; i < 300; i++) {
      const at = (i * 7919) % text.length;
      const broken = text.slice(0, at) + values[i % values.length] + text.slice(at + 1 + (i % 9));
      const read: { value: Recipe | null } = readRecipe(broken, 'x.json');
      expect(read.value === null || read.value.format === 'pullstack-recipe').toBe(true);
    }
  });
});
