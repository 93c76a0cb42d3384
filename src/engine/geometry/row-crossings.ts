import { f64, i32, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/geometry/geometry.ts';
import type { SpanRoom } from './span-room.ts';
import type { Outline, Ring } from './types.ts';

/** Rows of equal height; row r's middle lies at topMm + (r + ½) · rowHeightMm. */
export interface RowLattice {
  rowHeightMm: number;
  /** Top edge of row 0, mm; 0 when left out. */
  topMm?: number;
  /** First row that is wanted; may be negative. All rows when left out. */
  firstRow?: number;
  /** The row after the last that is wanted. All rows when left out. */
  endRow?: number;
}

/** Where an outline is filled, row by row, at the rows' middles. Rows that it misses are not held. */
export interface RowSpans {
  /** Lattice row of the first held row; may be negative. */
  firstRow: number;
  /** Number of held rows. */
  rows: number;
  /** rows + 1 indexes into `xMm`; a row holds an even number of values. */
  starts: Uint32Array;
  /** enter, leave, enter, leave, …, mm, ascending in a row; a span holds enter ≤ x < leave. */
  xMm: Float64Array;
}

/** More crossings than this in one outline are refused: about 1 GB of scratch. */
const MAX_CROSSINGS = 40_000_000;
/** Rows beyond this lie on no sheet; also keeps row numbers inside 32 bits. */
const ROW_LIMIT = 2 ** 29;

// Scratch that only grows; every call leaves nothing behind in it that the next one reads.
let vertexX = new Float64Array(1024);
let vertexY = new Float64Array(1024);
let vertexRow = new Int32Array(1024);
let crossX = new Float64Array(4096);
let crossTurn = new Int8Array(4096);
let rowCursor = new Int32Array(1024);

/**
 * Where an outline is filled on every row of a lattice: the interior spans at the rows' middles.
 * A vertex belongs to the first row whose middle is at or below it, whichever edge asks, so that a
 * ring crosses every row an even number of times and no row can leak, vertices on a middle included.
 * @param outline rings in mm, y down; open ends are joined; rings of fewer than two points fill nothing
 * @param lattice the rows; `firstRow` and `endRow` bound the work when only a part is wanted
 * @param room where the lists lie, when many are kept; else they have buffers of their own
 * @returns spans under the outline's fill rule; empty spans are dropped and touching ones joined
 * @throws EngineError 'geometry.not-finite' for a coordinate or row height that is no usable number,
 *   'geometry.too-many-crossings' above 40 million crossings
 * Cost O(points + crossings), plus sorting within each row.
 */
export function rowSpans(outline: Outline, lattice: RowLattice, room?: SpanRoom): RowSpans {
  const { rowHeightMm, topMm = 0 } = lattice;
  if (!(rowHeightMm > 0) || !Number.isFinite(rowHeightMm) || !Number.isFinite(topMm)) {
    throw new EngineError('geometry.not-finite', say.rowsNeedHeightAbove(rowHeightMm, topMm));
  }
  const firstWanted = Math.max(lattice.firstRow ?? -ROW_LIMIT, -ROW_LIMIT);
  const endWanted = Math.max(firstWanted, Math.min(lattice.endRow ?? ROW_LIMIT, ROW_LIMIT));

  const points = loadVertices(outline, { topMm, rowHeightMm, firstRow: firstWanted, endRow: endWanted });
  let firstRow = endWanted;
  let endRow = firstWanted;
  for (let i = 0; i < points; i++) {
    const row = i32(vertexRow, i);
    if (row < firstRow) firstRow = row;
    if (row > endRow) endRow = row;
  }
  const rows = Math.max(0, endRow - firstRow);
  if (rows === 0) return { firstRow: 0, rows: 0, starts: new Uint32Array(1), xMm: new Float64Array(0) };

  const total = countCrossings(outline, firstRow, rows);
  if (total > crossX.length) {
    crossX = new Float64Array(total * 2);
    crossTurn = new Int8Array(total * 2);
  }
  fillCrossings(outline, firstRow, topMm, rowHeightMm);
  return collapse(firstRow, rows, outline.fillRule === 'evenodd', room);
}

/** Copies all rings into scratch and finds each vertex's row; returns the number of vertices. */
function loadVertices(outline: Outline, wanted: Required<RowLattice>): number {
  const { topMm, rowHeightMm, firstRow, endRow } = wanted;
  let points = 0;
  for (const ring of outline.rings) points += ring.length >> 1;
  if (points > vertexX.length) {
    vertexX = new Float64Array(points * 2);
    vertexY = new Float64Array(points * 2);
    vertexRow = new Int32Array(points * 2);
  }
  let from = 0;
  for (const ring of outline.rings) {
    const end = from + (ring.length >> 1);
    copyVertices(ring, from, end);
    for (let at = from; at < end; at++) {
      const x = f64(vertexX, at);
      const y = f64(vertexY, at);
      // x − x is 0 only for finite x.
      if (x - x !== 0 || y - y !== 0) {
        throw new EngineError('geometry.not-finite', say.pointOfOutlineIs(at - from + 1, x, y));
      }
      const row = Math.ceil((y - topMm) / rowHeightMm - 0.5);
      vertexRow[at] = row < firstRow ? firstRow : row > endRow ? endRow : row;
    }
    from = end;
  }
  return points;
}

/** Mostly rings are Float64Arrays; read with others in one loop, each of their numbers would go on the heap. */
function copyVertices(ring: Ring, from: number, end: number): void {
  if (ring instanceof Float64Array) {
    for (let at = from, i = 0; at < end; at++, i += 2) {
      vertexX[at] = f64(ring, i);
      vertexY[at] = f64(ring, i + 1);
    }
    return;
  }
  for (let at = from, i = 0; at < end; at++, i += 2) {
    vertexX[at] = num(ring, i);
    vertexY[at] = num(ring, i + 1);
  }
}

/** Leaves in `rowCursor` where each row's crossings begin; returns how many there are in all. */
function countCrossings(outline: Outline, firstRow: number, rows: number): number {
  if (rows + 2 > rowCursor.length) rowCursor = new Int32Array(rows * 2 + 2);
  const cursor = rowCursor;
  cursor.fill(0, 0, rows + 2);
  let base = 0;
  for (const ring of outline.rings) {
    const count = ring.length >> 1;
    for (let i = 0; i < count; i++) {
      const a = i32(vertexRow, base + i) - firstRow;
      const b = i32(vertexRow, base + (i + 1 === count ? 0 : i + 1)) - firstRow;
      if (a < b) {
        cursor[a] = i32(cursor, a) + 1;
        cursor[b] = i32(cursor, b) - 1;
      } else if (b < a) {
        cursor[b] = i32(cursor, b) + 1;
        cursor[a] = i32(cursor, a) - 1;
      }
    }
    base += count;
  }
  let here = 0;
  let total = 0;
  for (let row = 0; row <= rows; row++) {
    here += i32(cursor, row);
    cursor[row] = total;
    total += here;
    if (total > MAX_CROSSINGS) {
      throw new EngineError('geometry.too-many-crossings', say.outlineCrossesRowsMore(MAX_CROSSINGS));
    }
  }
  return total;
}

/** Fills crossings row by row, unsorted; `rowCursor` ends at the end of each row. */
function fillCrossings(outline: Outline, firstRow: number, topMm: number, rowHeightMm: number): void {
  let base = 0;
  for (const ring of outline.rings) {
    const count = ring.length >> 1;
    for (let i = 0; i < count; i++) {
      const p = base + i;
      const q = base + (i + 1 === count ? 0 : i + 1);
      const down = i32(vertexRow, p) < i32(vertexRow, q);
      // Always from the upper end, so that two shapes sharing an edge get the same crossings.
      const upper = down ? p : q;
      const lower = down ? q : p;
      const from = i32(vertexRow, upper) - firstRow;
      const to = i32(vertexRow, lower) - firstRow;
      if (from === to) continue;
      const x0 = f64(vertexX, upper);
      const y0 = f64(vertexY, upper);
      const x1 = f64(vertexX, lower);
      const slope = (x1 - x0) / (f64(vertexY, lower) - y0);
      const least = x0 < x1 ? x0 : x1;
      const most = x0 < x1 ? x1 : x0;
      const turn = down ? 1 : -1;
      for (let row = from; row < to; row++) {
        const at = i32(rowCursor, row);
        rowCursor[row] = at + 1;
        const x = x0 + (topMm + (firstRow + row + 0.5) * rowHeightMm - y0) * slope;
        // On a nearly level edge the last bit of y is worth millimetres of x: stay on the edge.
        crossX[at] = x < least ? least : x > most ? most : x;
        crossTurn[at] = turn;
      }
    }
    base += count;
  }
}

/** Sorts each row and keeps the ends of its filled stretches. */
function collapse(firstRow: number, rows: number, evenOdd: boolean, room: SpanRoom | undefined): RowSpans {
  const starts = room?.wordList(rows + 1) ?? new Uint32Array(rows + 1);
  let out = 0;
  let from = 0;
  for (let row = 0; row < rows; row++) {
    const to = i32(rowCursor, row);
    sortCrossings(from, to);
    const rowOut = out;
    let winding = 0;
    for (let i = from; i < to; i++) {
      const x = f64(crossX, i);
      const before = evenOdd ? winding & 1 : winding;
      winding += num(crossTurn, i);
      const after = evenOdd ? winding & 1 : winding;
      if ((before === 0) === (after === 0)) continue;
      // A leave that meets the next enter joins the two spans; an enter that meets its own leave vanishes.
      if (out > rowOut && crossX[out - 1] === x) out--;
      // Writing below the reading place: out never overtakes i.
      else crossX[out++] = x;
    }
    from = to;
    starts[row + 1] = out;
  }
  if (room === undefined) return { firstRow, rows, starts, xMm: crossX.slice(0, out) };
  const xMm = room.realList(out);
  xMm.set(crossX.subarray(0, out));
  return { firstRow, rows, starts, xMm };
}

/** Shell sort of the crossings [from, to): an insertion sort for the usual few, safe for many. */
function sortCrossings(from: number, to: number): void {
  const count = to - from;
  let gap = 1;
  if (count > 24) while (gap < count / 9) gap = 3 * gap + 1;
  for (; gap > 0; gap = (gap - 1) / 3) {
    for (let i = from + gap; i < to; i++) {
      const x = f64(crossX, i);
      const turn = num(crossTurn, i);
      let j = i - gap;
      while (j >= from && f64(crossX, j) > x) {
        crossX[j + gap] = f64(crossX, j);
        crossTurn[j + gap] = num(crossTurn, j);
        j -= gap;
      }
      crossX[j + gap] = x;
      crossTurn[j + gap] = turn;
    }
  }
}
