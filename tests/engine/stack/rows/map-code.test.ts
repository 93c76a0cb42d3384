import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CellMapBuilder, copyCellMap } from '../../../../src/engine/stack/cell-map.ts';
import type { CellMap, PlacedSpans, RowGrid } from '../../../../src/engine/stack/types.ts';
import { numbersFrom } from '../fixtures.ts';

/** The map by its definition, without any hashing, order from row to row or buffers. */
function straightMap(placed: readonly PlacedSpans[], { widthMm, heightMm, rows }: RowGrid): CellMap {
  const words = Math.max(1, Math.ceil(placed.length / 32));
  const numbers = new Map([['', 0]]);
  const areaMm2 = [0];
  const [rowStart, runEndMm, runCell] = [[0], [] as number[], [] as number[]];
  for (let row = 0; row < rows; row++) {
    const events = placed.flatMap(({ spans, dxMm, rowShift }, bit) => {
      const own = row - rowShift - spans.firstRow;
      if (own < 0 || own >= spans.rows) return [];
      return Array.from(spans.xMm.slice(spans.starts[own], spans.starts[own + 1]), (x) => ({ x: x + dxMm, bit }));
    });
    const over = new Set<number>();
    const turn = (bit: number): void => void (over.delete(bit) || over.add(bit));
    for (const { bit } of events.filter(({ x }) => x <= 0)) turn(bit);
    const inside = events.filter(({ x }) => x > 0 && x < widthMm);
    const ends = [...new Set(inside.map(({ x }) => x)), widthMm].sort((a, b) => a - b);
    ends.forEach((end, i) => {
      const name = [...over].sort((a, b) => a - b).join();
      if (!numbers.has(name)) {
        numbers.set(name, numbers.size);
        areaMm2.push(0);
      }
      const cell = numbers.get(name)!;
      if (runCell.length > rowStart[row]! && runCell.at(-1) === cell) runEndMm.pop();
      else runCell.push(cell);
      runEndMm.push(end);
      areaMm2[cell]! += (end - (ends[i - 1] ?? 0)) * (heightMm / rows);
      for (const { bit } of inside.filter(({ x }) => x === end)) turn(bit);
    });
    rowStart.push(runCell.length);
  }
  const cover = new Uint32Array(numbers.size * words);
  for (const [name, cell] of numbers) {
    if (name !== '') for (const bit of name.split(',').map(Number)) cover[cell * words + (bit >> 5)]! |= 1 << (bit & 31);
  }
  return {
    ...{ widthMm, heightMm, rows, screens: placed.length, cells: numbers.size, words, cover },
    areaMm2: Float64Array.from(areaMm2),
    rowStart: Uint32Array.from(rowStart),
    runEndMm: Float64Array.from(runEndMm),
    runCell: Uint32Array.from(runCell),
  };
}

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

function wanderingScreens(seed: number, screens: number, grid: RowGrid): PlacedSpans[] {
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

describe('a map whose rows go on from one another', () => {
  it('should be the one by definition, bit for bit, whichever code builds it', () => {
    const [quick, plain] = [new CellMapBuilder(), new CellMapBuilder(true)];
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 0, max: 100 }), fc.constantFrom(1, 2, 9, 30), (seed, screens, rows) => {
        const grid = { widthMm: 40, heightMm: 70, rows };
        const placed = wanderingScreens(seed, screens, grid);
        const wanted = straightMap(placed, grid);
        expect(copyCellMap(quick.build(placed, grid))).toEqual(wanted);
        expect(copyCellMap(plain.build(placed, grid))).toEqual(wanted);
      }),
      { seed: 3, numRuns: 120 },
    );
  });
});
