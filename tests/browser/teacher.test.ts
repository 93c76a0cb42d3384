import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('the teacher', () => {
  it('should show the orders of four pulls, and merge pictures by moving a shape away', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#lesson`);
    const chosen = page.getByRole('list', { name: /Pulls of the stack/ }).getByRole('checkbox', { checked: true });
    await expect.poll(() => chosen.count()).toBe(4);
    const headline = page.getByRole('heading', { name: /24 orders, \d+ different prints?/ });
    await expect.poll(() => headline.count(), { timeout: 30_000 }).toBe(1);
    const pictures = async (): Promise<number> => Number(/, (\d+) different/.exec((await headline.textContent())!)![1]);
    const before = await pictures();
    expect(before).toBeGreaterThan(4);

    // Far to the right, the shape meets no other any more.
    const shape = page.getByRole('group', { name: 'Shapes to move' }).getByRole('button').first();
    await shape.focus();
    const right = page.getByRole('spinbutton', { name: /right/i }).first();
    await right.fill('500');
    await right.press('Enter');
    await expect.poll(pictures, { timeout: 30_000 }).toBeLessThan(before);
    await page.getByRole('button', { name: 'Put back' }).click();
    await expect.poll(pictures, { timeout: 30_000 }).toBe(before);

    // One pull fewer: three pulls have six orders.
    await chosen.first().uncheck();
    await expect.poll(() => page.getByRole('heading', { name: /6 orders, \d different prints?/ }).count(), { timeout: 30_000 }).toBe(1);
    expect(errors).toEqual([]);
    await context.close();
  });
});
