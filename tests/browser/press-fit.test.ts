import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, openPage, openStudio, type Studio } from './harness.ts';
import { openProject, orderFound, smallRecipeProject } from './visit/small-visit.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** Keeps the first prints of the wall and says how many sheets of each. */
async function choose(page: Page, sheets: readonly number[]): Promise<void> {
  await page.goto(studio.url);
  await enter(page, 'Wall');
  const wall = page.locator('wall-room');
  await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
  await page.getByRole('application', { name: /wall/i }).focus();
  for (const _ of sheets) {
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('k');
  }
  await enter(page, 'Press');
  const counts = page.getByRole('spinbutton', { name: /^Sheets of/ });
  await expect.poll(() => counts.count(), { timeout: 15_000 }).toBe(sheets.length);
  for (const [at, count] of sheets.entries()) {
    await counts.nth(at).fill(String(count));
    await counts.nth(at).press('Tab');
  }
}

async function figure(page: Page, label: string, value: string): Promise<void> {
  const field = page.getByLabel(label).first();
  await field.fill(value);
  await field.press('Tab');
}

async function plan(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Find the pull order' }).click();
  await orderFound(page);
}

describe('a visit that does not fit', () => {
  it('should be made to fit by a combination, as one step to undo, and be shared between two beds', async () => {
    const { page, context, errors } = await openPage(studio);
    await choose(page, [3, 3, 4]);
    const extras = page.getByRole('spinbutton', { name: /^(Overs|Proofs) of/ });
    expect(await extras.count()).toBe(6);
    for (let at = 0; at < 6; at++) {
      await extras.nth(at).fill('0');
      await extras.nth(at).press('Tab');
    }
    await page.getByText('Studio figures').click();
    await figure(page, 'Days of the visit', '1');
    await plan(page);
    const late = page.getByText(/The pull order needs \d+ days of 7 h and the visit has 1/);
    expect(await late.count()).toBeGreaterThan(0);

    // The page stays alive while it is looked for.
    const combination = page.getByRole('button', { name: /(and|,) (leave out|print \d+ sheets? fewer).*: do it$/i });
    await expect.poll(() => combination.count(), { timeout: 90_000 }).toBeGreaterThan(0);
    const said = (await page.locator('press-fit-choices').getByRole('listitem').allInnerTexts()).join('\n');
    expect(said).toMatch(/saves \d+ set-ups? and/);
    expect(said).toMatch(/then it fits/i);
    await combination.first().click();
    await expect.poll(() => late.count()).toBe(0);
    expect(await page.getByText('Out of date').count()).toBe(0);
    expect(await page.getByText(/^It ends on day 1 at \d+:\d\d, washed up/).count()).toBe(1);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => page.getByText('10 sheets in all').count()).toBe(1);
    await expect.poll(() => page.getByText('Out of date').count()).toBeGreaterThan(0);

    await figure(page, 'Press beds, each with a printer', '2');
    await plan(page);
    const bars = page.locator('press-day-bars').getByRole('group');
    await expect
      .poll(() => bars.evaluateAll((groups) => groups.map((group) => group.getAttribute('aria-label')).join(';')))
      .toMatch(/bed 1: set-ups \d.*bed 2: set-ups \d/);
    const ends = await page.getByText(/^It ends on day/).innerText();
    expect(ends).toMatch(/no order of these pulls (can end before|ends sooner)/);
    // Two printers need less than the three days or so that one needs.
    expect(Number(/day (\d+)/.exec(ends)![1])).toBeLessThanOrEqual(2);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should say in a sentence what cannot be printed', async () => {
    const { page, context, errors } = await openPage(studio);
    await openProject(page, studio, smallRecipeProject(), 'press');
    const count = page.getByRole('spinbutton', { name: /^Sheets of/ });
    await count.fill('10000');
    await count.press('Tab');
    await expect.poll(() => page.getByText('Give a whole number from 0 to 500.').count()).toBe(1);
    await count.fill('8');
    await count.press('Tab');
    await page.getByText('Studio figures').click();
    await figure(page, 'Press work a day', '0');
    await expect.poll(() => page.getByRole('alert').filter({ hasText: 'Give 0.5 to 24.' }).count()).toBe(1);
    await figure(page, 'Rack places, 0 for plenty', '2');
    await plan(page);
    await expect.poll(() => page.getByText(/The racks hold 2 wet sheets, too few for set-up/).count()).toBeGreaterThan(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
