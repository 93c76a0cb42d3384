import { createCanvas } from '@napi-rs/canvas';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { handoutPdf, type HandoutOptions } from '../../../src/components/output/handout-pdf.ts';
import type { GoalKind } from '../../../src/engine/lesson/goal-kinds.ts';
import { goalSheet } from '../../../src/engine/lesson/goal-sheets.ts';
import { handoutPictures } from '../../../src/engine/lesson/handout.ts';
import { groupOrders } from '../../../src/engine/order/groups/group-orders.ts';
import { pageFonts as fonts } from '../../helpers/page-fonts.ts';
import { popplerPages, popplerText } from '../../helpers/poppler.ts';

const PNG = new Uint8Array(createCanvas(56, 76).toBuffer('image/png'));

function handout(kind: GoalKind): { options: Omit<HandoutOptions, 'size'>; orders: number[][]; groups: number[][] } {
  const { studio, pulls, limits } = goalSheet(kind);
  const { orders, groups, count } = groupOrders({ pulls }, studio, { ...limits, toleranceMm: 0.05 });
  const prints = handoutPictures({ orders, groups }, 'Ebb').map(({ letter, orders: all }) => ({
    letter,
    orders: all.map((index) => orders[index]!),
    png: PNG,
  }));
  const named = pulls.map(({ screen, ink }) => ({ screen: studio.screens.find(({ id }) => id === screen)!.name, ink, hex: '#a63c20' }));
  return { options: { title: 'Ebb', pulls: named, prints, orders: orders.length, pictures: count, fonts }, orders, groups };
}

const joined = (text: string): string => text.replaceAll(/\s+/gu, ' ');

describe('handoutPdf', () => {
  it.each([
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const)('should stand on %s, read back by poppler', async (size, widthMm, heightMm) => {
    const { options, orders, groups } = handout('on-top');
    const { bytes, missing } = await handoutPdf({ ...options, size });
    expect(missing).toEqual([]);
    const pages = popplerText(bytes);
    expect(pages).toHaveLength(popplerPages(bytes));
    const page = (await PDFDocument.load(bytes)).getPage(0).getSize();
    expect([page.width, page.height].map((pt) => (pt / 72) * 25.4)).toEqual([expect.closeTo(widthMm, 3), expect.closeTo(heightMm, 3)]);

    const before = joined(pages.slice(0, -1).join(' '));
    for (const words of ['Name', 'Date', 'Lesson: Ebb', '1 Disc, rust', '2 Square, weed', '3 Bar, foam', 'overprint colour'])
      expect(before).toContain(words);
    for (const { letter } of options.prints) expect(before).toMatch(new RegExp(`\\b${letter}\\b`));
    // Nothing of the answers before their own page, which begins with them.
    expect(before).not.toContain('Answers');
    expect(before).not.toMatch(/\d, \d, \d/);
    const last = joined(pages.at(-1)!);
    expect(last).toMatch(/^ ?Answers: Ebb/);
    expect(last).toContain(`The 6 orders print ${groups.length} different pictures.`);
    // Every order stands there once, under the picture that it prints.
    const told = [...last.matchAll(/\b(\d), (\d), (\d)\b/g)].map(([text]) => text);
    expect(told.toSorted()).toEqual(orders.map((order) => order.map((at) => at + 1).join(', ')).toSorted());
    for (const { letter, orders: all } of options.prints) {
      const line = all.map((order) => order.map((at) => at + 1).join(', ')).join('; or ');
      expect(last).toContain(`${letter} ${line}`);
    }
  });

  it('should print twelve of many pictures and say so', async () => {
    const { options } = handout('found-back');
    expect(options.prints.map(({ letter }) => letter).join('')).toBe('ABCDEFGHIJKL');
    expect(new Set(options.prints.map(({ orders }) => orders[0]!.join())).size).toBe(12);
    const { bytes } = await handoutPdf({ ...options, size: 'A4' });
    expect(joined(popplerText(bytes).at(-1)!)).toContain('12 of the 18 pictures are on this handout.');
  });

  it('should mix its pictures, the same way for the same name', () => {
    const { studio, pulls, limits } = goalSheet('found-back');
    const found = groupOrders({ pulls }, studio, { ...limits, toleranceMm: 0.05 });
    const pictures = (name: string) => handoutPictures(found, name).map(({ picture }) => picture);
    expect(pictures('Ebb')).toEqual(pictures('Ebb'));
    expect(pictures('Ebb')).not.toEqual(pictures('Flood'));
    expect(pictures('Ebb')).not.toEqual(pictures('Ebb').toSorted((a, b) => a - b));
  });
});
