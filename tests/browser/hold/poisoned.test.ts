import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOMS } from '../../../src/components/rooms.ts';
import type { Recipe } from '../../../src/engine/recipe/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';
import { bare, putRecord, records } from '../databases.ts';
import { enter, openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

const project = smallProject();
const good = recipeOf(project.bench, project.drawer, { id: 'good', title: 'A good one' });

function changed(id: string, change: (recipe: Recipe) => void): Recipe {
  const recipe = structuredClone({ ...good, id, title: id });
  change(recipe);
  return recipe;
}

const pulls = (count: number): Recipe['pulls'] => Array.from({ length: count }, (_, i) => ({ ...good.pulls[i % 3]!, id: `p${i}` }));

/** At the end of what a file may hold. */
const EXTREME: Recipe[] = [
  changed('Two hundred pulls', (recipe) => {
    recipe.pulls = pulls(200);
  }),
  changed('A strip of paper', (recipe) => {
    Object.assign(recipe.paper, { widthMm: 5000, heightMm: 200, printable: { xMm: 0, yMm: 0, widthMm: 5000, heightMm: 200 } });
  }),
  changed('A speck of paper', (recipe) => {
    Object.assign(recipe.paper, { widthMm: 0.001, heightMm: 0.001, printable: { xMm: 0, yMm: 0, widthMm: 0.001, heightMm: 0.001 } });
  }),
  changed('Black paper, opaque inks', (recipe) => {
    recipe.paper.reflectance = Array.from({ length: 36 }, (_, i) => (i === 0 ? 0.001 : 0));
    for (const ink of recipe.inks) Object.assign(ink, { kx: ink.kx.map(() => 1e6), sx: ink.sx.map(() => 1e6) });
  }),
  changed('Inks of nothing', (recipe) => {
    for (const ink of recipe.inks) Object.assign(ink, { kx: ink.kx.map(() => 0), sx: ink.sx.map(() => 0), dryMinutes: 0 });
  }),
  changed('Far out and large', (recipe) => {
    recipe.screens[0]!.placed = [{ shape: recipe.shapes[0]!.id, xMm: 10_000, yMm: -10_000, turnDeg: 36_000, scale: 100 }];
    recipe.pulls[1] = { ...recipe.pulls[1]!, dxMm: 2000, dyMm: -2000, turnDeg: 360, strokes: 20 };
  }),
  changed('A long name', (recipe) => {
    recipe.title = 'long '.repeat(200);
    recipe.note = 'note '.repeat(4000);
  }),
];

/** Such as no file may hold. */
const UNTRUE: unknown[] = [
  null,
  'junk',
  { ...good, id: 'no-pulls', title: 'No pulls', pulls: [] },
  { ...good, id: 'endless', title: 'Endless', paper: { ...good.paper, widthMm: 1e308 } },
  { ...good, id: 'thread', title: 'A thread of paper', paper: { ...good.paper, widthMm: 5000, heightMm: 1 } },
  { ...good, id: 'no-ink', title: 'No such ink', pulls: [{ ...good.pulls[0]!, ink: 'gone' }] },
  { ...good, id: 'good', title: 'The same id twice' },
];

async function isBlank(page: Page): Promise<boolean> {
  const room = page.locator('main').first();
  const box = await room.boundingBox();
  return box === null || box.height < 200 || (await room.getByRole('button').count()) < 2;
}

describe('poisoned recipes', () => {
  it('should make no room blank, and take none of the good ones with them', async () => {
    const { page, errors } = await openPage(studio);
    await page.goto(`${studio.url}#chest`);
    await expect.poll(async () => (await records(page, 'pullstack', 'sections'))['format']).toBe('pullstack-project');
    await bare(page, studio);
    const last = recipeOf(project.bench, project.drawer, { id: 'last', title: 'The last good one' });
    // Of two with one id the first stays.
    const recipes = [...UNTRUE.slice(0, 3), good, ...EXTREME, last, ...UNTRUE.slice(3)];
    const visit = [good, ...EXTREME, last].map(({ id }) => ({ recipe: id, sheets: 2 }));
    for (const [key, value] of Object.entries({ recipes, visit })) {
      await putRecord(page, { database: 'pullstack', store: 'sections', key, value });
    }
    await page.goto(`${studio.url}#chest`);
    await page.getByText(/could not be read and (was|were) put aside, not deleted/).waitFor();
    await expect.poll(() => page.getByText('The last good one').count(), { timeout: 30_000 }).toBeGreaterThan(0);
    expect(await page.getByText('A good one').count()).toBeGreaterThan(0);
    for (const { label } of [...ROOMS, ROOMS[0]!]) {
      await enter(page, label);
      await expect.poll(() => isBlank(page), { message: label, timeout: 30_000 }).toBe(false);
    }
    const kept = (await records(page, 'pullstack', 'sections'))['recipes'] as Recipe[];
    expect(kept.map(({ id }) => id)).toEqual(expect.arrayContaining(['good', 'last', ...EXTREME.map(({ id }) => id)]));
    expect(errors).toEqual([]);
    await page.context().close();
  }, 240_000);
});
