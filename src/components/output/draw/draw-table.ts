import { entryAt, num } from '../../../engine/base/at.ts';
import { say } from '../../words/en/output/draw.ts';
import type { PageWriter } from '../page-writer.ts';
import type { PaperCell, PaperTable } from '../papers/paper-blocks.ts';
import { linesPiece, type Piece, type Sizes, TABLE_SIZES, TIGHT_SIZES } from './pieces.ts';

const TITLE_PT = 15;
const HEAD_PT = 9.5;
const GAP_PT = 7;
const BOX_PT = 13;
const SWATCH_PT = 12;
/** Where lines that run across begin. */
const INSET_PT = 19;

/** A table whose title and heads stand again on every page that it runs on to; no row is cut. */
export function drawTable(out: PageWriter, table: PaperTable): void {
  const widths = table.columns.map(({ share }) => share * (out.right - out.left));
  const begin = (again: boolean): void => {
    out.paragraph(again ? say.continued(table.title) : table.title, { size: TITLE_PT, bold: true });
    out.y += 3;
    heads(out, table, widths);
  };
  const { rows, heights } = setRows(out, table, widths);
  out.y += out.atTop ? 0 : 10;
  // A table begins with its first rows, not at the foot of a page.
  out.need(52 + heights.slice(0, 2).reduce((sum, height) => sum + height, 0));
  begin(false);
  for (const [at, row] of rows.entries()) {
    const height = num(heights, at);
    if (out.room < height) {
      out.newPage(out.width > out.height);
      begin(true);
    }
    const y = out.y + 2.5;
    row.over.draw({ x: out.left + INSET_PT, y });
    row.under.draw({ x: out.left + INSET_PT, y: y + height - 5 - row.under.height });
    let x = out.left;
    for (const [c, piece] of row.cells.entries()) {
      piece.draw({ x, y: y + row.over.height });
      x += num(widths, c);
    }
    out.y += height;
    out.rule();
  }
  out.y += 6;
}

interface SetRow {
  over: Piece;
  cells: Piece[];
  under: Piece;
}

/** The rows in the size in which the table stands on one page, when there is one; else as large as can be. */
function setRows(out: PageWriter, table: PaperTable, widths: readonly number[]): { rows: SetRow[]; heights: number[] } {
  const whole = out.right - out.left;
  const set = (sizes: Sizes): { rows: SetRow[]; heights: number[] } => {
    const across = (texts: readonly string[]): Piece =>
      linesPiece(
        out,
        texts.map((text) => ({ text, size: 'small', bold: true })),
        whole - INSET_PT,
        sizes,
      );
    const rows = table.rows.map(({ over, cells, under = [] }) => ({
      over: across(over === undefined ? [] : [over]),
      cells: cells.map((cell, at) => cellPiece(out, cell, num(widths, at) - GAP_PT, sizes)),
      under: across(under),
    }));
    return {
      rows,
      heights: rows.map(({ over, cells, under }) => Math.max(...cells.map(({ height }) => height)) + 5 + over.height + under.height),
    };
  };
  const large = set(TABLE_SIZES);
  if (fits(out, large.heights)) return large;
  const tight = set(TIGHT_SIZES);
  return fits(out, tight.heights) ? tight : large;
}

/** Whether rows stand on one page with their title, heads and a note below. */
function fits(out: PageWriter, heights: readonly number[]): boolean {
  return heights.reduce((sum, height) => sum + height, 0) <= out.pageRoom - 70;
}

function heads(out: PageWriter, { columns }: PaperTable, widths: readonly number[]): void {
  const pieces = columns.map(({ head }, at) => out.lines(head, num(widths, at) - 3, { size: HEAD_PT }));
  const most = Math.max(...pieces.map((lines) => lines.length));
  let x = out.left;
  for (const [at, lines] of pieces.entries()) {
    for (const [i, line] of lines.entries()) {
      const y = out.y + (most - lines.length + i) * HEAD_PT * 1.2;
      out.line(line, { x, y }, { size: HEAD_PT, soft: true, most: num(widths, at) });
    }
    x += num(widths, at);
  }
  out.y += most * HEAD_PT * 1.2 + 3;
  out.rule();
}

function cellPiece(out: PageWriter, cell: PaperCell, width: number, sizes: Sizes): Piece {
  const { box = false } = cell;
  if (box !== false) {
    return { height: BOX_PT + 3, draw: ({ x, y }) => out.box({ x, y: y + 1 }, BOX_PT, box === 'ticked') };
  }
  const { swatch } = cell;
  const inset = swatch === undefined ? 0 : SWATCH_PT + 5;
  const lines = linesPiece(out, cell.lines, width - inset, sizes);
  return {
    height: lines.height,
    draw({ x, y }) {
      if (swatch !== undefined) out.rectangle({ x, y: y + 1, width: SWATCH_PT, height: SWATCH_PT }, { hex: swatch, edge: true });
      lines.draw({ x: x + inset, y });
    },
  };
}

/** Words with a line to write on, beside each other. */
export function drawFill(out: PageWriter, words: readonly string[]): void {
  out.need(30);
  const each = (out.right - out.left) / words.length;
  for (const at of words.keys()) {
    const word = entryAt(words, at);
    const from = out.left + at * each;
    out.line(word, { x: from, y: out.y }, { soft: true });
    out.rule({ y: out.y + 16, x: from + out.widthOf(word) + 8, to: from + each - 14 });
  }
  out.y += 30;
}
