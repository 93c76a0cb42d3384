import { defined, f64, u32 } from '../../base/at.ts';
import { deltaE2000At } from '../../colour/delta-e.ts';
import type { CellMap } from '../../stack/types.ts';

/** Edges between areas of different colour. */
export interface EdgeMeasure {
  /** Length of all edges that show, mm. */
  lengthMm: number;
  /** Length × ΔE00 across the edge, ΔE·mm. */
  contrast: number;
}

/** Edges with less contrast than this do not show, ΔE00; rounding stays far below. */
const LEAST_DELTA_E = 0.01;

/** How long the edges between each two cells are; the same for every colouring of a map. */
export interface EdgeLengths {
  /** Two cells, the lower number first, for each pair that meets. */
  cells: Uint32Array;
  /** One a pair, mm. */
  lengthMm: Float64Array;
}

/**
 * Length and contrast of all edges of a print.
 * @param lab cells × 3, what each cell shows
 * @param edges of this map, when they are known already
 */
export function edgeMeasure(map: CellMap, lab: Float64Array, edges = edgeLengths(map)): EdgeMeasure {
  const sum: EdgeMeasure = { lengthMm: 0, contrast: 0 };
  for (let i = 0; i < edges.lengthMm.length; i++) {
    const a = u32(edges.cells, i * 2) * 3;
    const b = u32(edges.cells, i * 2 + 1) * 3;
    const contrast = deltaE2000At(lab, a, lab, b);
    if (contrast < LEAST_DELTA_E) continue;
    sum.lengthMm += f64(edges.lengthMm, i);
    sum.contrast += f64(edges.lengthMm, i) * contrast;
  }
  return sum;
}

/**
 * Lengths of all edges of a map. Between the middles of two rows an edge that goes on
 * from one to the other between the same two cells counts by its slant; where areas differ from row
 * to row otherwise, by the stretch that differs. Exact for upright and level edges on row
 * boundaries; curves are as fine as the rows.
 * Cost O(runs).
 */
export function edgeLengths(map: CellMap): EdgeLengths {
  const height = map.heightMm / map.rows;
  const { add, pairs } = tally(map.cells);
  // Above the first row's middle and below the last one's edges go straight on.
  for (const row of [0, map.rows - 1]) {
    for (let run = u32(map.rowStart, row) + 1; run < u32(map.rowStart, row + 1); run++) {
      add(height / 2, u32(map.runCell, run - 1), u32(map.runCell, run));
    }
  }
  for (let row = 0; row + 1 < map.rows; row++) between(map, row, height, add);
  return pairs();
}

/** Which edges of the lower row go on from the upper; used again by every pair of rows. */
let paired = new Uint8Array(64);
/** Lengths of pairs of cells, 0 where they do not meet; used again by every map with few cells. */
let table = new Float64Array(0);
const MOST_TABLE_CELLS = 1024;

type Add = (lengthMm: number, a: number, b: number) => void;

function between(map: CellMap, row: number, height: number, add: Add): void {
  const { rowStart, runEndMm, runCell } = map;
  const [top, mid, end] = [u32(rowStart, row), u32(rowStart, row + 1), u32(rowStart, row + 2)];
  // The stretches where the cells of the two rows differ.
  for (let a = top, b = mid, fromMm = 0; a < mid && b < end;) {
    const toMm = Math.min(f64(runEndMm, a), f64(runEndMm, b));
    if (u32(runCell, a) !== u32(runCell, b)) add(toMm - fromMm, u32(runCell, a), u32(runCell, b));
    fromMm = toMm;
    if (f64(runEndMm, a) <= toMm) a++;
    if (f64(runEndMm, b) <= toMm) b++;
  }
  // Edges that go on: the level part above is taken back for the slant.
  let from = mid;
  if (paired.length < end - mid) paired = new Uint8Array((end - mid) * 2);
  paired.fill(0, 0, end - mid);
  for (let a = top; a + 1 < mid; a++) {
    let b = from;
    while (b + 1 < end && (u32(runCell, b) !== u32(runCell, a) || u32(runCell, b + 1) !== u32(runCell, a + 1))) b++;
    // What slants further than an edge of its neighbours lets it is another edge.
    if (b + 1 < end && overlapsAcross(map, a, b)) {
      const level = Math.abs(f64(runEndMm, b) - f64(runEndMm, a));
      add(Math.sqrt(level * level + height * height) - level, u32(runCell, a), u32(runCell, a + 1));
      paired[b - mid] = 1;
      from = b + 1;
    } else {
      add(height / 2, u32(runCell, a), u32(runCell, a + 1));
    }
  }
  for (let b = mid; b + 1 < end; b++) if (paired[b - mid] === 0) add(height / 2, u32(runCell, b), u32(runCell, b + 1));
}

/** Whether the runs on both sides of edges a and b touch their like in the other row. */
function overlapsAcross(map: CellMap, a: number, b: number): boolean {
  const { runEndMm } = map;
  const start = (run: number): number => (startsRow(map, run) ? 0 : f64(runEndMm, run - 1));
  return (
    Math.max(start(a), start(b)) <= Math.min(f64(runEndMm, a), f64(runEndMm, b)) &&
    Math.max(f64(runEndMm, a), f64(runEndMm, b)) <= Math.min(f64(runEndMm, a + 1), f64(runEndMm, b + 1))
  );
}

function startsRow(map: CellMap, run: number): boolean {
  // A run whose predecessor ends at the sheet's right edge begins a row.
  return run === 0 || f64(map.runEndMm, run - 1) >= map.widthMm;
}

/** Adds lengths up by pairs of cells. */
function tally(cells: number): { add: Add; pairs: () => EdgeLengths } {
  const small = cells <= MOST_TABLE_CELLS;
  if (small && table.length < cells * cells) table = new Float64Array(cells * cells);
  const sums = small ? table.fill(0, 0, cells * cells) : null;
  const rest = new Map<number, number>();
  const met: number[] = [];
  const add: Add = (lengthMm, a, b) => {
    // No length would make no difference, and look like a pair that does not meet.
    if (!(lengthMm > 0)) return;
    const at = a < b ? a * cells + b : b * cells + a;
    if (sums === null) rest.set(at, (rest.get(at) ?? 0) + lengthMm);
    else {
      if (sums[at] === 0) met.push(at);
      sums[at] = f64(sums, at) + lengthMm;
    }
  };
  const pairs = (): EdgeLengths => {
    const keys = sums === null ? [...rest.keys()] : met;
    const out: EdgeLengths = { cells: new Uint32Array(keys.length * 2), lengthMm: new Float64Array(keys.length) };
    keys.forEach((at, i) => {
      out.cells[i * 2] = Math.floor(at / cells);
      out.cells[i * 2 + 1] = at % cells;
      out.lengthMm[i] = sums === null ? defined(rest.get(at)) : f64(sums, at);
    });
    return out;
  };
  return { add, pairs };
}
