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

    // The same two from afar, and the films of the one lifted apart.
    await page.getByRole('button', { name: 'Films apart, two prints, from afar…' }).click();
    const look = page.getByRole('dialog', { name: 'Look at the print' });
    const films = look.getByRole('list', { name: 'Films, last down first' }).getByRole('button');
    expect(await films.count()).toBe(12);
    await films.last().click();
    expect(await look.locator('.film.chosen').count()).toBe(1);
    await look.getByRole('button', { name: 'Two prints', exact: true }).click();
    await look.getByText('Right of it: As it was opened.', { exact: false }).waitFor();
    await look.getByRole('button', { name: 'From afar', exact: true }).click();
    const print = look.getByRole('img', { name: /as it looks from 2 m$/ });
    const width = async (): Promise<number> => (await print.boundingBox())!.width;
    await expect.poll(() => print.evaluate((canvas: HTMLCanvasElement) => canvas.width)).toBeGreaterThan(400);
    // 560 mm at 96 px an inch, from 2 m instead of 0.6 m.
    expect(await width()).toBeCloseTo((560 * 96 * 0.6) / (25.4 * 2), 0);
    await look.getByRole('button', { name: '8 m', exact: true }).click();
    await look.getByRole('img', { name: /as it looks from 8 m$/ }).waitFor();
    expect(errors).toEqual([]);
    await context.close();
  });
});
