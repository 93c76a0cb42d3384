import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('what was begun while prints are found', () => {
  it('should be a contact sheet of all prints that hang when it is saved', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    const wall = page.locator('wall-room');
    await expect.poll(async () => Number(await wall.getAttribute('data-found')), { timeout: 30_000 }).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Contact sheet' }).click();
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
