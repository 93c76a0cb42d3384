import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ALL, enter, openPage, openStudio, type Studio, watch } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio(ALL);
});

afterAll(async () => {
  await studio?.close();
});

describe('the artist', () => {
  it('should find prints, hold a pull, keep two, reload, and have them still', async () => {
    const { page, context, errors } = await openPage(studio, undefined, { helpers: true });
    await page.goto(studio.url);
    await enter(page, 'Wall');
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).toBe('done');
    expect(Number(await wall.getAttribute('data-found'))).toBe(ALL);

    // A pull must stay: it is first in every print from then on.
    const hold = page.getByRole('combobox', { name: /^What must stay/ }).first();
    await hold.selectOption({ label: 'stays first' });
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).not.toBe('done');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).toBe('done');

    // Keep two by keyboard: the skip link leads past all settings to the prints.
    const prints = page.getByRole('application', { name: /wall/i });
    await page.getByRole('link', { name: 'Skip to the Wall' }).press('Enter');
    expect(await prints.evaluate((element) => element.matches(':focus'))).toBe(true);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('k');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('k');

    // Whoever opens a print by a key stands in the room that opened, not nowhere.
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('main').evaluate((element) => element.matches(':focus'))).toBe(true);

    await enter(page, 'Chest');
    const recipes = page.getByRole('button', { name: /Open on Bench/ });
    await expect.poll(() => recipes.count()).toBe(2);

    await page.reload();
    await enter(page, 'Chest');
    await expect.poll(() => recipes.count()).toBe(2);

    // A tab that dies without a word loses nothing either.
    await page.close();
    const again = await context.newPage();
    watch(again, studio, errors);
    await again.goto(`${studio.url}#chest`);
    await expect.poll(() => again.getByRole('button', { name: /Open on Bench/ }).count()).toBe(2);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should see the order graph when it is opened below the picture', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(`${studio.url}#bench`);
    await page.getByText('Order graph').click();
    const graph = page.locator('ps-order-graph');
    await expect
      .poll(
        async () => {
          const box = await graph.boundingBox();
          return box !== null && box.height > 50 && box.y + 100 < 900;
        },
        { timeout: 15_000 },
      )
      .toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });
});
