import { f64, i32, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';
import { type EdgeLengths, EdgeTally } from './edge-tally.ts';

const tally = new EdgeTally();

/**
 * Lengths of all edges of a map. Between the middles of two rows an edge that goes on
 * from one to the other between the same two cells counts by its slant; where areas differ from row
 * to row otherwise, by the stretch that differs. Exact for upright and level edges on row
 * boundaries; curves are as fine as the rows.
 * Cost O(runs).
 */
export function edgeLengths(map: CellMap): EdgeLengths {
  tally.start();
  findEdges(map);
  if (firstOf.length < tally.count * 2) firstOf = new Int32Array(tally.count * 4);
  firstOf.fill(-1, 0, tally.count * 2);
  for (let row = 0; row + 1 < map.rows; row++) {
    level(map, row);
    upright(map, row);
  }
  return tally.lengths();
}

/** The edge at the right end of each run: twice its pair, and one more when its right cell is the lower; used again by every map. */
let edgeOf = new Int32Array(4096);
/** Of each kind of edge the first run of the lower row that ends in it, and of each run the next such; −1 for none. */
let firstOf = new Int32Array(1024);
let nextOf = new Int32Array(4096);
/** Of each edge of the lower row whether it goes on from the upper. */
let paired = new Uint8Array(64);

/** Fills `edgeOf`. Above the first row's middle and below the last one's edges go straight on. */
function findEdges({ heightMm, rows, rowStart, runCell }: CellMap): void {
  const half = heightMm / rows / 2;
  if (edgeOf.length < u32(rowStart, rows)) {
    edgeOf = new Int32Array(u32(rowStart, rows) * 2);
    nextOf = new Int32Array(edgeOf.length);
  }
  for (let row = 0; row < rows; row++) {
    const last = u32(rowStart, row + 1) - 1;
    for (let run = u32(rowStart, row); run < last; run++) {
      const left = u32(runCell, run);
      const right = u32(runCell, run + 1);
      const pair = tally.pairOf(left, right);
      edgeOf[run] = pair * 2 + (left < right ? 0 : 1);
      if (row === 0) tally.lengthMm[pair] = f64(tally.lengthMm, pair) + half;
      if (row === rows - 1) tally.lengthMm[pair] = f64(tally.lengthMm, pair) + half;
    }
  }
}

/** The stretches where the cells of a row and the next differ. */
function level({ rowStart, runEndMm, runCell }: CellMap, row: number): void {
  const mid = u32(rowStart, row + 1);
  const end = u32(rowStart, row + 2);
  for (let a = u32(rowStart, row), b = mid, fromMm = 0; a < mid && b < end;) {
    const endA = f64(runEndMm, a);
    const endB = f64(runEndMm, b);
    const toMm = endA < endB ? endA : endB;
    // A stretch of no length would look like a pair that does not meet.
    if (runCell[a] !== runCell[b] && toMm > fromMm) {
      const pair = tally.pairOf(u32(runCell, a), u32(runCell, b));
      tally.lengthMm[pair] = f64(tally.lengthMm, pair) + (toMm - fromMm);
    }
    fromMm = toMm;
    if (endA <= toMm) a++;
    if (endB <= toMm) b++;
  }
}

/** Edges that go on: what `level` took as level of them is taken back for the slant. */
function upright({ rows, heightMm, rowStart, runEndMm }: CellMap, row: number): void {
  const { lengthMm } = tally;
  const height = heightMm / rows;
  const top = u32(rowStart, row);
  const mid = u32(rowStart, row + 1);
  const end = u32(rowStart, row + 2);
  list(mid, end - 1);
  if (paired.length < end - mid) paired = new Uint8Array((end - mid) * 2);
  paired.fill(0, 0, end - mid);
  for (let a = top, from = mid; a + 1 < mid; a++) {
    const edge = i32(edgeOf, a);
    const atA = f64(runEndMm, a);
    // The first of its like that is not taken.
    let b = i32(firstOf, edge);
    while (b >= 0 && b < from) b = i32(nextOf, b);
    let length = height / 2;
    if (b >= 0) {
      const atB = f64(runEndMm, b);
      const fromA = a === top ? 0 : f64(runEndMm, a - 1);
      const fromB = b === mid ? 0 : f64(runEndMm, b - 1);
      // The runs on both sides must touch their like: what slants further than its neighbours let it is another edge.
      if (fromB <= atA && fromA <= atB && atA <= f64(runEndMm, b + 1) && atB <= f64(runEndMm, a + 1)) {
        const across = atB - atA;
        length = Math.sqrt(across * across + height * height) - Math.abs(across);
        paired[b - mid] = 1;
        from = b + 1;
      }
    }
    lengthMm[edge >> 1] = f64(lengthMm, edge >> 1) + length;
  }
  for (let b = mid; b + 1 < end; b++) {
    const edge = i32(edgeOf, b);
    firstOf[edge] = -1;
    if (paired[b - mid] === 0) lengthMm[edge >> 1] = f64(lengthMm, edge >> 1) + height / 2;
  }
}

/** Puts the edges of a row into `firstOf` and `nextOf`. */
function list(from: number, to: number): void {
  for (let run = to - 1; run >= from; run--) {
    const edge = i32(edgeOf, run);
    nextOf[run] = i32(firstOf, edge);
    firstOf[edge] = run;
  }
}
