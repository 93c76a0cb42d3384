import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowSpans } from '../../../src/engine/geometry/row-crossings.ts';
import { SpanRoom } from '../../../src/engine/geometry/span-room.ts';
import type { FillRule } from '../../../src/engine/geometry/types.ts';

const rect = (x: number, y: number, w: number, h: number): number[] => [x, y, x + w, y, x + w, y + h, x, y + h];
const rowOf = (spans: ReturnType<typeof rowSpans>, row: number): number[] => {
  const own = row - spans.firstRow;
  if (own < 0 || own >= spans.rows) return [];
  return [...spans.xMm.subarray(spans.starts[own]!, spans.starts[own + 1]!)];
};

/** Winding number by the textbook crossing walk (Sunday, 2001), its own code on purpose. */
function windingAt(rings: number[][], x: number, y: number): number {
  let winding = 0;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 2) {
      const [x0, y0] = [ring[i]!, ring[i + 1]!];
      const [x1, y1] = [ring[(i + 2) % ring.length]!, ring[(i + 3) % ring.length]!];
      const left = (x1 - x0) * (y - y0) - (x - x0) * (y1 - y0);
      if (y0 <= y && y1 > y && left > 0) winding++;
      else if (y0 > y && y1 <= y && left < 0) winding--;
    }
  }
  return winding;
}

describe('rowSpans', () => {
  it('should give the two sides of a rectangle on every row whose middle it holds', () => {
    const spans = rowSpans({ rings: [rect(2, 1, 5, 3)], fillRule: 'nonzero' }, { rowHeightMm: 1 });
    expect([spans.firstRow, spans.rows]).toEqual([1, 3]);
    for (const row of [1, 2, 3]) expect(rowOf(spans, row)).toEqual([2, 7]);
  });

  it('should count an edge on a row middle once where two shapes meet', () => {
    const upper = rowSpans({ rings: [rect(0, 0, 4, 2.5)], fillRule: 'nonzero' }, { rowHeightMm: 1 });
    const lower = rowSpans({ rings: [rect(0, 2.5, 4, 2)], fillRule: 'nonzero' }, { rowHeightMm: 1 });
    expect(upper.firstRow + upper.rows).toBe(2);
    expect(lower.firstRow).toBe(2);
  });

  it('should keep a hole by even-odd and fill it by nonzero when both rings turn alike', () => {
    const rings = [rect(0, 0, 10, 10), rect(3, 3, 4, 4)];
    const at = (fillRule: FillRule): number[] => rowOf(rowSpans({ rings, fillRule }, { rowHeightMm: 1 }), 5);
    expect(at('evenodd')).toEqual([0, 3, 7, 10]);
    expect(at('nonzero')).toEqual([0, 10]);
  });

  it('should join touching spans and drop empty ones', () => {
    const rings = [rect(0, 0, 4, 4), rect(4, 0, 4, 4), [9, 0, 9, 4, 9, 0]];
    expect(rowOf(rowSpans({ rings, fillRule: 'evenodd' }, { rowHeightMm: 1 }), 1)).toEqual([0, 8]);
  });

  it('should give the same lists where they share a room, each for good', () => {
    const room = new SpanRoom();
    const outlines = Array.from({ length: 300 }, (_, i) => ({
      rings: [[0, 0, 50, 20, 13, 90 + i, -20, 40], rect(i, 3, 9, 9)],
      fillRule: 'evenodd' as const,
    }));
    const lattice = { rowHeightMm: 0.5 };
    const shared = outlines.map((outline) => rowSpans(outline, lattice, room));
    expect(shared).toEqual(outlines.map((outline) => rowSpans(outline, lattice)));
    expect(new Set(shared.map(({ xMm }) => xMm.buffer)).size).toBeLessThan(20);
  });

  it('should scan only the wanted rows and give the same values there', () => {
    const outline = { rings: [[0, 0, 50, 20, 13, 90, -20, 40]], fillRule: 'nonzero' as const };
    const all = rowSpans(outline, { rowHeightMm: 0.7, topMm: 0.3 });
    const some = rowSpans(outline, { rowHeightMm: 0.7, topMm: 0.3, firstRow: 10, endRow: 25 });
    expect([some.firstRow, some.rows]).toEqual([10, 15]);
    for (let row = 10; row < 25; row++) expect(rowOf(some, row)).toEqual(rowOf(all, row));
  });

  it('should stay on an edge that is level but for the last bit', () => {
    const y = 2.5 + 2 ** -50;
    const spans = rowSpans({ rings: [[0, 2.5, 500, y, 500, 8, 0, 8]], fillRule: 'nonzero' }, { rowHeightMm: 1 });
    for (const x of spans.xMm) expect(x >= 0 && x <= 500).toBe(true);
  });

  it('should agree with the winding number at random points, vertices on row middles included', () => {
    const point = fc.integer({ min: 0, max: 24 }).map((v) => v / 2);
    const ring = fc.array(point, { minLength: 6, maxLength: 24 }).map((v) => (v.length % 2 ? v.slice(1) : v));
    fc.assert(
      fc.property(
        fc.array(ring, { minLength: 1, maxLength: 3 }),
        fc.constantFrom<FillRule>('nonzero', 'evenodd'),
        fc.array(fc.tuple(fc.integer({ min: 0, max: 11 }), fc.double({ min: 0, max: 12, noNaN: true })), { maxLength: 12 }),
        (rings, fillRule, probes) => {
          const spans = rowSpans({ rings, fillRule }, { rowHeightMm: 1 });
          for (const [row, x] of probes) {
            const ends = rowOf(spans, row);
            expect(ends.length % 2).toBe(0);
            // Points on an edge are nobody's.
            if (ends.some((end) => Math.abs(end - x) < 1e-9)) continue;
            const inside = ends.filter((end) => end <= x).length % 2 === 1;
            // Just above the middle: the half-open rule gives a vertex on the middle to that row.
            const winding = windingAt(rings, x, row + 0.5 + 1e-12);
            if (windingAt(rings, x, row + 0.5) !== winding) continue;
            expect(inside).toBe(fillRule === 'evenodd' ? winding % 2 !== 0 : winding !== 0);
          }
        },
      ),
      { seed: 7, numRuns: 400 },
    );
  });

  it('should sort rows with hundreds of crossings', () => {
    const rings = Array.from({ length: 300 }, (_, i) => rect(((i * 137) % 300) * 3, 0, 1, 2));
    const ends = rowOf(rowSpans({ rings, fillRule: 'nonzero' }, { rowHeightMm: 1 }), 0);
    expect(ends).toEqual(Array.from({ length: 600 }, (_, i) => 3 * (i >> 1) + (i & 1)));
  });

  it('should refuse coordinates that are no numbers', () => {
    expect(() => rowSpans({ rings: [[0, 0, NaN, 1, 1, 1]], fillRule: 'nonzero' }, { rowHeightMm: 1 })).toThrow(
      /finite number of millimetres/,
    );
    expect(() => rowSpans({ rings: [], fillRule: 'nonzero' }, { rowHeightMm: 0 })).toThrow(/height above 0/);
  });
});
