import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ALL, openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio(ALL);
});

afterAll(async () => {
  await studio?.close();
});

/** Presses 'Contact sheet' as soon as prints hang, from inside the page: from out here all of them may hang before a click arrives. */
function askAtTheFirstPrints(wall: HTMLElement): Promise<void> {
  return new Promise((resolve) => {
    const look = (): void => {
      const buttons =
        wall.shadowRoot?.querySelector('wall-view')?.shadowRoot?.querySelector('wall-line')?.shadowRoot?.querySelectorAll('button') ?? [];
      const button = [...buttons].find((one) => one.textContent?.trim() === 'Contact sheet');
      if (Number(wall.dataset['found'] ?? 0) === 0 || button === undefined) return void requestAnimationFrame(look);
      button.click();
      resolve();
    };
    look();
  });
}

describe('what was begun while prints are found', () => {
  it('should be a contact sheet of all prints that hang when it is saved', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    const wall = page.locator('wall-room');
    await wall.evaluate(askAtTheFirstPrints);
    const dialog = page.getByRole('dialog', { name: 'Contact sheet' });
    const told = async (): Promise<number> =>
      Number(/([\d,]+) prints that hang/u.exec((await dialog.textContent())!)![1]!.replaceAll(',', ''));
    const first = await told();
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    const all = Number(await wall.getAttribute('data-found'));
    expect(first).toBeLessThan(all);
    await expect.poll(told).toBe(all);
    expect(errors).toEqual([]);
    await context.close();
  });
});
