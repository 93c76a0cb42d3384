import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intersectionArea, normalise, outlineArea, unionOutlines } from '../../../src/engine/geometry/booleans.ts';
import { ringArea } from '../../../src/engine/geometry/rings.ts';
import type { Outline } from '../../../src/engine/geometry/types.ts';

const box = (x: number, y: number, w: number, h: number): number[] => [x, y, x + w, y, x + w, y + h, x, y + h];
const back = (ring: number[]): number[] => {
  const out: number[] = [];
  for (let i = ring.length - 2; i >= 0; i -= 2) out.push(ring[i]!, ring[i + 1]!);
  return out;
};

describe('outlineArea', () => {
  it('should count overlaps once under nonzero and not at all under evenodd', () => {
    const rings = [box(0, 0, 10, 10), box(5, 5, 10, 10)];
    expect(outlineArea({ rings, fillRule: 'nonzero' })).toBeCloseTo(175, 9);
    expect(outlineArea({ rings, fillRule: 'evenodd' })).toBeCloseTo(150, 9);
  });

  it('should take a hole by its winding', () => {
    const outer = box(0, 0, 10, 10);
    const inner = box(2, 2, 4, 4);
    expect(outlineArea({ rings: [outer, inner], fillRule: 'nonzero' })).toBeCloseTo(100, 9);
    expect(outlineArea({ rings: [outer, back(inner)], fillRule: 'nonzero' })).toBeCloseTo(84, 9);
  });

  it('should give the pentagram its textbook areas', () => {
    // Regular pentagram, circumradius 1: the tips and the pentagon in the middle.
    const points = [0, 2, 4, 1, 3].flatMap((k) => {
      const angle = (k * 2 * Math.PI) / 5;
      return [100 * Math.cos(angle), 100 * Math.sin(angle)];
    });
    // Decagon of radii R and r = R / φ²; area = 5 R r sin 36°.
    const phi = (1 + Math.sqrt(5)) / 2;
    const r = 100 / phi ** 2;
    const star = 5 * 100 * r * Math.sin(Math.PI / 5);
    const middle = (5 / 2) * r * r * Math.sin((2 * Math.PI) / 5);
    expect(outlineArea({ rings: [points], fillRule: 'nonzero' })).toBeCloseTo(star, 1);
    expect(outlineArea({ rings: [points], fillRule: 'evenodd' })).toBeCloseTo(star - middle, 1);
  });
});

describe('normalise', () => {
  it('should turn outer rings clockwise and holes the other way, whatever came in', () => {
    for (const outer of [box(0, 0, 10, 10), back(box(0, 0, 10, 10))]) {
      const rings = normalise({ rings: [outer, box(2, 2, 4, 4)], fillRule: 'evenodd' });
      expect(rings.map(ringArea)).toEqual([100, -16]);
    }
  });

  it('should read the same under both rules', () => {
    const rings = normalise({ rings: [box(0, 0, 9, 9), box(3, 3, 9, 9), box(1, 1, 3, 3)], fillRule: 'nonzero' });
    const nonzero = outlineArea({ rings, fillRule: 'nonzero' });
    expect(outlineArea({ rings, fillRule: 'evenodd' })).toBe(nonzero);
  });

  it('should keep a part that ends in a spike along its own edge', () => {
    // A box with a bite; its last corner overshoots the first by 0.002 and runs back on the same line.
    const spiked = [8.75, 14, 8.75, 2, 3, 2, 3, 6, 7.25, 6, 7.25, 14, 8.752, 14];
    const area = 5.75 * 4 + 1.5 * 8;
    expect(outlineArea({ rings: [spiked], fillRule: 'nonzero' })).toBeCloseTo(area, 6);
    const out = [0, 0, 10, 0, 10, 5, 15, 5, 10, 5, 10, 10, 0, 10, 0, 20, 0, 10];
    expect(normalise({ rings: [out], fillRule: 'nonzero' }).map(ringArea)).toEqual([100]);
  });

  it('should drop what has no area', () => {
    expect(
      normalise({
        rings: [
          [0, 0, 5, 5],
          [0, 0, 5, 5, 0, 0],
        ],
        fillRule: 'nonzero',
      }),
    ).toEqual([]);
  });
});

/** Area under nonzero, independently: slabs between all corners and crossings, trapezia in each. */
function areaBySlabs(rings: readonly number[][]): number {
  const edges: [number, number, number, number][] = [];
  for (const r of rings) {
    for (let i = 0; i < r.length; i += 2) {
      const j = (i + 2) % r.length;
      if (r[i + 1] !== r[j + 1]) edges.push([r[i]!, r[i + 1]!, r[j]!, r[j + 1]!]);
    }
  }
  const levels = new Set(edges.flatMap(([, y0, , y1]) => [y0, y1]));
  edges.forEach(([a, b, c, d], i) => {
    for (const [p, q, r, s] of edges.slice(0, i)) {
      const det = (c - a) * (s - q) - (d - b) * (r - p);
      const t = ((p - a) * (s - q) - (q - b) * (r - p)) / det;
      const u = ((p - a) * (d - b) - (q - b) * (c - a)) / det;
      if (t > 0 && t < 1 && u >= 0 && u <= 1) levels.add(b + t * (d - b));
    }
  });
  const sorted = [...levels].sort((a, b) => a - b);
  let area = 0;
  for (let k = 0; k + 1 < sorted.length; k++) {
    const y = (sorted[k]! + sorted[k + 1]!) / 2;
    const crossings = edges
      .filter(([, y0, , y1]) => y0 <= y !== y1 <= y)
      .map(([x0, y0, x1, y1]) => ({ x: x0 + ((y - y0) / (y1 - y0)) * (x1 - x0), turn: y1 > y0 ? 1 : -1 }))
      .sort((a, b) => a.x - b.x);
    let winding = 0;
    for (let i = 0; i + 1 < crossings.length; i++) {
      winding += crossings[i]!.turn;
      if (winding !== 0) area += (crossings[i + 1]!.x - crossings[i]!.x) * (sorted[k + 1]! - sorted[k]!);
    }
  }
  return area;
}

describe('outlineArea against slabs', () => {
  it('should agree on rings full of touching corners and shared lines', () => {
    const ring = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(ring, (one) => {
        expect(outlineArea({ rings: [one], fillRule: 'nonzero' })).toBeCloseTo(areaBySlabs([one]), 2);
      }),
      { numRuns: 1000, seed: 11 },
    );
  });
});

describe('intersectionArea', () => {
  it('should be the shared part', () => {
    const a: Outline = { rings: [box(0, 0, 10, 10)], fillRule: 'nonzero' };
    const b: Outline = { rings: [box(6, 7, 10, 10)], fillRule: 'evenodd' };
    expect(intersectionArea(a, b)).toBeCloseTo(12, 9);
    expect(intersectionArea(a, { rings: [box(20, 20, 1, 1)], fillRule: 'nonzero' })).toBe(0);
  });

  it('should keep inclusion and exclusion: |A| + |B| = |A ∪ B| + |A ∩ B|', () => {
    const coordinate = fc.integer({ min: 0, max: 2000 }).map((v) => v / 10);
    const outline = fc.record({
      rings: fc.array(fc.array(coordinate, { minLength: 6, maxLength: 16 }), { minLength: 1, maxLength: 3 }),
      fillRule: fc.constantFrom('nonzero' as const, 'evenodd' as const),
    });
    fc.assert(
      fc.property(outline, outline, (a, b) => {
        const both = outlineArea({ rings: unionOutlines([a, b]), fillRule: 'nonzero' });
        const sum = outlineArea(a) + outlineArea(b);
        // Crossings are rounded to the 0.1 µm grid: half a step along up to 10 m of edges.
        expect(Math.abs(both + intersectionArea(a, b) - sum)).toBeLessThan(0.05);
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});
