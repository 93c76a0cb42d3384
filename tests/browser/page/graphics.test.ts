import { createCanvas, loadImage } from '@napi-rs/canvas';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { records } from '../databases.ts';
import { openPage, openStudio, type Studio } from '../harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

const found = (page: Page) => expect.poll(() => page.locator('wall-room').getAttribute('data-state'), { timeout: 60_000 }).toBe('done');

/** Waits until the graphics card draws, which comes after the first prints, on few cores after all. */
const onCard = (page: Page) =>
  expect
    .poll(
      () =>
        page
          .locator('wall-surface .surface canvas')
          .first()
          .evaluate((canvas: HTMLCanvasElement) => canvas.getContext('webgl2') !== null),
      { timeout: 30_000 },
    )
    .toBe(true);

/** The pixels of the wall as it is seen, small enough that edges do not count. */
async function seen(page: Page): Promise<{ data: Uint8ClampedArray; colours: number }> {
  // Two frames: the wall draws with the next one.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  const image = await loadImage(await page.locator('wall-surface .surface').screenshot());
  const canvas = createCanvas(160, 100);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0, 160, 100);
  const { data } = context.getImageData(0, 0, 160, 100);
  const words = new Uint32Array(data.buffer.slice(0));
  return { data, colours: new Set(words).size };
}

function meanDifference(a: Uint8ClampedArray, b: Uint8ClampedArray): number {
  return a.reduce((sum, code, i) => sum + Math.abs(code - b[i]!), 0) / a.length;
}

/** A browser that gives its pages no WebGL. */
async function withoutWebGl(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const { getContext } = HTMLCanvasElement.prototype;
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind.startsWith('webgl') ? null : (getContext as (...args: unknown[]) => unknown).call(this, kind, ...rest);
    } as typeof getContext;
  });
}

describe('a wall without WebGL', () => {
  it('should say so, look as it does with it, and let prints be walked along, selected and kept', async () => {
    const { page } = await openPage(studio);
    await page.goto(`${studio.url}#wall`);
    await found(page);
    await onCard(page);
    const withIt = await seen(page);
    await page.context().close();

    const { page: plain, errors } = await openPage(studio);
    await withoutWebGl(plain);
    await plain.goto(`${studio.url}#wall`);
    await plain.getByText(/gives the page no WebGL 2, so the wall is drawn without the graphics card/).waitFor();
    await found(plain);
    const drawn = await seen(plain);
    // The line that says so covers a strip; shadows are simpler.
    expect(meanDifference(drawn.data, withIt.data)).toBeLessThan(6);
    expect(drawn.colours).toBeGreaterThan(500);

    const surface = plain.locator('wall-surface .surface');
    await surface.focus();
    await plain.keyboard.press('End');
    await plain.keyboard.press(' ');
    await plain.getByText('1 selected').first().waitFor();
    await plain.keyboard.press('k');
    await expect.poll(async () => (await records(plain, 'pullstack', 'sections'))['recipes']).toHaveLength(1);
    await plain.keyboard.press('+');
    await plain.keyboard.press('+');
    expect((await seen(plain)).colours).toBeGreaterThan(100);
    expect(errors).toEqual([]);
    await plain.context().close();
  });
});

describe('a lost WebGL context', () => {
  it('should be said at once, and the wall drawn again when it comes back', async () => {
    const { page } = await openPage(studio);
    await page.goto(`${studio.url}#wall`);
    await found(page);
    await onCard(page);
    const before = await seen(page);
    const lose = await page
      .locator('wall-surface .surface canvas')
      .first()
      .evaluateHandle((canvas: HTMLCanvasElement) => {
        const extension = canvas.getContext('webgl2')!.getExtension('WEBGL_lose_context')!;
        extension.loseContext();
        return extension;
      });
    const told = page.getByText(/The browser took the graphics card away from the page/);
    await told.waitFor();
    expect((await seen(page)).colours).toBeLessThan(before.colours / 2);
    await lose.evaluate((extension) => extension.restoreContext());
    await expect.poll(() => told.count()).toBe(0);
    await expect.poll(async () => meanDifference((await seen(page)).data, before.data)).toBeLessThan(1);
    await page.context().close();
  });
});
