import { f64, i32, u32 } from '../../base/at.ts';
import type { CellMap, PlacedSpans } from '../../stack/types.ts';

/** A map with one more placed screen over it. */
export interface Overlay {
  /** Its cells are covered by the new screen (bit 0 of `cover`) or not. */
  map: CellMap;
  /** For each of its cells, the cell of the map below. */
  below: Uint32Array;
}

/** Where the placed screen begins and ends in a row, and whether it covers the row's left edge. */
interface RowEdges {
  xMm: Float64Array;
  count: number;
  inside: boolean;
}

/**
 * Lays one placed screen over a map, run by run, so that what is known of the map's cells is known of the
 * new ones too.
 * @param placed scanned in rows of the map's height
 * Cost O(runs + crossings).
 */
export function overlay(ground: CellMap, placed: PlacedSpans): Overlay {
  const laying = new Laying(ground);
  const edges: RowEdges = { xMm: new Float64Array(16), count: 0, inside: false };
  for (let row = 0; row < ground.rows; row++) {
    readEdges(placed, row, ground.widthMm, edges);
    laying.row(row, edges);
  }
  return laying.done();
}

function readEdges({ spans, dxMm, rowShift }: PlacedSpans, row: number, widthMm: number, edges: RowEdges): void {
  edges.count = 0;
  edges.inside = false;
  const own = row - rowShift - spans.firstRow;
  if (own < 0 || own >= spans.rows) return;
  const end = u32(spans.starts, own + 1);
  for (let at = u32(spans.starts, own); at < end; at++) {
    const x = f64(spans.xMm, at) + dxMm;
    if (x >= widthMm) return;
    if (x <= 0) {
      edges.inside = !edges.inside;
      continue;
    }
    if (edges.count === edges.xMm.length) {
      const more = new Float64Array(edges.count * 2);
      more.set(edges.xMm);
      edges.xMm = more;
    }
    edges.xMm[edges.count++] = x;
  }
}

/** The new map while it grows, row by row. */
class Laying {
  private readonly ground: CellMap;
  /** New cell of each cell below, uncovered and covered; −1 where there is none yet. */
  private readonly cellOf: Int32Array;
  private readonly below: number[] = [];
  private readonly cover: number[] = [];
  private readonly areaMm2: number[] = [];
  private readonly rowStart: Uint32Array;
  private runEndMm: Float64Array;
  private runCell: Uint32Array;
  private runs = 0;

  constructor(ground: CellMap) {
    this.ground = ground;
    this.cellOf = new Int32Array(ground.cells * 2).fill(-1);
    this.rowStart = new Uint32Array(ground.rows + 1);
    const expected = u32(ground.rowStart, ground.rows) * 2;
    this.runEndMm = new Float64Array(expected);
    this.runCell = new Uint32Array(expected);
  }

  row(row: number, edges: RowEdges): void {
    const { ground, rowStart } = this;
    const heightMm = ground.heightMm / ground.rows;
    rowStart[row] = this.runs;
    const first = this.runs;
    let edge = 0;
    let { inside } = edges;
    let fromMm = 0;
    const end = u32(ground.rowStart, row + 1);
    for (let run = u32(ground.rowStart, row); run < end;) {
      const runEnd = f64(ground.runEndMm, run);
      const next = edge < edges.count ? f64(edges.xMm, edge) : Infinity;
      const toMm = Math.min(runEnd, next);
      if (toMm > fromMm) this.emit(first, toMm, this.cell(u32(ground.runCell, run), inside, (toMm - fromMm) * heightMm));
      fromMm = toMm;
      if (next <= toMm) {
        inside = !inside;
        edge++;
      }
      if (runEnd <= toMm) run++;
    }
    rowStart[row + 1] = this.runs;
  }

  private cell(below: number, inside: boolean, areaMm2: number): number {
    const at = below * 2 + (inside ? 1 : 0);
    let cell = i32(this.cellOf, at);
    if (cell < 0) {
      this.cellOf[at] = cell = this.below.length;
      this.below.push(below);
      this.cover.push(inside ? 1 : 0);
      this.areaMm2.push(0);
    }
    this.areaMm2[cell] = (this.areaMm2[cell] ?? 0) + areaMm2;
    return cell;
  }

  private emit(first: number, toMm: number, cell: number): void {
    if (this.runs > first && this.runCell[this.runs - 1] === cell) this.runs--;
    if (this.runs === this.runEndMm.length) {
      const [ends, cells] = [new Float64Array(this.runs * 2 + 16), new Uint32Array(this.runs * 2 + 16)];
      ends.set(this.runEndMm);
      cells.set(this.runCell);
      this.runEndMm = ends;
      this.runCell = cells;
    }
    this.runEndMm[this.runs] = toMm;
    this.runCell[this.runs++] = cell;
  }

  done(): Overlay {
    const { widthMm, heightMm, rows } = this.ground;
    const map: CellMap = {
      widthMm,
      heightMm,
      rows,
      screens: 1,
      cells: this.below.length,
      words: 1,
      cover: Uint32Array.from(this.cover),
      areaMm2: Float64Array.from(this.areaMm2),
      rowStart: this.rowStart,
      runEndMm: this.runEndMm,
      runCell: this.runCell,
    };
    return { map, below: Uint32Array.from(this.below) };
  }
}
