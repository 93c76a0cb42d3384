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

/** Seed and picture keys of the prints that hang, in their order. */
function hung(page: Page): Promise<{ seed: string; keys: string[] }> {
  return page.locator('wall-view').evaluate((view) => {
    const { variants, holder } = view as unknown as {
      variants: { key: string; seed: string }[];
      holder: { scene: { hanging: { sequence: number[] } } };
    };
    return { seed: variants[0]!.seed, keys: holder.scene.hanging.sequence.map((at) => variants[at]?.key ?? '') };
  });
}

describe('prints that stay and prints from prints', () => {
  it('should hang a pinned print first on the next wall and after a reload, and cross two selected ones', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    await enter(page, 'Wall');
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    const surface = page.getByRole('application', { name: 'Wall of prints' });
    await surface.focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('h');
    await expect.poll(() => page.getByRole('button', { name: 'Pin', exact: true }).getAttribute('aria-pressed')).toBe('true');
    // It is the fourth that was found, or the third; the wall hangs anew a little after.
    const found = await page
      .locator('wall-view')
      .evaluate((view) => (view as unknown as { variants: { key: string }[] }).variants.map(({ key }) => key));
    await expect.poll(async () => found.indexOf((await hung(page)).keys[0]!), { timeout: 30_000 }).toBeGreaterThan(1);
    const pinned = (await hung(page)).keys[0]!;

    await page.getByRole('button', { name: 'Another wall' }).click();
    await expect
      .poll(async () => ({ ...(await hung(page)), first: (await hung(page)).keys[0] }), { timeout: 60_000 })
      .toMatchObject({ seed: 'slack tide 2', first: pinned });
    const next = await hung(page);
    expect(next.keys).toHaveLength(FEW + 1);
    await page.reload();
    await enter(page, 'Wall');
    await expect.poll(() => hung(page).catch(() => null), { timeout: 60_000 }).toEqual(next);

    // The first selected comes first, and what is kept says where it comes from.
    await surface.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press(' ');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press(' ');
    await page.getByRole('button', { name: 'Crossed', exact: true }).click();
    const told = wall.getByText(/^No\. \d+ of wall “slack tide” crossed with no\. 1 of wall “slack tide 2”\.$/u);
    await expect.poll(() => told.count(), { timeout: 30_000 }).toBe(1);
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    // Pinned prints take their place at the beginning when the wall stands; then the last one is a cross.
    await expect.poll(async () => (await hung(page)).keys[0], { timeout: 30_000 }).toBe(pinned);
    await surface.focus();
    await page.keyboard.press('End');
    await page.keyboard.press('k');
    await enter(page, 'Chest');
    await expect
      .poll(() => page.getByText(/^A cross of no\. \d+ of wall “slack tide” and no\. 1 of wall “slack tide 2”\.$/u).count(), {
        timeout: 30_000,
      })
      .toBe(1);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('should name three conditions that clash, and hang prints again when one is dropped', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    await enter(page, 'Wall');
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.getByRole('checkbox', { name: 'Inks', exact: true }).uncheck();
    for (const field of ['Leave out up to', 'Bring in up to']) {
      await expect
        .poll(async () => {
          await page.getByLabel(field).fill('0');
          await page.getByLabel(field).press('Enter');
          await page.waitForTimeout(100);
          return page.getByLabel(field).inputValue();
        })
        .toBe('0');
    }
    // Inks clash for certain only where they lie as drawn.
    await page.getByRole('button', { name: /^As drawn/u }).click();
    for (const way of [/^Quarter turns/u, /^Pulled again/u]) await page.getByRole('button', { name: way }).click();
    await page.getByText('Which ink where').click();
    for (const [upper, lower] of [
      ['Tar', 'Foam'],
      ['Foam', 'Rust'],
      ['Rust', 'Tar'],
      ['Weed', 'Dusk'],
    ]) {
      await page.getByLabel('Never over: one ink').selectOption(upper!);
      await page.getByLabel('Never over: other ink').selectOption(lower!);
    }
    const clash = page.getByRole('list', { name: 'Conditions that clash' }).getByRole('listitem');
    await expect.poll(() => clash.count(), { timeout: 60_000 }).toBe(3);
    expect(await page.getByText('No print was found that keeps these three together. Drop one of them, or let more change.').count()).toBe(
      1,
    );
    await page.getByRole('button', { name: 'Drop: Foam never lies over Rust' }).click();
    await expect.poll(async () => Number(await wall.getAttribute('data-found')), { timeout: 60_000 }).toBe(FEW);
    expect(await clash.count()).toBe(0);
    expect(errors).toEqual([]);
    await context.close();
  });
});
