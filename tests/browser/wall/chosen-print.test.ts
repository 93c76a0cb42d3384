import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

interface Scene {
  focus: number;
  labels: { pinned: ReadonlySet<number> };
  frameOf(index: number): { left: number; top: number; width: number; height: number };
}

/** Where the print in focus hangs on the page, whether it is pinned there, and where the panel about it lies. */
function places(page: Page) {
  return page.locator('wall-view').evaluate((view) => {
    const { holder, surface } = view as unknown as { holder: { scene: Scene }; surface: Element };
    const wall = surface.getBoundingClientRect();
    const { focus, labels } = holder.scene;
    const { left, top, width, height } = holder.scene.frameOf(focus);
    const rail = view.shadowRoot!.querySelector('wall-rail')!.shadowRoot!;
    const panel = rail
      .querySelector('wall-actions')!
      .shadowRoot!.querySelector('wall-print-panel')
      ?.shadowRoot?.querySelector('section')
      ?.getBoundingClientRect();
    const [x, y] = [wall.left + left, wall.top + top];
    const apart = panel === undefined || x + width <= panel.left || x >= panel.right || y + height <= panel.top;
    const inView = x >= wall.left && y >= wall.top && x + width <= wall.right && y + height <= wall.bottom;
    return { pinned: labels.pinned.has(focus), open: panel !== undefined, seen: apart && inView };
  });
}

describe('a chosen print', () => {
  it.each([
    [1440, 900],
    [390, 844],
  ])('should stay in view beside all that is said of it, in German at %i × %i', async (width, height) => {
    const { page, context, errors } = await openPage(studio, { width, height });
    await page.addInitScript(() => localStorage.setItem('pullstack.language', 'de'));
    await page.goto(studio.url);
    const room = page.locator('wall-room');
    await expect.poll(() => room.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
    await page.getByRole('application', { name: 'Wand voller Drucke' }).focus();
    await page.keyboard.press('Home');
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowDown');
    const why = page.locator('wall-print-why p');
    const hidden = (): Promise<number> => why.evaluate((line) => line.scrollHeight - line.clientHeight);
    if (width < 1000) {
      // Two lines there, and all of them at a tap.
      expect(await why.evaluate((line) => line.clientHeight / parseFloat(getComputedStyle(line).lineHeight))).toBeCloseTo(2, 0);
      await page.getByRole('button', { name: 'Alles, was ihn abhebt', expanded: false }).click();
    }
    await expect.poll(hidden).toBe(0);
    // The buttons below it take as few lines as in English.
    const lines = width < 1000 ? '.actions button, .toggle' : 'button';
    const tops = await page
      .locator('wall-rail')
      .locator(lines)
      .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().top));
    expect(new Set(tops).size).toBe(width < 1000 ? 2 : 1);
    await page.getByRole('button', { name: 'Mehr davon' }).click();
    await expect.poll(() => places(page)).toEqual({ pinned: false, open: true, seen: true });
    // Along the wall the panel stays open, and the next print is seen as well.
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => places(page)).toEqual({ pinned: false, open: true, seen: true });
    await page.keyboard.press('h');
    await expect.poll(() => places(page), { timeout: 30_000 }).toMatchObject({ pinned: true });
    expect(errors).toEqual([]);
    await context.close();
  });
});
