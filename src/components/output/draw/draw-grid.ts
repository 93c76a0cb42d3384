import { entryAt } from '../../../engine/base/at.ts';
import { say } from '../../words/en/output/draw.ts';
import type { PageWriter } from '../page-writer.ts';
import type { GridRow, PaperGrid } from '../papers/paper-blocks.ts';
import { PDF_COLOURS } from '../pdf-colours.ts';

/** More sheets than this are printed on a page that lies on its long side. */
export const MOST_UPRIGHT = 42;
const WIDEST_PT = 18;
/** Numerals are no smaller than 6 pt. */
const NUMERAL_PT = 8;
const LEAST_COLUMN_PT = 7.2;
/** Words of the rows at the most, and where a screen's name begins. */
const ROW_PT = 10.5;
const NAME_AT_PT = 38;

interface Measures {
  headPt: number;
  /** Where what stands behind the screen's name begins. */
  howPt: number;
  widthPt: number;
  rowPt: number;
}

/** The visit at a glance. The page that it begins on is there already. */
export function drawGrid(out: PageWriter, grid: PaperGrid): void {
  const title = (again: boolean): void => out.paragraph(again ? say.continued(grid.title) : grid.title, { size: 15, bold: true });
  title(false);
  out.paragraph(grid.note, { size: 10, soft: true });
  out.y += 4;
  const { headPt, howPt } = headsOf(out, grid);
  const measures: Measures = {
    headPt,
    howPt,
    widthPt: Math.min(WIDEST_PT, (out.right - out.left - headPt) / grid.columns.length),
    // Few rows may be tall; many still want to stand on one page.
    rowPt: Math.max(13, Math.min(20, (out.room - 40) / (grid.rows.length + grid.rows.filter(({ gap }) => gap !== null).length + 1))),
  };
  let top = columnHeads(out, grid, measures);
  for (const row of grid.rows) {
    if (out.room < measures.rowPt * (row.gap === null ? 1 : 3)) {
      edges(out, grid, measures, top);
      out.newPage(out.width > out.height);
      title(true);
      out.y += 4;
      top = columnHeads(out, grid, measures);
    }
    if (row.gap !== null) {
      out.line(row.gap, { x: out.left, y: out.y + (measures.rowPt - 10) / 2 }, { size: 9.5, bold: true, most: out.right - out.left });
      out.y += measures.rowPt;
    }
    out.rule({ to: out.left + headPt + grid.columns.length * measures.widthPt });
    rowHead(out, row, measures);
    for (const [at, count] of row.squares.entries()) {
      if (count !== null) square(out, row, count, { x: out.left + headPt + at * measures.widthPt, ...measures });
    }
    out.y += measures.rowPt;
  }
  out.rule({ to: out.left + headPt + grid.columns.length * measures.widthPt });
  edges(out, grid, measures, top);
}

/** Row heads as wide as their longest words want, as far as the squares leave room. */
function headsOf(out: PageWriter, { rows, columns }: PaperGrid): Pick<Measures, 'headPt' | 'howPt'> {
  const widest = (texts: readonly string[], bold: boolean): number =>
    Math.max(...texts.map((text) => out.widthOf(text, { size: ROW_PT, bold }))) + 5;
  const room = out.right - out.left - columns.length * LEAST_COLUMN_PT - NAME_AT_PT;
  const name = widest(
    rows.map(({ screen }) => screen),
    true,
  );
  const how = widest(
    rows.map((row) => row.how),
    false,
  );
  const shrink = Math.min(1, room / (name + how));
  return { howPt: NAME_AT_PT + name * shrink, headPt: NAME_AT_PT + (name + how) * shrink };
}

/** @returns where the squares begin */
function columnHeads(out: PageWriter, { columns }: PaperGrid, { headPt, widthPt }: Measures): number {
  const size = NUMERAL_PT;
  const upright = columns.some(({ label }) => out.widthOf(label, { size }) > widthPt - 1.5);
  const height = upright ? Math.max(...columns.map(({ label }) => out.widthOf(label, { size }))) + 4 : 11;
  letters(out, columns, { headPt, widthPt });
  for (const [at, { label }] of columns.entries()) {
    const x = out.left + headPt + at * widthPt;
    if (upright) out.upright(label, { x: x + widthPt / 2 + size * 0.36, y: out.y + height - 2 }, { size });
    else out.line(label, { x: x + (widthPt - out.widthOf(label, { size })) / 2, y: out.y + 1 }, { size });
  }
  out.y += height + (marks(out, columns, { headPt, widthPt }, out.y + height) ? 13 : 2);
  return out.y;
}

/** The marks of proofs and overs under their numbers. @returns whether there are any */
function marks(
  out: PageWriter,
  columns: PaperGrid['columns'],
  { headPt, widthPt }: Pick<Measures, 'headPt' | 'widthPt'>,
  y: number,
): boolean {
  const style = { size: NUMERAL_PT, bold: true };
  for (const [at, { use }] of columns.entries()) {
    if (use !== '') out.line(use, { x: out.left + headPt + at * widthPt + (widthPt - out.widthOf(use, style)) / 2, y }, style);
  }
  return columns.some(({ use }) => use !== '');
}

/** The recipes' letters, upright where each has so few sheets that they would run into each other. */
function letters(out: PageWriter, columns: PaperGrid['columns'], { headPt, widthPt }: Pick<Measures, 'headPt' | 'widthPt'>): void {
  const starts = columns.flatMap(({ letter }, at) => (letter === '' ? [] : [{ letter, at }]));
  const style = { size: NUMERAL_PT + 1, bold: true };
  const upright = starts.some(
    ({ letter, at }, i) => out.widthOf(letter, style) > ((starts[i + 1]?.at ?? columns.length) - at) * widthPt - 1,
  );
  const height = upright ? Math.max(...starts.map(({ letter }) => out.widthOf(letter, style))) + 4 : 13;
  for (const { letter, at } of starts) {
    const x = out.left + headPt + at * widthPt;
    if (upright) out.upright(letter, { x: x + widthPt / 2 + style.size * 0.36, y: out.y + height - 2 }, style);
    else out.line(letter, { x: x + 1, y: out.y }, style);
  }
  out.y += height;
}

function rowHead(out: PageWriter, { number, hex, screen, mount, how }: GridRow, { headPt, howPt, rowPt }: Measures): void {
  const size = Math.min(ROW_PT, Math.max(9, rowPt * 0.6));
  const text = out.y + (rowPt - size) / 2 - 1;
  out.line(number, { x: out.left, y: text }, { size, bold: true });
  out.rectangle({ x: out.left + 22, y: out.y + (rowPt - 8) / 2, width: 12, height: 8 }, { hex, edge: true });
  out.line(screen, { x: out.left + NAME_AT_PT, y: text }, { size, bold: mount, most: howPt - NAME_AT_PT - 3 });
  out.line(how, { x: out.left + howPt, y: text }, { size, soft: true, most: headPt - howPt - 3 });
}

function square(out: PageWriter, { hex, light }: GridRow, count: string, { x, widthPt, rowPt }: Measures & { x: number }): void {
  const inset = widthPt > 8 ? 1.2 : 0.7;
  out.rectangle({ x: x + inset, y: out.y + inset, width: widthPt - 2 * inset, height: rowPt - 2 * inset }, { hex, edge: true });
  if (count === '') return;
  const size = NUMERAL_PT;
  out.line(
    count,
    { x: x + (widthPt - out.widthOf(count, { size, bold: true })) / 2, y: out.y + (rowPt - size) / 2 - 0.5 },
    { size, bold: true, light },
  );
}

/** Lines between the recipes, and beside the first and last sheet. */
function edges(out: PageWriter, { columns }: PaperGrid, { headPt, widthPt }: Measures, top: number): void {
  for (let at = 0; at <= columns.length; at++) {
    if (at > 0 && at < columns.length && entryAt(columns, at).letter === '') continue;
    const x = out.left + headPt + at * widthPt;
    out.stroke({ x, y: top }, { x, y: out.y }, { thickness: 0.7, hex: PDF_COLOURS.edge });
  }
}
