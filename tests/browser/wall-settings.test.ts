import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, FEW, openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

interface Hung {
  pulls: { id: string; ink: string; screen: string; strokes: number }[];
}

async function hung(page: Page): Promise<Hung[]> {
  return page.locator('wall-view').evaluate((view) => (view as unknown as { variants: Hung[] }).variants.map(({ pulls }) => ({ pulls })));
}

async function done(page: Page): Promise<void> {
  const wall = page.locator('wall-room');
  // A change is taken up after a short rest.
  await page.waitForTimeout(900);
  await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).toBe('done');
}

describe('what may change and what must stay', () => {
  it('should count, limit, contradict, and be there after a reload', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    await enter(page, 'Wall');
    const wall = page.locator('wall-room');
    await done(page);
    await expect
      .poll(() => page.locator('wall-order-count').getByRole('status').textContent())
      .toMatch(/^[\d,]+ orders of these 12 pulls may print differently\./u);

    await page.getByText('Which ink where').click();
    await page.getByLabel('In one print at most').fill('2');
    await page.getByLabel('In one print at most').press('Enter');
    await page.getByLabel('Never over: one ink').selectOption('Tar');
    await page.getByLabel('Never over: other ink').selectOption('Foam');
    await expect.poll(() => page.getByText('Tar never over Foam').count()).toBe(1);
    await done(page);
    const few = await hung(page);
    expect(few.length).toBeGreaterThan(FEW / 4);
    for (const { pulls } of few) expect(new Set(pulls.map(({ ink }) => ink)).size).toBeLessThanOrEqual(2);

    // A veil goes last, so nothing else may stay there: told at once, and the wall stays.
    await page.getByRole('combobox', { name: /^What must stay of pull 3/u }).selectOption({ label: 'stays last' });
    await page.getByText('Offsets, strokes, a veil').click();
    await page.getByLabel('A veil may go over all, last down').check();
    await expect.poll(() => page.getByText('A veil goes down last, but pull 3 stays last; take one of the two away.').count()).toBe(1);
    // What was being found when it was told goes on to its end.
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).toBe('held');
    // The sentence may stand far down the settings: it can be brought into view.
    await page.locator('wall-room .settings').evaluate((settings) => settings.scrollTo(0, settings.scrollHeight));
    await page.getByRole('button', { name: 'Show where' }).click();
    await expect
      .poll(async () => {
        const told = await page.getByText('A veil goes down last, but pull 3 stays last; take one of the two away.').boundingBox();
        return told !== null && told.y > 0 && told.y + told.height < 900;
      })
      .toBe(true);
    expect((await hung(page)).length).toBeGreaterThan(FEW / 4);
    await page.getByRole('combobox', { name: /^What must stay of pull 3/u }).selectOption({ label: 'may move' });
    await done(page);
    const veiled = (await hung(page)).filter(({ pulls }) => pulls.some(({ id }) => id.startsWith('veil-')));
    expect(veiled.length).toBeGreaterThan(1);
    for (const { pulls } of veiled) expect(pulls.at(-1)!.id).toMatch(/^veil-/u);

    const before = await hung(page);
    await page.reload();
    await enter(page, 'Wall');
    await done(page);
    expect(await hung(page)).toEqual(before);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should stay within a phone, unfolded', async () => {
    const { page, context, errors } = await openPage(studio, { width: 390, height: 844 });
    await page.goto(studio.url);
    await enter(page, 'Wall');
    await page.getByRole('button', { name: 'Settings' }).click();
    for (const fold of ['Which ink where', 'Offsets, strokes, a veil', 'Which screens', 'At most'])
      await page.locator('summary').filter({ hasText: fold }).click();
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
    const wide = await page.locator('wall-settings').evaluate((settings) => settings.scrollWidth <= settings.clientWidth);
    expect(wide).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });
});
