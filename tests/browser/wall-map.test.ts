import { readFile } from 'node:fs/promises';
import { createCanvas, loadImage } from '@napi-rs/canvas';
import { PDFDocument } from 'pdf-lib';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readCarried } from '../../src/engine/visitfile/carried/carried-recipe.ts';
import { enter, FEW, itInChromium, openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

async function wallOf(page: Page): Promise<Locator> {
  await page.goto(studio.url);
  await enter(page, 'Wall');
  const wall = page.locator('wall-room');
  await expect.poll(() => wall.getAttribute('data-state'), { timeout: 60_000 }).toBe('done');
  return wall;
}

/** Picture keys of the prints that hang, in their order. */
function keys(page: Page): Promise<string[]> {
  return page.locator('wall-view').evaluate((view) => (view as unknown as { variants: { key: string }[] }).variants.map(({ key }) => key));
}

const hang = (page: Page): Locator => page.getByRole('combobox', { name: 'Arrange the prints' });

describe('the wall as a map', () => {
  it('should hang the same prints after a reload, and keep them when more are found', async () => {
    const { page, context, errors } = await openPage(studio);
    const wall = await wallOf(page);
    const first = await keys(page);
    expect(new Set(first).size).toBe(FEW);

    await page.getByRole('button', { name: 'Find 200 more' }).click();
    await expect
      .poll(async () => [await wall.getAttribute('data-state'), await wall.getAttribute('data-found')], { timeout: 90_000 })
      .toEqual(['done', String(FEW + 200)]);
    const more = await keys(page);
    expect(more.slice(0, FEW)).toEqual(first);
    expect(new Set(more).size).toBe(FEW + 200);

    // Saving follows each command; the reloaded project says so many by itself.
    await page.reload();
    await enter(page, 'Wall');
    await expect
      .poll(async () => [await wall.getAttribute('data-state'), await wall.getAttribute('data-found')], { timeout: 90_000 })
      .toEqual(['done', String(FEW + 200)]);
    expect(await keys(page)).toEqual(more);
    expect(errors).toEqual([]);
    await context.close();
  });

  // That the wall is the same with any number of cores is held in hold/across.
  it('should have workers help on a machine of more cores', async () => {
    const { page, context, errors } = await openPage(studio);
    const scripts: string[] = [];
    page.context().on('request', (request) => scripts.push(request.url()));
    await page.addInitScript(() => Object.defineProperty(navigator, 'hardwareConcurrency', { value: 5 }));
    await wallOf(page);
    expect(scripts.filter((url) => url.includes('wall-helper')).length).toBe(3);
    expect(errors).toEqual([]);
    await context.close();
  });

  itInChromium(
    'should filter, hang by measures and likeness, select, compare, and save prints as files that other readers open',
    async () => {
      const { page, context, errors } = await openPage(studio);
      await wallOf(page);
      await hang(page).selectOption({ label: 'by two measures' });
      await page.getByRole('button', { name: /^Filter/ }).click();
      const most = page.getByRole('slider', { name: 'Contrast of edges, most' });
      const [least, greatest] = [Number(await most.getAttribute('min')), Number(await most.getAttribute('max'))];
      await most.fill(String((least + greatest) / 2));
      const told = page.locator('wall-filter').getByRole('status');
      await expect.poll(() => told.textContent()).toMatch(new RegExp(`^\\d+ of ${FEW} hang$`));
      const shown = Number((await told.textContent())!.split(' ')[0]);
      expect(shown).toBeGreaterThan(0);
      expect(shown).toBeLessThan(FEW);
      await page.getByRole('button', { name: 'Show all' }).click();
      await expect.poll(() => told.textContent()).toBe(`All ${FEW} hang`);
      await page.getByRole('button', { name: /^Filter/ }).click();

      await hang(page).selectOption({ label: 'alike side by side' });
      await expect.poll(() => page.getByText('Seeing what looks alike').count(), { timeout: 60_000 }).toBe(0);

      // Selected by keys, walking over the map.
      const surface = page.getByRole('application', { name: 'Wall of prints' });
      await surface.focus();
      await page.keyboard.press(' ');
      for (const key of ['End', 'ArrowUp']) {
        await page.keyboard.press(key);
        await page.keyboard.press(' ');
      }
      await expect.poll(() => page.getByText('3 selected').count()).toBe(1);
      await page.keyboard.press('d');
      const dialog = page.getByRole('dialog', { name: 'Compare prints' });
      await expect.poll(() => dialog.getByText(/ΔE00 [\d.]+ on average/).count(), { timeout: 30_000 }).toBe(2);
      const figures = await dialog.getByText(/ΔE00 [\d.]+ on average/).allTextContents();
      for (const text of figures) expect(Number(/ΔE00 ([\d.]+)/.exec(text)![1])).toBeGreaterThan(0);
      await page.keyboard.press('Escape');

      // A box drawn with shift held selects what lies in it.
      await page.getByRole('button', { name: 'Select none' }).click();
      await hang(page).selectOption({ label: 'in the order found' });
      await page.getByRole('button', { name: 'Whole wall' }).click();
      await page.waitForTimeout(600);
      const box = (await surface.boundingBox())!;
      await page.keyboard.down('Shift');
      await page.mouse.move(box.x + 6, box.y + 6);
      await page.mouse.down();
      await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2, { steps: 4 });
      await page.mouse.up();
      await page.keyboard.up('Shift');
      await expect.poll(() => page.getByText(/^\d+ selected$/).count()).toBe(1);
      expect(Number((await page.getByText(/^\d+ selected$/).textContent())!.split(' ')[0])).toBeGreaterThan(FEW / 10);
      await page.keyboard.press('Control+a');
      await expect.poll(() => page.getByText(`${FEW} selected`, { exact: true }).count()).toBe(1);

      await page.getByRole('button', { name: 'Select none' }).click();
      await surface.focus();
      for (let i = 0; i < 7; i++) {
        await page.keyboard.press(' ');
        await page.keyboard.press('ArrowRight');
      }
      await page.getByRole('button', { name: 'Contact sheet' }).click();
      const sheet = page.getByRole('dialog', { name: 'Contact sheet' });
      const [pdf] = await Promise.all([
        page.waitForEvent('download', { timeout: 60_000 }),
        sheet.getByRole('button', { name: 'Save' }).click(),
      ]);
      expect(pdf.suggestedFilename()).toMatch(/contact-sheet\.pdf$/);
      const doc = await PDFDocument.load(await readFile(await pdf.path()));
      expect(doc.getPageCount()).toBe(1);

      await page.getByRole('button', { name: 'Contact sheet' }).click();
      await sheet.getByRole('combobox', { name: 'File' }).selectOption('png');
      const [png] = await Promise.all([
        page.waitForEvent('download', { timeout: 60_000 }),
        sheet.getByRole('button', { name: 'Save' }).click(),
      ]);
      // A4 is 210 mm wide: 1654 pixels at 200 an inch.
      expect((await loadImage(await readFile(await png.path()))).width).toBe(1654);

      await surface.focus();
      await page.keyboard.press('s');
      const one = page.getByRole('dialog', { name: /as a picture$/ });
      await one.getByRole('spinbutton', { name: 'Width' }).fill('100');
      await one.getByRole('spinbutton', { name: 'Resolution' }).fill('254');
      const [print] = await Promise.all([
        page.waitForEvent('download', { timeout: 60_000 }),
        one.getByRole('button', { name: 'Save' }).click(),
      ]);
      const file = await readFile(await print.path());
      expect((await loadImage(file)).width).toBe(1000);
      // The picture carries the print, for whoever gets it.
      expect(readCarried(file, 'print.png').value!.pulls.length).toBeGreaterThan(3);

      // What is too large is told, and the wall goes on.
      await page.keyboard.press('s');
      await one.getByRole('spinbutton', { name: 'Width' }).fill('1500');
      await one.getByRole('spinbutton', { name: 'Resolution' }).fill('600');
      await one.getByRole('button', { name: 'Save' }).click();
      await expect.poll(() => one.getByRole('alert').textContent()).toMatch(/up to \d+ dpi will do/);
      expect(errors).toEqual([]);
      await context.close();
    },
  );

  it('should show the selection on prints that are drawn finely, and compare three on a phone without overlaps', async () => {
    const { page, context, errors } = await openPage(studio, { width: 390, height: 844 });
    await wallOf(page);
    const surface = page.getByRole('application', { name: 'Wall of prints' });
    await surface.focus();
    await page.keyboard.press('Home');
    for (let i = 0; i < 3; i++) {
      await page.keyboard.press(' ');
      await page.keyboard.press('ArrowRight');
    }
    await page.keyboard.press('Home');
    // So near that the print stays whole in view, whatever the rows around the wall do to its height.
    for (let i = 0; i < 2; i++) await page.keyboard.press('+');
    const stand = () =>
      page.locator('wall-view').evaluate((view) => {
        const { scene } = (
          view as unknown as {
            holder: {
              scene: {
                frameOf(index: number): { left: number; top: number; width: number; height: number };
                drawing: { closeUpPx(index: number): number };
              };
            };
          }
        ).holder;
        return { ...scene.frameOf(0), fine: scene.drawing.closeUpPx(0) };
      });
    await expect.poll(async () => (await stand()).fine, { timeout: 30_000 }).toBeGreaterThan(100);
    const corner = async (): Promise<number> => {
      const { left, top, width } = await stand();
      const picture = await loadImage(await surface.screenshot());
      expect([left >= 0, top >= 0, left + width <= picture.width]).toEqual([true, true, true]);
      const canvas = createCanvas(picture.width, picture.height);
      canvas.getContext('2d').drawImage(picture, 0, 0);
      const [red, , blue] = canvas.getContext('2d').getImageData(Math.round(left + width) - 4, Math.round(top) + 4, 1, 1).data;
      return red! - blue!;
    };
    // The corner that is turned down is of the accent colour, an orange red.
    await expect.poll(corner, { timeout: 20_000 }).toBeGreaterThan(60);

    await page.getByRole('button', { name: 'Compare' }).click();
    const dialog = page.getByRole('dialog', { name: 'Compare prints' });
    await expect.poll(() => dialog.getByText(/ΔE00 [\d.]+ on average/).count(), { timeout: 30_000 }).toBe(2);
    const boxes = await dialog
      .locator('ps-picture, .figures')
      .evaluateAll((all) => all.map((each) => each.getBoundingClientRect()).map(({ x, y, right, bottom }) => [x, y, right, bottom]));
    expect(boxes.length).toBe(8);
    boxes.forEach(([x, y, right, bottom], i) => {
      expect(right).toBeLessThanOrEqual(390);
      for (const other of boxes.slice(i + 1)) {
        const apart = other[0]! >= right! - 1 || other[2]! <= x! + 1 || other[1]! >= bottom! - 1 || other[3]! <= y! + 1;
        expect(apart).toBe(true);
      }
    });
    expect(errors).toEqual([]);
    await context.close();
  });
});
