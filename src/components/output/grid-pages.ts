import { entryAt, num } from '../../engine/base/at.ts';
import { rangesText } from '../../engine/base/words.ts';
import type { Lab } from '../../engine/colour/lab.ts';
import { srgbHexFromLab } from '../../engine/colour/screen-colour.ts';
import { type SheetColumn, type SheetGrid, sheetGrid } from '../../engine/visit/sheet-columns.ts';
import type { PressPlan } from '../../engine/visit/visit.ts';
import { counted } from '../ui/words.ts';
import { waitWords } from '../words/drying-words.ts';
import { offsetShort, offsetWords } from '../words/offset-words.ts';
import { recipeLetter } from '../words/plan-words.ts';
import type { PageWriter } from './page-writer.ts';
import { PDF_COLOURS } from './pdf-colours.ts';

/** More sheets than this are printed on a page that lies on its long side. */
const MOST_UPRIGHT = 32;
/** Columns that a lying page holds with squares that still show. */
const MOST_ACROSS = 64;
const HEAD_PT = 214;
const WIDEST_PT = 18;

interface Band {
  columns: SheetColumn[];
  /** Index of the first of them in the whole grid. */
  from: number;
  widthPt: number;
  rowPt: number;
}

/** The whole visit at a glance: rows are set-ups in time, columns are sheets, a square is a pull. */
export function gridPages(out: PageWriter, plan: PressPlan): void {
  const grid = sheetGrid(plan, MOST_ACROSS);
  for (let from = 0; from < grid.columns.length; from += MOST_ACROSS) {
    const columns = grid.columns.slice(from, from + MOST_ACROSS);
    out.newPage(columns.length > MOST_UPRIGHT);
    const widthPt = Math.min(WIDEST_PT, (out.right - out.left - HEAD_PT) / columns.length);
    // Few rows may be tall; many still want to stand on one page.
    const rowPt = Math.max(13, Math.min(20, (out.room - 130) / (plan.cards.length + plan.daysNeeded * 2)));
    bandPages(out, plan, grid, { columns, from, widthPt, rowPt });
  }
}

function bandPages(out: PageWriter, plan: PressPlan, grid: SheetGrid, band: Band): void {
  out.heading('Set-up grid');
  out.paragraph(
    `${counted(plan.cards.length, 'set-up')} from top to bottom, sheets from left to right. A filled square is a pull${plan.cards.some((card) => card.states.some((state) => state.prints.length > 1)) ? '; a number in it, several' : ''}.`,
    { size: 10.5, soft: true },
  );
  out.y += 6;
  let top = columnHeads(out, band);
  const end = (): void => edges(out, band, top);
  for (const [index, card] of plan.cards.entries()) {
    const gap = gapWords(plan, index);
    const day = plan.times[index]?.day;
    const begins = index > 0 && day !== plan.times[index - 1]?.day;
    const rows = begins ? 1 + plan.times.filter((time) => time.day === day).length : gap === null ? 1 : 2;
    // A day is not cut where a page of its own holds it.
    if (out.room < band.rowPt * rows && (rows * band.rowPt < out.height - 160 || out.room < band.rowPt * 3)) {
      end();
      out.newPage(out.width > out.height);
      top = columnHeads(out, band);
    }
    if (gap !== null) {
      out.line(gap, { x: out.left, y: out.y + (band.rowPt - 10) / 2 }, { size: 9.5, bold: true, most: out.right - out.left });
      out.y += band.rowPt;
    }
    out.rule();
    rowHead(out, plan, index, band);
    for (const [at] of band.columns.entries()) {
      const prints = num(entryAt(grid.pulls, index), band.from + at);
      if (prints > 0) square(out, out.left + HEAD_PT + at * band.widthPt, band, { lab: card.ink.ink.overWhite, prints });
    }
    out.y += band.rowPt;
  }
  out.rule();
  end();
}

/** @returns where the squares begin */
function columnHeads(out: PageWriter, { columns, widthPt }: Band): number {
  const labels = columns.map((column) => rangesText(column.sheets));
  const size = 8;
  const upright = labels.some((label) => out.widthOf(label, { size }) > widthPt - 2);
  const height = upright ? Math.max(...labels.map((label) => out.widthOf(label, { size }))) + 4 : 11;
  out.need(height + 60);
  for (const [at, column] of columns.entries()) {
    if (at > 0 && entryAt(columns, at - 1).recipe === column.recipe) continue;
    const span = columns.filter((other) => other.recipe === column.recipe).length;
    out.line(
      recipeLetter(column.recipe),
      { x: out.left + HEAD_PT + at * widthPt + 1, y: out.y },
      { size: 10, bold: true, most: span * widthPt },
    );
  }
  out.y += 13;
  for (const [at, label] of labels.entries()) {
    const x = out.left + HEAD_PT + at * widthPt;
    if (upright) out.upright(label, { x: x + widthPt / 2 + size * 0.36, y: out.y + height - 2 }, { size });
    else out.line(label, { x: x + (widthPt - out.widthOf(label, { size })) / 2, y: out.y + 1 }, { size });
  }
  out.y += height + 2;
  return out.y;
}

function rowHead(out: PageWriter, plan: PressPlan, index: number, { rowPt }: Band): void {
  const card = entryAt(plan.cards, index);
  const size = Math.min(10.5, rowPt * 0.6);
  const text = out.y + (rowPt - size) / 2 - 1;
  const small = { size: size * 0.92, soft: true };
  out.line(`${card.number}`, { x: out.left, y: text }, { size, bold: true });
  out.rectangle(
    { x: out.left + 22, y: out.y + (rowPt - 8) / 2, width: 13, height: 8 },
    { hex: srgbHexFromLab(card.ink.ink.overWhite), edge: true },
  );
  out.line(`${card.screen.key} ${card.screen.name}`, { x: out.left + 40, y: text }, { size, bold: card.mount, most: 82 });
  const offset = offsetWords(card) === 'no offset' ? '' : ` ${offsetShort(card)}`;
  const bed = plan.times.some((time) => time.bed > 0) ? `, bed ${entryAt(plan.times, index).bed + 1}` : '';
  out.line(
    `${card.ink.key}${offset}${card.strokes > 1 ? ` ×${card.strokes}` : ''}${bed}`,
    { x: out.left + 126, y: text + size * 0.08 },
    { ...small, most: HEAD_PT - 130 },
  );
}

function square(out: PageWriter, x: number, { widthPt, rowPt }: Band, { lab, prints }: { lab: Lab; prints: number }): void {
  const inset = widthPt > 8 ? 1.4 : 0.7;
  out.rectangle(
    { x: x + inset, y: out.y + inset, width: widthPt - 2 * inset, height: rowPt - 2 * inset },
    { hex: srgbHexFromLab(lab), edge: true },
  );
  if (prints < 2) return;
  const label = String(prints);
  out.line(
    label,
    { x: x + (widthPt - out.widthOf(label, { size: 8 })) / 2, y: out.y + (rowPt - 9) / 2 },
    {
      size: 8,
      bold: true,
      light: lab[0] < 55,
    },
  );
}

/** Lines between the recipes, and beside the first and last sheet. */
function edges(out: PageWriter, { columns, widthPt }: Band, top: number): void {
  for (let at = 0; at <= columns.length; at++) {
    if (at > 0 && at < columns.length && entryAt(columns, at).recipe === entryAt(columns, at - 1).recipe) continue;
    const x = out.left + HEAD_PT + at * widthPt;
    out.stroke({ x, y: top }, { x, y: out.y }, { thickness: 0.7, hex: PDF_COLOURS.edge });
  }
}

/** 'Day 2', 'Day 2: wait 25 min: Rust dries', or null where nothing lies between two set-ups. */
function gapWords(plan: PressPlan, index: number): string | null {
  const time = plan.times[index];
  if (time === undefined) return null;
  const before = plan.times[index - 1];
  const parts: string[] = [];
  if ((before === undefined || before.day < time.day) && plan.daysNeeded > 1) parts.push(`Day ${time.day}`);
  if (time.waitMinutes >= 1) parts.push(waitWords(plan, index));
  return parts.length === 0 ? null : parts.join(': ');
}
