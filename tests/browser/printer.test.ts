import { readFileSync } from 'node:fs';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pdfPages } from '../helpers/pdf-text.ts';
import { enter, openPage, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

describe('the printer', () => {
  it('should turn two recipes and ten sheets into a pull order and a pull sheet', async () => {
    const { page, context, errors } = await openPage(studio);
    await page.goto(studio.url);
    await enter(page, 'Wall');
    const wall = page.locator('wall-room');
    await expect.poll(() => wall.getAttribute('data-state'), { timeout: 30_000 }).toBe('done');
    await page.getByRole('application', { name: /wall/i }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('k');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('k');

    await enter(page, 'Press');
    const counts = page.getByRole('spinbutton', { name: /^Sheets of/ });
    await expect.poll(() => counts.count()).toBe(2);
    for (const at of [0, 1]) {
      await counts.nth(at).fill('5');
      await counts.nth(at).press('Tab');
    }
    // Ten that were asked for, with an over and a proof of each recipe.
    await expect.poll(() => page.getByText('14 sheets in all').count()).toBe(1);
    await page.getByRole('button', { name: 'Find the pull order' }).click();
    // What was pressed stops the search now, and has kept the focus.
    const focused = () =>
      page.evaluate(() => {
        let at = document.activeElement;
        while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
        return at?.textContent ?? '';
      });
    expect(await focused()).toMatch(/^(Stop|Find the pull order)$/);
    const print = page.getByRole('button', { name: 'Print the pull sheet' });
    await expect.poll(() => print.isEnabled().catch(() => false), { timeout: 60_000 }).toBe(true);

    // The grid is a real table: a column for each sheet, a row for each set-up.
    const grid = page.getByRole('region', { name: 'Set-up grid' }).getByRole('table');
    const head = page
      .getByRole('status')
      .filter({ hasText: /set-ups/ })
      .first();
    const setUps = Number(/(\d+) set-ups/.exec((await head.textContent())!)![1]);
    expect(setUps).toBeGreaterThan(10);
    await expect.poll(() => grid.getByRole('rowheader').count()).toBeGreaterThanOrEqual(setUps);
    for (const sheet of ['1', '10']) {
      expect(await grid.getByRole('columnheader', { name: new RegExp(`\\b${sheet}\\b`) }).count()).toBeGreaterThan(0);
    }

    // Print: the browser's own dialog is replaced by a note that it was asked for.
    await page.evaluate(() => {
      (window as unknown as { printed: number }).printed = 0;
      window.print = () => {
        (window as unknown as { printed: number }).printed++;
      };
    });
    await print.click();
    await expect.poll(() => page.evaluate(() => (window as unknown as { printed: number }).printed), { timeout: 60_000 }).toBe(1);
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('navigation', { name: 'Rooms' }).isVisible()).toBe(false);
    const text = await page.locator('press-room').evaluate((room) => {
      const read = (node: Node): string =>
        node instanceof Element && (getComputedStyle(node).display === 'none' || ['STYLE', 'SCRIPT'].includes(node.tagName))
          ? ''
          : node.nodeType === Node.TEXT_NODE
            ? (node.textContent ?? '')
            : [...(node instanceof Element && node.shadowRoot !== null ? node.shadowRoot : node).childNodes].map(read).join(' ');
      return read(room);
    });
    expect(text).toMatch(/safety data sheets/i);
    expect(text).toMatch(/local codes/i);
    expect(text).toMatch(/\bdr(y|ies)\b/i);
    expect(text).toMatch(/\d\s*g\b/);
    const pdf = await page.pdf({ format: 'A4', printBackground: true });
    // The state pictures are in it, so it is far larger than its text.
    expect(pdf.length).toBeGreaterThan(100_000);

    // Made away from the page: stopped while its worker does not answer, it leaves the button as it was.
    await page.emulateMedia({ media: 'screen' });
    const madeBy = (): boolean => page.workers().some((worker) => worker.url().includes('pdf.worker'));
    await page.route('**/pdf.worker*', () => {});
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    await page.getByRole('progressbar', { name: 'Making the PDF' }).waitFor();
    await page.locator('press-pdf-choice').getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('button', { name: 'Save as PDF' }).waitFor();
    await page.unroute('**/pdf.worker*');

    // The same as a file: the grid, the days, what to have ready, the cards, the passports.
    await page.emulateMedia({ media: 'screen' });
    for (const [size, wide] of [
      ['A4', 210 / 25.4],
      ['Letter', 8.5],
    ] as const) {
      await page.getByLabel('Page size of the PDF').selectOption(size);
      const [file] = await Promise.all([
        page.waitForEvent('download', { timeout: 60_000 }),
        page.getByRole('button', { name: 'Save as PDF' }).click(),
      ]);
      expect(madeBy()).toBe(true);
      const bytes = readFileSync(await file.path());
      expect((await PDFDocument.load(bytes)).getPage(0).getWidth() / 72).toBeCloseTo(wide, 3);
      const pages = await pdfPages(bytes);
      for (const first of ['Pull sheet', 'Set-up grid', 'Days', 'Screens', 'Set-up 1', 'Sheets']) {
        expect(pages.filter((text) => text.startsWith(`${first}\n`)).length, first).toBeGreaterThan(0);
      }
      const all = pages.join('\n');
      expect(all.match(/^Set-up \d+$/gm)).toHaveLength(setUps);
      expect(all).toMatch(/dries \d+ min: print over the last sheet from/);
      expect(all).toMatch(/safety data sheets/i);
    }

    // A visit takes days: after a reload the same order stands there, with what was ticked.
    const headline = await head.textContent();
    const boxes = page.getByRole('checkbox', { name: /^Sheet \d+ pulled/ });
    // A tick shows when it is on the disk.
    await boxes.first().click();
    await expect.poll(() => boxes.first().isChecked()).toBe(true);
    const ticked = await boxes.first().getAttribute('aria-label');
    await expect
      .poll(
        () =>
          page.evaluate(
            () =>
              new Promise<number>((resolve) => {
                const asked = indexedDB.open('pullstack-log');
                asked.onsuccess = () => {
                  const events = asked.result.transaction('events').objectStore('events').count();
                  events.onsuccess = () => resolve(events.result);
                  asked.result.close();
                };
              }),
          ),
        { timeout: 10_000 },
      )
      .toBe(1);
    await page.reload();
    await expect.poll(() => head.textContent().catch(() => ''), { timeout: 30_000 }).toBe(headline);
    expect(await page.getByRole('checkbox', { name: ticked! }).isChecked()).toBe(true);
    expect(await page.getByText('Out of date').count()).toBe(0);
    // A new order would lose the tick, so it is asked for first.
    await page.getByRole('button', { name: 'Find the pull order' }).click();
    await page.getByRole('button', { name: 'Keep this order' }).click();
    expect(await page.getByRole('checkbox', { name: ticked! }).isChecked()).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });
});
