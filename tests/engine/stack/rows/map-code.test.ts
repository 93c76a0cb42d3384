import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CellMapBuilder, copyCellMap } from '../../../../src/engine/stack/cell-map.ts';
import type { CellMap, PlacedSpans, RowGrid } from '../../../../src/engine/stack/types.ts';
import { wanderingScreens } from './wandering.ts';

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
