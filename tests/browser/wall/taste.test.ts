import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('a wall as one chooses', () => {
  it('should be taught by answers, pins and selections, tell what it rests on, and forget', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    await enter(page, 'Wall');
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    const sequence = (): Promise<string> =>
      page.locator('wall-view').evaluate((view) => {
        const { holder } = view as unknown as { holder: { scene: { hanging: { sequence: number[] } } } };
        return holder.scene.hanging.sequence.join();
      });
    const found = await sequence();
    await page.getByLabel('Arrange the prints').selectOption({ label: 'as I choose' });
    const told = page.locator('wall-taste').getByRole('status').first();
    await expect.poll(() => told.textContent()).toMatch(/^Nothing is chosen yet\./u);
    await page.getByRole('button', { name: 'Learn from selected' }).click();
    await page.getByText('Nothing is chosen; select, pin or keep a print that you like.').waitFor();

    await page.getByRole('button', { name: 'This one or that one?' }).click();
    const asking = page.getByRole('dialog', { name: 'This one or that one?' });
    const ready = asking.locator('ul[aria-busy="false"]').getByRole('button');
    for (let answer = 1; answer <= 3; answer++) {
      await expect.poll(() => ready.count()).toBe(2);
      await page.keyboard.press(answer === 2 ? 'ArrowRight' : 'ArrowLeft');
      await asking.getByText(new RegExp(`^${answer} answers? so far\\.$`, 'u')).waitFor();
    }
    await expect.poll(() => ready.count()).toBe(2);
    await asking.getByRole('button', { name: 'Take back' }).click();
    await asking.getByText('2 answers so far.').waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => told.textContent()).toBe('2 choices so far: too little to tell what you choose by.');
    await expect.poll(sequence).not.toBe(found);

    // A pin teaches in the same step; a selection when it is asked to.
    const surface = page.getByRole('application', { name: 'Wall of prints' });
    await surface.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('h');
    await expect.poll(() => told.textContent()).toMatch(/^3 choices so far/u);
    await surface.focus();
    await page.keyboard.press('End');
    await page.keyboard.press(' ');
    // By a quick hand, whose second click is to meet neither another button nor a complaint.
    await page.getByRole('button', { name: 'Learn from 1 selected' }).dblclick();
    await expect.poll(() => told.textContent()).toMatch(/^4 choices so far/u);
    expect(await page.getByText('The newest first;').isVisible()).toBe(false);
    expect(await page.getByText('Nothing is chosen; select').isVisible()).toBe(false);

    await page.getByRole('button', { name: 'What was taught' }).click();
    const list = page.getByRole('dialog', { name: 'What was taught' });
    await list.getByRole('button', { name: 'Forget this' }).nth(3).click();
    await expect.poll(() => list.getByRole('listitem').count()).toBe(3);
    await page.keyboard.press('Escape');
    await expect.poll(() => told.textContent()).toMatch(/^3 choices so far/u);
    await page.getByRole('button', { name: 'Undo: forget what was chosen' }).click();
    await expect.poll(() => told.textContent()).toMatch(/^4 choices so far/u);

    // Further prints are found from five choices on, and the wall that they came from hangs again.
    await page.getByRole('button', { name: 'More as I choose' }).click();
    await page.getByText('there are 4 so far').waitFor();
    await page.getByRole('button', { name: 'This one or that one?' }).click();
    await expect.poll(() => ready.count()).toBe(2);
    await page.keyboard.press('ArrowLeft');
    await asking.getByText('1 answer so far.').waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => told.textContent()).toMatch(/^5 choices so far/u);
    await page.getByRole('button', { name: 'More as I choose' }).click();
    await page.getByText('Prints found by what you choose, from 12 prints of the wall').waitFor();
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    expect(await wall.getAttribute('data-found')).toBe('60');
    await page.getByRole('button', { name: 'Back to all' }).click();
    await expect.poll(() => wall.getAttribute('data-found')).toBe('40');

    // It is the project's, and comes back with the page.
    const arranged = await sequence();
    await page.getByRole('slider', { name: 'From what I choose to what I never chose' }).fill('100');
    await expect.poll(sequence).not.toBe(arranged);
    const never = await sequence();
    await page.reload();
    await enter(page, 'Wall');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await expect.poll(() => told.textContent()).toMatch(/^5 choices so far/u);
    await expect.poll(sequence).toBe(never);
    await page.getByRole('button', { name: 'What was taught' }).click();
    await list.getByRole('button', { name: 'Forget all 5 choices' }).click();
    await list.getByText('Nothing yet.').waitFor();
    // The button that was pressed is gone; whoever goes by keys is still in the list, and then back at what opened it.
    const focused = (within: Locator, name: string): Promise<boolean> =>
      within.getByRole('button', { name }).evaluate((button) => button.matches(':focus'));
    expect(await focused(list, 'Close')).toBe(true);
    await page.keyboard.press('Escape');
    await expect.poll(() => focused(page.locator('wall-taste'), 'What was taught')).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  }, 240_000);
});
