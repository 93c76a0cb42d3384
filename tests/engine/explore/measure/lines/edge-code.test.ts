import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeLengths, mapFigures, plainFigures } from '../../../../../src/engine/explore/measure/map-figures.ts';
import { buildCellMap, CellMapBuilder } from '../../../../../src/engine/stack/cell-map.ts';
import type { CellMap } from '../../../../../src/engine/stack/types.ts';
import { wanderingScreens } from '../../../stack/rows/wandering.ts';

/** Lengths by their definition: first what is level, then what goes on from row to row, each edge looked for along the whole row. */
function straightLengths({ widthMm, heightMm, rows, rowStart, runEndMm, runCell }: CellMap): Map<string, number> {
  const lengths = new Map<string, number>();
  const height = heightMm / rows;
  const add = (a: number, b: number, mm: number): void => {
    const name = `${Math.min(a, b)} ${Math.max(a, b)}`;
    lengths.set(name, (lengths.get(name) ?? 0) + mm);
  };
  const runsOf = (row: number) => {
    const ends = [...runEndMm.slice(rowStart[row], rowStart[row + 1])];
    const cells = [...runCell.slice(rowStart[row], rowStart[row + 1])];
    return ends.map((to, i) => ({ from: i === 0 ? 0 : ends[i - 1]!, to, cell: cells[i]!, next: cells[i + 1], end: ends[i + 1]! }));
  };
  const edgesOf = (row: number) => runsOf(row).slice(0, -1);
  for (const edge of [...edgesOf(0), ...edgesOf(rows - 1)]) add(edge.cell, edge.next!, height / 2);
  for (let row = 0; row + 1 < rows; row++) {
    const places = [...new Set([0, ...runsOf(row), ...runsOf(row + 1)].map((run) => (typeof run === 'number' ? run : run.to)))];
    places.sort((a, b) => a - b);
    const cellAt = (of: number, x: number): number => runsOf(of).find((run) => run.from <= x && x < run.to)!.cell;
    for (let i = 0; places[i]! < widthMm; i++) {
      const [upper, lower] = [cellAt(row, places[i]!), cellAt(row + 1, places[i]!)];
      if (upper !== lower) add(upper, lower, places[i + 1]! - places[i]!);
    }
    const lower = edgesOf(row + 1);
    const taken = new Set<number>();
    let from = 0;
    for (const edge of edgesOf(row)) {
      const like = lower.findIndex((other, i) => i >= from && other.cell === edge.cell && other.next === edge.next);
      const other = lower[like];
      const touches = other !== undefined && other.from <= edge.to && edge.from <= other.to && edge.to <= other.end && other.to <= edge.end;
      if (touches) {
        taken.add(like);
        from = like + 1;
        add(edge.cell, edge.next!, Math.hypot(other.to - edge.to, height) - Math.abs(other.to - edge.to));
      } else add(edge.cell, edge.next!, height / 2);
    }
    lower.forEach((edge, i) => taken.has(i) || add(edge.cell, edge.next!, height / 2));
  }
  return lengths;
}

const WIDTH_MM = 40;
const gridOf = (rows: number) => ({ widthMm: WIDTH_MM, heightMm: 3 * rows, rows });
const builder = new CellMapBuilder();

describe('lengths of edges', () => {
  it('should be those by definition, and all figures the same bits whichever code finds them', () => {
    let edges = 0;
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 0, max: 60 }), fc.constantFrom(1, 2, 7, 20), (seed, screens, rows) => {
        const placed = wanderingScreens(seed, screens, gridOf(rows));
        const map = buildCellMap(placed, gridOf(rows));
        const wanted = straightLengths(map);
        const figures = mapFigures(map);
        expect(plainFigures(map)).toEqual(figures);
        // A map that was built just before is read where it lies, and not when another was since.
        const own = builder.build(placed, gridOf(rows));
        expect(mapFigures(own)).toEqual(figures);
        buildCellMap([], gridOf(1));
        expect(mapFigures(own)).toEqual(figures);
        const found = figures.edges;
        expect(found.lengthMm.length).toBe(wanted.size);
        found.lengthMm.forEach((lengthMm, i) => {
          expect(Math.abs(lengthMm - wanted.get(`${found.cells[i * 2]} ${found.cells[i * 2 + 1]}`)!)).toBeLessThan(1e-9);
        });
        edges += found.lengthMm.length;
      }),
      { seed: 4, numRuns: 80 },
    );
    expect(edges).toBeGreaterThan(10_000);
  });

  it('should be those by definition where rows with many edges have nothing in common', () => {
    const ends = (row: number): number[] => Array.from({ length: 1200 }, (_, i) => ((i + 1) * WIDTH_MM) / 1201 + (row * WIDTH_MM) / 5000);
    const runs = [...ends(0), WIDTH_MM, ...ends(1), WIDTH_MM];
    const map: CellMap = {
      ...{ widthMm: WIDTH_MM, heightMm: 2, rows: 2, screens: 3, cells: 4, words: 1, cover: Uint32Array.from({ length: 4 }, (_, i) => i) },
      areaMm2: new Float64Array(4),
      rowStart: Uint32Array.of(0, 1201, 2402),
      runEndMm: Float64Array.from(runs),
      // Edges between the same cells come again and again in both rows, which never show the same cell at one place.
      runCell: Uint32Array.from(runs, (_, i) => (i < 1201 ? i % 4 : (i + 1) % 4)),
    };
    const wanted = straightLengths(map);
    const found = edgeLengths(map);
    expect(found.lengthMm.length).toBe(wanted.size);
    found.lengthMm.forEach((lengthMm, i) =>
      expect(lengthMm).toBeCloseTo(wanted.get(`${found.cells[i * 2]} ${found.cells[i * 2 + 1]}`)!, 8),
    );
  });
});
