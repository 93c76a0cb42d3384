import { readFileSync } from 'node:fs';
import { PDFDocument } from 'pdf-lib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { popplerText } from '../helpers/poppler.ts';
import { enter, itInChromium, openPage, openStudio, type Studio, watch } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
});

afterAll(async () => {
  await studio?.close();
});

/** The papers as they are chosen, as a file. */
async function saved(page: Page): Promise<Uint8Array> {
  const [file] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.getByRole('button', { name: 'Save as PDF' }).click(),
  ]);
  return readFileSync(await file.path());
}

/** All words of some pages, each once; a title goes on, and pages are counted, where the paper ends. */
function wordsOf(pages: readonly string[]): string[] {
  const lines = pages.flatMap((text) => text.split('\n')).filter((line) => !/\d+ of \d+\s*$/.test(line));
  // The line of a narrow column may end within 'set-up', so what stands behind a hyphen counts by itself.
  return [
    ...new Set(
      lines
        .join(' ')
        .replaceAll(', continued', '')
        .split(/\s+|(?<=\p{L}-)(?=\p{L})/u),
    ),
  ].sort();
}

describe('the printer', () => {
  itInChromium('should turn two recipes and ten sheets into a pull order and a pull sheet', async () => {
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
    const printed = await page.pdf({ format: 'A4', printBackground: true, preferCSSPageSize: true });
    // The pictures of the prints are in it, so it is far larger than its text.
    expect(printed.length).toBeGreaterThan(60_000);

    // Made away from the page: stopped while its worker does not answer, it leaves the button as it was.
    await page.emulateMedia({ media: 'screen' });
    const madeBy = (): boolean => page.workers().some((worker) => worker.url().includes('pdf.worker'));
    await page.route('**/pdf.worker*', () => {});
    await page.getByRole('button', { name: 'Save as PDF' }).click();
    await page.getByRole('progressbar', { name: 'Making the PDF' }).waitFor();
    await page.locator('press-papers').getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('button', { name: 'Save as PDF' }).waitFor();
    await page.unroute('**/pdf.worker*');

    // The same as a file, in both sizes of page.
    for (const [size, wide] of [
      ['Letter', 8.5],
      ['A4', 210 / 25.4],
    ] as const) {
      await page.getByLabel('Page size of the PDF').selectOption(size);
      const bytes = await saved(page);
      expect(madeBy()).toBe(true);
      expect((await PDFDocument.load(bytes)).getPage(0).getWidth() / 72).toBeCloseTo(wide, 3);
      const pages = popplerText(bytes);
      for (const first of ['Pull sheet', 'Bench sheet, day 1', 'Set-up grid', 'Stencils', 'Ink', 'Sheets']) {
        expect(pages.filter((text) => text.trimStart().startsWith(first)).length, first).toBeGreaterThan(0);
      }
      // What is printed from the browser says the same, word for word.
      if (size === 'A4') expect(wordsOf(popplerText(printed))).toEqual(wordsOf(pages));
    }

    // A set-up by itself stands on one page, and on a phone.
    await page.getByLabel('What goes on paper').selectOption('set-up');
    const card = popplerText(await saved(page));
    expect(card).toHaveLength(1);
    expect(card[0]).toMatch(/Set-up 1\b/);
    expect(card[0]).toMatch(/dries \d+ min: print over the last sheet from/);
    await page.getByRole('button', { name: 'On a phone…' }).click();
    const phone = await context.newPage();
    watch(phone, studio, errors);
    await phone.setViewportSize({ width: 390, height: 844 });
    await phone.goto((await page.getByRole('link', { name: 'Open it here' }).getAttribute('href'))!);
    await phone.getByRole('heading', { name: 'Set-up 1', exact: true }).waitFor();
    expect(await phone.getByText(/dries \d+ min: print over the last sheet from/).count()).toBe(1);
    await phone.close();
    await page.getByRole('dialog', { name: 'Set-up 1 on a phone' }).getByRole('button', { name: 'Close' }).click();
    await page.getByLabel('What goes on paper').selectOption('visit');

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
