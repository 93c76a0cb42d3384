import { entryAt, num } from '../../engine/base/at.ts';
import type { PageWriter, TextStyle } from './page-writer.ts';

/** A column: what stands over it, and how wide it is, points; the last takes what the others leave. */
export interface Column {
  head: string;
  width: number;
  bold?: boolean;
  /** A box to tick; a cell with any text is ticked. */
  box?: boolean;
}

const GAP_PT = 8;
const BOX_PT = 10;

/** A table whose cells wrap; its head stands again on every page. */
export function wrappedTable(out: PageWriter, columns: readonly Column[], rows: readonly (readonly string[])[], size = 10.5): void {
  const left = out.right - out.left - columns.reduce((sum, { width }) => sum + width, 0);
  const widths = columns.map(({ width }, i) => (i === columns.length - 1 ? width + left : width));
  const step = size * 1.32;
  const put = (cells: readonly string[][], style: (at: number) => TextStyle): void => {
    let x = out.left;
    for (const [at, lines] of cells.entries()) {
      for (const [i, line] of lines.entries()) out.line(line, { x, y: out.y + i * step }, { ...style(at), most: num(widths, at) - GAP_PT });
      x += num(widths, at);
    }
  };
  const heads = columns.some(({ head }) => head !== '');
  const head = (): void => {
    if (!heads) return;
    put(
      columns.map((column) => [column.head]),
      () => ({ size: 9, soft: true }),
    );
    out.y += 14;
    out.rule();
  };
  out.need(50);
  head();
  for (const row of rows) {
    const boxed = (at: number): boolean => entryAt(columns, at).box === true;
    const cells = row.map((cell, at) =>
      boxed(at) ? [] : out.lines(cell, num(widths, at) - GAP_PT, { size, bold: entryAt(columns, at).bold === true }),
    );
    const height = Math.max(1, ...cells.map((lines) => lines.length)) * step + 6;
    if (out.room < height) {
      out.newPage();
      head();
    }
    out.y += 3;
    put(cells, (at) => ({ size, bold: entryAt(columns, at).bold === true }));
    for (const [at, text] of row.entries()) {
      const before = widths.slice(0, at).reduce((sum, width) => sum + width, 0);
      if (boxed(at)) out.box({ x: out.left + before, y: out.y + 1 }, BOX_PT, text !== '');
    }
    out.y += height - 3;
    out.rule();
  }
  out.y += 4;
}
