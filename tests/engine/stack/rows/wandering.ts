import type { PlacedSpans, RowGrid } from '../../../../src/engine/stack/types.ts';
import { numbersFrom } from '../fixtures.ts';

/** Spans whose edges wander from row to row, begin, end, touch and lie on a coarse grid of places, so that many coincide. */
function wanderingSpans(next: () => number, rows: number, widthMm: number): PlacedSpans {
  const grain = next() < 0.5 ? 1 : 1 / 64;
  const held = 1 + Math.floor(next() * rows);
  const lists: number[][] = [];
  let edges = Array.from({ length: 2 * Math.floor(next() * 4) }, () => next() * widthMm);
  for (let row = 0; row < held; row++) {
    edges = edges.map((x) => x + (next() - 0.5) * 6);
    if (next() < 0.2) edges.push(...[next(), next()].map((at) => at * 1.4 * widthMm - 0.2 * widthMm));
    if (next() < 0.2) edges.splice(Math.floor(next() * edges.length), 2);
    if (edges.length % 2 === 1) edges.pop();
    lists.push(edges.map((x) => Math.round(x / grain) * grain).sort((a, b) => a - b));
  }
  const starts = Uint32Array.from({ length: held + 1 }, (_, row) => lists.slice(0, row).reduce((sum, list) => sum + list.length, 0));
  const firstRow = Math.floor(next() * rows * 1.5 - rows / 2);
  return { spans: { firstRow, rows: held, starts, xMm: Float64Array.from(lists.flat()) }, dxMm: Math.floor(next() * 8) - 4, rowShift: 1 };
}

/** Random placed screens whose rows go on from one another, some pulled twice. */
export function wanderingScreens(seed: number, screens: number, grid: RowGrid): PlacedSpans[] {
  const next = numbersFrom(`wandering ${seed}`);
  const placed: PlacedSpans[] = [];
  while (placed.length < screens) {
    const before = placed[Math.floor(next() * placed.length)];
    // Some screens are pulled twice, in the same place or aside.
    if (before !== undefined && next() < 0.2) placed.push({ ...before, dxMm: before.dxMm + Math.floor(next() * 2) });
    else placed.push(wanderingSpans(next, grid.rows, grid.widthMm));
  }
  return placed;
}
