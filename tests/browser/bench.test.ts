import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('the Bench', () => {
  it('should build up for as long as B is held, and leave keys alone where they are typed', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#bench`);
    const readout = page.locator('bench-room .readout');
    await expect.poll(() => readout.textContent()).toMatch(/^Sheet \d+ × \d+ mm$/);
    await page.keyboard.down('b');
    await expect.poll(() => readout.textContent()).toMatch(/^(Bare paper|After pull \d+ of \d+)$/);
    await page.keyboard.up('b');
    await expect.poll(() => readout.textContent()).toMatch(/^Sheet/);
    await page.getByRole('combobox', { name: 'Compare with' }).focus();
    await page.keyboard.down('b');
    await page.waitForTimeout(300);
    expect(await readout.textContent()).toMatch(/^Sheet/);
    await page.keyboard.up('b');
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should show the stack as it was opened beside it, and choose a pull in the order graph', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#bench`);
    await expect.poll(() => page.locator('bench-room figure').count()).toBe(1);
    await page.getByRole('combobox', { name: 'Compare with' }).selectOption({ label: 'the stack as it was opened' });
    await expect.poll(() => page.locator('bench-room figcaption').allTextContents()).toEqual(['On the Bench', 'As it was opened']);
    await page.getByText('Order graph').click();
    await page.locator('ps-order-graph .dot').nth(1).click();
    await page
      .getByRole('region', { name: 'Selected pull' })
      .getByText(/Pull 2\b/)
      .first()
      .waitFor();
    expect(await page.locator('ps-order-graph .dot.selected').count()).toBe(1);
    expect(errors).toEqual([]);
    await context.close();
  });
});
