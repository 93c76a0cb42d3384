import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intersectionArea, outlineArea } from '../../../src/engine/geometry/booleans.ts';
import { pullRings } from '../../../src/engine/shapes/place/placed.ts';
import { CellMapBuilder, buildCellMap, copyCellMap } from '../../../src/engine/stack/cell-map.ts';
import { pairOverlapAreas } from '../../../src/engine/stack/overlap-areas.ts';
import { SpanCache, placedSpans } from '../../../src/engine/stack/screen-spans.ts';
import type { CellMap, Pull, RowGrid } from '../../../src/engine/stack/types.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';
import { PAPER, blobStack, numbersFrom, pullOf, screenOf, sheetShape, stackOf } from './fixtures.ts';

const gridOf = (rows: number): RowGrid => ({ widthMm: PAPER.widthMm, heightMm: PAPER.heightMm, rows });
const circle = (x: number, y: number, r: number, n = 720): number[] =>
  Array.from({ length: 2 * n }, (_, i) => (i % 2 ? y + r * Math.sin((Math.PI * (i - 1)) / n) : x + r * Math.cos((Math.PI * i) / n)));
const bars = (count: number, fromMm: number, stepMm: number): number[][] =>
  Array.from({ length: count }, (_, i) => {
    const x = fromMm + i * stepMm;
    return [x, 0, x + stepMm / 2, 0, x + stepMm / 2, 760, x, 760];
  });
const covers = (map: CellMap, cell: number, bit: number): boolean => ((map.cover[cell * map.words + (bit >> 5)]! >>> (bit & 31)) & 1) === 1;

function mapOf(studio: Studio, pulls: Pull[], rows: number): CellMap {
  return buildCellMap(placedSpans({ pulls }, studio, gridOf(rows)), gridOf(rows));
}

function checkShape(map: CellMap): void {
  const sums = new Float64Array(map.cells);
  for (let row = 0; row < map.rows; row++) {
    let from = 0;
    expect(map.rowStart[row + 1]).toBeGreaterThan(map.rowStart[row]!);
    for (let run = map.rowStart[row]!; run < map.rowStart[row + 1]!; run++) {
      expect(map.runEndMm[run]).toBeGreaterThan(from);
      if (run > map.rowStart[row]!) expect(map.runCell[run]).not.toBe(map.runCell[run - 1]);
      sums[map.runCell[run]!]! += ((map.runEndMm[run]! - from) * map.heightMm) / map.rows;
      from = map.runEndMm[run]!;
    }
    expect(from).toBe(map.widthMm);
  }
  let total = 0;
  sums.forEach((area, cell) => {
    expect(map.areaMm2[cell]).toBeCloseTo(area, 6);
    total += area;
  });
  expect(total).toBeCloseTo(map.widthMm * map.heightMm, 5);
  const names = new Set(Array.from({ length: map.cells }, (_, c) => map.cover.slice(c * map.words, (c + 1) * map.words).join()));
  expect(names.size).toBe(map.cells);
}

/** Crossing count to the right (Shimrat 1962), its own code on purpose; outlines here do not cross themselves. */
function inside(rings: readonly ArrayLike<number>[], x: number, y: number): boolean {
  let odd = false;
  for (const ring of rings) {
    for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      const [yi, yj] = [ring[i + 1]!, ring[j + 1]!];
      if (yi > y !== yj > y && x < ((ring[j]! - ring[i]!) * (y - yi)) / (yj - yi) + ring[i]!) odd = !odd;
    }
  }
  return odd;
}

describe('buildCellMap', () => {
  it('should give the lens of two circles and its parts the areas of a polygon library', () => {
    const shapes = [
      sheetShape('a', [circle(230, 380, 120)]),
      sheetShape('b', [circle(350, 400, 100)]),
      sheetShape('c', [[100, 100, 400, 100, 400, 350, 100, 350]]),
    ];
    const { studio, pulls } = stackOf(shapes, numbersFrom('circles'));
    const map = mapOf(studio, pulls, 760);
    checkShape(map);
    const pairs = pairOverlapAreas(map);
    const outlines = pulls.map((pull, i) => pullRings(studio.screens[i]!, studio.shapes, pull, studio.paper));
    for (let a = 0; a < 3; a++) {
      for (let b = 0; b < 3; b++) {
        // clipper2-ts is the outside reference; rows of 1 mm err by far less than a row over the width.
        const exact = a === b ? outlineArea(outlines[a]!) : intersectionArea(outlines[a]!, outlines[b]!);
        expect(Math.abs(pairs[a * 3 + b]! - exact)).toBeLessThan(Math.max(2, exact * 2e-3));
      }
    }
    // The lens by hand: two circular segments (textbook formula).
    const d = Math.hypot(120, 20);
    const [r1, r2] = [120, 100];
    const c1 = (d * d + r1 * r1 - r2 * r2) / (2 * d * r1);
    const c2 = (d * d + r2 * r2 - r1 * r1) / (2 * d * r2);
    const kite = Math.sqrt((-d + r1 + r2) * (d + r1 - r2) * (d - r1 + r2) * (d + r1 + r2)) / 2;
    const lens = r1 * r1 * Math.acos(c1) + r2 * r2 * Math.acos(c2) - kite;
    expect(Math.abs(pairs[1]! - lens) / lens).toBeLessThan(1e-3);
  });

  it('should keep its invariants and know the cover of random points, for any number of screens', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer(), (count, seed) => {
        const { studio, pulls } = blobStack(`cover ${seed}`, count);
        const next = numbersFrom(`probe ${seed}`);
        const laid = pulls.map((pull) => ({
          ...pull,
          dxMm: Math.round(next() * 400 - 200) / 10,
          dyMm: Math.round(next() * 400 - 200) / 10,
          turnDeg: next() < 0.3 ? next() * 90 : 0,
        }));
        const map = mapOf(studio, laid, 64);
        checkShape(map);
        expect(map.words).toBe(Math.ceil(count / 32));
        const outlines = laid.map((pull, i) => pullRings(studio.screens[i]!, studio.shapes, pull, studio.paper));
        for (let probe = 0; probe < 20; probe++) {
          const row = Math.floor(next() * 64);
          const x = next() * PAPER.widthMm;
          let run = map.rowStart[row]!;
          while (map.runEndMm[run]! <= x) run++;
          outlines.forEach((outline, bit) => {
            const y = ((row + 0.5) * PAPER.heightMm) / 64;
            expect(covers(map, map.runCell[run]!, bit)).toBe(inside(outline.rings, x, y));
          });
        }
      }),
      { seed: 11, numRuns: 25 },
    );
  });

  it('should sort rows with hundreds of edges, many at the same place or close together', () => {
    const shapes = [sheetShape('a', bars(250, 10, 2)), sheetShape('b', bars(125, 10, 4)), sheetShape('c', bars(300, 20, 1 / 64))];
    const { studio, pulls } = stackOf(shapes, numbersFrom('bars'));
    const map = mapOf(studio, pulls, 3);
    checkShape(map);
    const pairs = pairOverlapAreas(map);
    // By hand: 250 bars of 1 mm, 125 of 2 mm, every second bar of a in the first half of one of b.
    expect(pairs[0]).toBeCloseTo(250 * 760, 4);
    expect(pairs[4]).toBeCloseTo(250 * 760, 4);
    expect(pairs[1]).toBeCloseTo(125 * 760, 4);
    expect(pairs[8]).toBeCloseTo((300 / 128) * 760, 4);
  });

  it('should make one cell of bare paper when nothing is placed', () => {
    const map = buildCellMap([], gridOf(5));
    expect([map.cells, map.words, map.rowStart[5], map.areaMm2[0]]).toEqual([1, 1, 5, 560 * 760]);
  });

  it('should refuse a grid without size or rows', () => {
    for (const grid of [{ ...gridOf(4), widthMm: 0 }, gridOf(0), gridOf(2.5), { ...gridOf(3), heightMm: NaN }]) {
      expect(() => buildCellMap([], grid)).toThrow(/sheet of some size/);
    }
  });
});

describe('CellMapBuilder', () => {
  it('should give the same map from used buffers as from new ones', () => {
    const builder = new CellMapBuilder();
    for (const [seed, count, rows] of [
      ['a', 70, 90],
      ['b', 5, 40],
      ['c', 33, 64],
      ['a', 70, 90],
    ] as const) {
      const { studio, pulls } = blobStack(seed, count);
      const placed = placedSpans({ pulls }, studio, gridOf(rows));
      expect(copyCellMap(builder.build(placed, gridOf(rows)))).toEqual(buildCellMap(placed, gridOf(rows)));
    }
  });
});

describe('a stack that no memory holds', () => {
  const { studio: blobs } = blobStack('dense', 1);
  const shape = sheetShape('bars', bars(2000, 1, 550 / 2000));
  const studio: Studio = { ...blobs, shapes: [shape], screens: [screenOf('bars', 7, shape)] };
  const pulls = Array.from({ length: 80 }, (_, i) => pullOf(i, 'bars', 'ink0', { dxMm: i / 1000 }));

  it('should be refused by its edges before they are scanned to the end, naming pull and screen', () => {
    const told = /^The pulls up to pull 8, with screen 7, have more than 24 million edges side by side/;
    const before = process.memoryUsage().arrayBuffers;
    expect(() => placedSpans({ pulls }, studio, gridOf(760))).toThrow(told);
    const box = { xMm: 0, yMm: 0, widthMm: 560, heightMm: 760 };
    expect(() => new SpanCache(studio).placeInBox({ pulls }, box, 760)).toThrow(told);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(1e9);
  });

  it('should be refused by its cells, and the next map be right', () => {
    const random = numbersFrom('cells');
    // A row of its own for each: no two runs of any row are covered alike.
    const placed = Array.from({ length: 40 }, () => {
      const xMm = Float64Array.from({ length: 20_000 }, () => random() * 560).sort();
      return { spans: { firstRow: 0, rows: 1, starts: Uint32Array.of(0, xMm.length), xMm }, dxMm: 0, rowShift: 0 };
    });
    const builder = new CellMapBuilder();
    expect(() => builder.build(placed, gridOf(1))).toThrow(/^The pulls part the sheet into more than 400 thousand kinds of overprint/);
    const next = blobStack('after', 9);
    const after = placedSpans({ pulls: next.pulls }, next.studio, gridOf(50));
    expect(copyCellMap(builder.build(after, gridOf(50)))).toEqual(buildCellMap(after, gridOf(50)));
  });
});

describe('SpanCache', () => {
  const bytesOf = ({ buffer, byteOffset, byteLength }: Float64Array | Uint32Array) => Buffer.from(buffer, byteOffset, byteLength);

  it('should shift kept spans to where scanning the shifted outlines puts them', () => {
    const { studio, pulls } = blobStack('shift', 6);
    const cache = new SpanCache(studio);
    const grid = gridOf(256);
    cache.place({ pulls }, grid);
    fc.assert(
      fc.property(
        fc.integer({ min: -900, max: 900 }),
        fc.integer({ min: -900, max: 900 }),
        fc.constantFrom(0, 90, 33.3),
        (dx, dy, turnDeg) => {
          const moved = pulls.map((pull) => ({ ...pull, dxMm: dx / 10, dyMm: dy / 10, turnDeg }));
          const map = buildCellMap(cache.place({ pulls: moved }, grid), grid);
          const shapes = moved.map((pull, i) => {
            const outline = pullRings(studio.screens[i]!, studio.shapes, pull, studio.paper);
            return sheetShape(
              `m${i}`,
              outline.rings.map((ring) => [...ring]),
            );
          });
          const anew = { ...studio, shapes, screens: shapes.map((shape, i) => screenOf(`s${i}`, i + 1, shape)) };
          const other = buildCellMap(placedSpans({ pulls }, anew, grid), grid);
          expect(map.rowStart).toEqual(other.rowStart);
          expect(map.runCell).toEqual(other.runCell);
          map.runEndMm.forEach((end, i) => expect(Math.abs(end - other.runEndMm[i]!)).toBeLessThan(1e-6));
        },
      ),
      { seed: 5, numRuns: 15 },
    );
  });

  it('should place a screen as one without it does, also after it was full and began anew', () => {
    // A lay of these bars at 700 rows has some 127,000 values: four fill the cache, of which none came again, and one from then on.
    const shape = sheetShape('bars', bars(90, 10, 4));
    const studio = { ...blobStack('full', 1).studio, shapes: [shape], screens: [screenOf('s0', 1, shape)] };
    const cache = new SpanCache(studio);
    const scanned = new Set<unknown>();
    for (const tenths of [0, 1, 2, 3, 4, 5, 5, 4, 0]) {
      const pulls = [pullOf(0, 's0', 'ink0', { dyMm: tenths / 10 })];
      const [placed] = cache.place({ pulls }, gridOf(700));
      const [anew] = placedSpans({ pulls }, studio, gridOf(700));
      expect({ ...placed, spans: null }).toEqual({ ...anew, spans: null });
      for (const list of ['xMm', 'starts'] as const)
        expect(Buffer.compare(bytesOf(placed!.spans[list]), bytesOf(anew!.spans[list]))).toBe(0);
      scanned.add(placed!.spans);
    }
    // Told by what is scanned anew: all but the second of two alike.
    expect(scanned.size).toBe(8);
  });

  it('should say which pull has an unknown screen or no finite lay', () => {
    const { studio } = blobStack('bad', 1);
    expect(() => placedSpans({ pulls: [pullOf(0, 'gone', 'ink0')] }, studio, gridOf(8))).toThrow(/Pull 1 uses the screen 'gone'/);
    expect(() => placedSpans({ pulls: [pullOf(0, 's0', 'ink0', { dyMm: NaN })] }, studio, gridOf(8))).toThrow(/dyMm = NaN/);
  });
});
