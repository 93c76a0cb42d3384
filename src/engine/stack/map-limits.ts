import { EngineError } from '../base/error.ts';
import type { RowSpans } from '../geometry/row-crossings.ts';
import { say } from '../words/en/stack/stack.ts';

/** Edges that the pulls of one map may have on all its rows: some 800 MB with the runs between them and a copy. */
const MOST_EDGES = 24_000_000;
/** Cells of one map: their films and colours take some kB each. */
const MOST_CELLS = 400_000;
/** Runs are the edges, and one more a row. */
const MOST_RUNS = MOST_EDGES + 2 ** 17;
/** How much the buffers of a map grow at once, as a factor. */
const GROWTH = 2;

/**
 * Counts the edges of a map's pulls as they are placed, so that memory is bounded before it is taken.
 * @param edges of the pulls before this one
 * @param screen number of the screen that this pull is pulled with
 * @returns the edges with this pull's
 * @throws EngineError 'stack.too-many-edges'
 */
export function edgesWith(edges: number, { xMm }: RowSpans, pull: number, screen: number | undefined): number {
  const all = edges + xMm.length;
  if (all <= MOST_EDGES) return all;
  throw new EngineError('stack.too-many-edges', say.pullsUpToPull(pull + 1, screen ?? '?', MOST_EDGES / 1e6), { path: ['pulls', pull] });
}

/** Room for at least so many runs. @param wanted at most MOST_RUNS where `edgesWith` has counted */
export function roomForRuns(wanted: number): number {
  return Math.max(wanted, Math.min(wanted * GROWTH, MOST_RUNS));
}

/**
 * Room for more cells than a map had.
 * @param had the room that is full
 * @throws EngineError 'stack.too-many-cells' when that is all that a map may have
 */
export function roomForCells(had: number): number {
  if (had < MOST_CELLS) return Math.min(had * GROWTH, MOST_CELLS);
  throw new EngineError('stack.too-many-cells', say.pullsPartSheetInto(MOST_CELLS / 1000), { path: ['pulls'] });
}
