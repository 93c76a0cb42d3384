import type { CDPSession, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { enter, itInChromium, openStudio, type Studio, watch } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** A phone: touch goes in by the browser's own input, so that it scrolls and takes pointers away as on glass. */
async function openPhone() {
  const context = await studio.browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  const page = await context.newPage();
  const errors: string[] = [];
  watch(page, studio, errors);
  await page.goto(studio.url);
  return { page, context, errors, touch: await context.newCDPSession(page) };
}

async function swipe(touch: CDPSession, from: { x: number; y: number }, by: { x: number; y: number }): Promise<void> {
  const at = (share: number) => [{ x: from.x + by.x * share, y: from.y + by.y * share, id: 1 }];
  await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (let step = 1; step <= 12; step++) {
    await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / 12) });
    await new Promise((resolve) => void setTimeout(resolve, 16));
  }
  await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

/** A point of an SVG part that a finger would hit, in the window. */
async function pointOn(part: Locator): Promise<{ x: number; y: number }> {
  await part.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  return part.evaluate((element) => {
    const box = element.getBoundingClientRect();
    const root = element.getRootNode() as ShadowRoot;
    for (let i = 1; i < 400; i++) {
      const x = box.left + box.width * ((i * 0.618) % 1);
      const y = box.top + box.height * (i / 400);
      const hit = root.elementFromPoint(x, y);
      if (hit !== null && element.contains(hit)) return { x, y };
    }
    throw new Error('no point of the shape can be hit');
  });
}

const numberIn = (page: Page, name: string | RegExp) => async (): Promise<number> =>
  Number((await page.getByRole('spinbutton', { name, exact: true }).inputValue()).replace('−', '-'));

describe('by finger', () => {
  itInChromium('should move a shape in the Drawer as far as the finger goes, and put it back when the drag is broken off', async () => {
    const { page, context, errors, touch } = await openPhone();
    await enter(page, 'Drawer');
    await page.getByRole('button', { name: /^Screen \d+ Fenders\b/ }).click();
    const part = page.locator('sheet-preview g[role=button]').first();
    await part.waitFor();
    const left = numberIn(page, 'From left, mm');
    const top = numberIn(page, 'From top, mm');
    const before = [await left(), await top()];
    const pxPerMm = await page
      .locator('sheet-preview svg')
      .evaluate((svg) => svg.getBoundingClientRect().width / (svg as SVGSVGElement).viewBox.baseVal.width);
    await swipe(touch, await pointOn(part), { x: 20, y: 60 });
    expect(Math.abs((await left()) - before[0]! - 20 / pxPerMm)).toBeLessThan(3);
    expect(Math.abs((await top()) - before[1]! - 60 / pxPerMm)).toBeLessThan(3);

    // What a browser does that takes the pointer away: a cancel at 0, 0.
    const moved = [await left(), await top()];
    const at = await pointOn(part);
    await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ ...at, id: 1 }] });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x: at.x - 40, y: at.y - 40, id: 1 }] });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchCancel', touchPoints: [] });
    expect([await left(), await top()]).toEqual(moved);

    // The same among all screens on the whole sheet.
    await page.getByRole('button', { name: '← All screens' }).click();
    await page.getByRole('button', { name: 'Whole sheet…' }).click();
    const fender = page.locator('compose-sheet g[aria-label*=" Fenders;"] path').first();
    const lies = (): Promise<string | null> => fender.getAttribute('transform');
    const rest = await lies();
    await swipe(touch, await pointOn(fender), { x: -30, y: 20 });
    await expect.poll(lies).not.toBe(rest);
    const there = await lies();
    const hold = await pointOn(page.locator('compose-sheet path.over').first());
    await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ ...hold, id: 1 }] });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x: hold.x + 40, y: hold.y + 40, id: 1 }] });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchCancel', touchPoints: [] });
    await expect.poll(lies).toBe(there);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(lies).toBe(rest);
    expect(errors).toEqual([]);
    await context.close();
  });

  itInChromium('should move a chosen shape in the Lesson up and down while the page stays', async () => {
    const { page, context, errors, touch } = await openPhone();
    await enter(page, 'Lesson');
    await page.getByRole('heading', { name: /24 orders, \d+ different/ }).waitFor({ timeout: 30_000 });
    const part = page.locator('ps-lesson-sheet path.hit.chosen');
    const down = numberIn(page, 'Down, mm');
    const before = await down();
    const at = await pointOn(part);
    const scrolled = () =>
      page.evaluate(() => [...document.querySelectorAll('*')].reduce((sum, each) => sum + each.scrollTop, 0) + scrollY);
    const where = await scrolled();
    const mmPerPx = await page
      .locator('ps-lesson-sheet svg')
      .evaluate((svg) => (svg as SVGSVGElement).viewBox.baseVal.width / svg.getBoundingClientRect().width);
    await swipe(touch, at, { x: 0, y: -90 });
    await expect.poll(async () => Math.abs((await down()) - before + 90 * mmPerPx)).toBeLessThan(3);
    expect(await scrolled()).toBe(where);

    // A finger on a shape that is not chosen scrolls the page and moves nothing.
    const other = page.locator('ps-lesson-sheet path.hit:not(.chosen)').first();
    const name = (await other.getAttribute('aria-label'))!;
    await swipe(touch, await pointOn(other), { x: 0, y: -120 });
    await page.getByRole('button', { name, exact: true }).waitFor({ state: 'attached' });
    expect(errors).toEqual([]);
    await context.close();
  });
});
