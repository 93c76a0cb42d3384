import { f64, u32 } from '../../base/at.ts';
import { grownRings } from '../../geometry/offset.ts';
import { mapRings, shapeBounds } from '../../geometry/rings.ts';
import { rowSpans } from '../../geometry/row-crossings.ts';
import type { WorkBudget } from '../../geometry/work.ts';

/** A sheet that pieces are cut out of, mm. */
export interface NestSheet {
  widthMm: number;
  heightMm: number;
  /** Left free between pieces and along the edges. */
  gapMm: number;
}

/** Where a piece lies: moved there after it was turned by a quarter or not. */
export interface Nested {
  /** Index of the piece. */
  piece: number;
  /** Sheet, from 0. */
  sheet: number;
  rings: Float64Array[];
}

/** How finely places are tried, mm: pieces stand on a lattice of so much. */
const CELL_MM = 1;
/** A cell is touched only where its middle lies within half its diagonal; rounded up. */
const HALF_DIAGONAL = 0.7072;

/** The cells that a piece takes, row by row: first and one behind the last. */
interface Mask {
  rows: [number, number][][];
  wide: number;
  rings: Float64Array[];
}

/**
 * Lays pieces on sheets by their outlines, largest first, each as far up and then as far left as it goes, upright or
 * turned by a quarter; a sheet more where none has room. Cells that a piece touches count as taken, so that pieces
 * never meet. No search for the fewest sheets: a rule of thumb (bottom-left placement; common practice, no source).
 * @returns the piece's index in `misfits` where it is larger than a sheet
 */
export function nest(
  pieces: readonly (readonly Float64Array[])[],
  sheet: NestSheet,
  budget: WorkBudget,
): { nested: Nested[]; misfits: number[] } {
  const [columns, rows] = [Math.floor(sheet.widthMm / CELL_MM), Math.floor(sheet.heightMm / CELL_MM)];
  const sheets: Uint8Array[] = [];
  const nested: Nested[] = [];
  const misfits: number[] = [];
  const size = pieces.map((rings) => shapeBounds(rings));
  const order = pieces.map((_, i) => i).sort((a, b) => area(size, b) - area(size, a) || a - b);
  for (const piece of order) {
    const masks = [0, 1]
      .map((quarter) => maskOf(pieces[piece] ?? [], quarter, sheet.gapMm, budget))
      .filter(({ rows: high, wide }) => high.length <= rows && wide <= columns);
    if (masks.length === 0) {
      misfits.push(piece);
      continue;
    }
    let placed = false;
    for (let at = 0; !placed; at++) {
      const taken = sheets[at] ?? new Uint8Array(columns * rows);
      if (sheets[at] === undefined) sheets.push(taken);
      const found = masks
        .flatMap((mask) => {
          const place = firstPlace(mask, taken, columns, rows);
          return place === null ? [] : [{ mask, ...place }];
        })
        .sort((a, b) => a.row + a.mask.rows.length - (b.row + b.mask.rows.length) || a.column - b.column)[0];
      if (found === undefined) continue;
      take(found.mask, taken, columns, found);
      nested.push({ piece, sheet: at, rings: mapRings(found.mask.rings, [1, 0, 0, 1, found.column * CELL_MM, found.row * CELL_MM]) });
      placed = true;
    }
  }
  return { nested, misfits };
}

function area(size: readonly { widthMm: number; heightMm: number }[], i: number): number {
  const box = size[i];
  return box === undefined ? 0 : box.widthMm * box.heightMm;
}

/** A piece with half the gap about it, on cells, its box in the corner. */
function maskOf(piece: readonly Float64Array[], quarter: number, gapMm: number, budget: WorkBudget): Mask {
  const turned = quarter === 0 ? piece : mapRings(piece, [0, 1, -1, 0, 0, 0]);
  const about = grownRings(turned, gapMm / 2 + HALF_DIAGONAL * CELL_MM, budget);
  const box = shapeBounds(about);
  const [dx, dy] = [-box.xMm, -box.yMm];
  const {
    rows: held,
    firstRow,
    starts,
    xMm,
  } = rowSpans({ rings: mapRings(about, [1, 0, 0, 1, dx, dy]), fillRule: 'nonzero' }, { rowHeightMm: CELL_MM });
  const rows: [number, number][][] = Array.from({ length: firstRow + held }, () => []);
  for (let row = 0; row < held; row++) {
    for (let i = u32(starts, row); i < u32(starts, row + 1); i += 2) {
      const from = Math.max(0, Math.ceil(f64(xMm, i) / CELL_MM - 0.5));
      const to = Math.ceil(f64(xMm, i + 1) / CELL_MM - 0.5);
      if (to > from) rows[firstRow + row]?.push([from, to]);
    }
  }
  return { rows, wide: Math.max(0, ...rows.flat().map(([, to]) => to)), rings: mapRings(turned, [1, 0, 0, 1, dx, dy]) };
}

function firstPlace({ rows: mask, wide }: Mask, taken: Uint8Array, columns: number, rows: number): { row: number; column: number } | null {
  for (let row = 0; row + mask.length <= rows; row++) {
    for (let column = 0; column + wide <= columns;) {
      const free = freeFrom(mask, taken, columns, { row, column });
      if (free === column) return { row, column };
      column = free;
    }
  }
  return null;
}

/** The column itself where the piece has room there, else the first one worth another try. */
function freeFrom(mask: Mask['rows'], taken: Uint8Array, columns: number, { row, column }: { row: number; column: number }): number {
  for (const [down, runs] of mask.entries()) {
    const start = (row + down) * columns;
    for (const [from, to] of runs) {
      const hit = taken.subarray(start + column + from, start + column + to).lastIndexOf(1);
      if (hit >= 0) return column + hit + 1;
    }
  }
  return column;
}

function take({ rows: mask }: Mask, taken: Uint8Array, columns: number, { row, column }: { row: number; column: number }): void {
  for (const [down, runs] of mask.entries()) {
    const start = (row + down) * columns + column;
    for (const [from, to] of runs) taken.fill(1, start + from, start + to);
  }
}
