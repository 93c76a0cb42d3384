import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flattenPath } from '../../../src/engine/geometry/flatten.ts';
import type { PathSegment } from '../../../src/engine/geometry/flatten.ts';
import type { Affine } from '../../../src/engine/geometry/rings.ts';

const TOLERANCE = 0.05;

/** Distance from a point to the nearest edge. */
function distance(x: number, y: number, ring: readonly number[]): number {
  let best = Infinity;
  for (let i = 0; i + 3 < ring.length; i += 2) {
    const [ax, ay, bx, by] = [ring[i]!, ring[i + 1]!, ring[i + 2]!, ring[i + 3]!];
    const square = (bx - ax) ** 2 + (by - ay) ** 2;
    const along = square === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / square;
    const t = Math.min(1, Math.max(0, along));
    best = Math.min(best, Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y));
  }
  return best;
}

/** De Casteljau's construction, independent of the polynomial form that is tested. */
function casteljau(points: readonly (readonly [number, number])[], t: number): readonly [number, number] {
  if (points.length === 1) return points[0]!;
  return casteljau(
    points.slice(1).map(([x, y], i) => [points[i]![0] * (1 - t) + x * t, points[i]![1] * (1 - t) + y * t] as const),
    t,
  );
}

const at = fc.double({ min: -300, max: 300, noNaN: true });
const point = fc.tuple(at, at);
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('flattenPath', () => {
  it('should keep cubics and quadratics within the tolerance after the map', () => {
    fc.assert(
      fc.property(
        fc.array(point, { minLength: 3, maxLength: 4 }),
        share,
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        (points, t, scale) => {
          const to: Affine = [scale, 0.3, -0.7, 1, 20, -30];
          const [start, ...rest] = points as [[number, number], ...[number, number][]];
          const flat = rest.flat();
          const curve = [rest.length === 2 ? 'Q' : 'C', ...flat] as unknown as PathSegment;
          const ring = flattenPath([['M', ...start], curve], to, { tolerance: TOLERANCE, leastSteps: 1 })[0]!;
          const [x, y] = casteljau(points, t);
          const off = distance(to[0] * x + to[2] * y + to[4], to[1] * x + to[3] * y + to[5], ring);
          expect(off).toBeLessThanOrEqual(TOLERANCE + 1e-9);
        },
      ),
      { numRuns: 500, seed: 5 },
    );
  });

  it('should keep large circles within the tolerance, all corners on the circle', () => {
    for (const r of [0.2, 4, 60, 1500]) {
      const segments: PathSegment[] = [
        ['M', r, 0],
        ['A', r, r, 0, false, true, -r, 0],
        ['A', r, r, 0, false, true, r, 0],
      ];
      const ring = flattenPath(segments, [1, 0, 0, 1, 0, 0], { tolerance: TOLERANCE, leastSteps: 1 })[0]!;
      for (let i = 0; i < ring.length; i += 2) expect(Math.hypot(ring[i]!, ring[i + 1]!)).toBeCloseTo(r, 8);
      for (let i = 0; i + 3 < ring.length; i += 2) {
        const middle = Math.hypot(ring[i]! + ring[i + 2]!, ring[i + 1]! + ring[i + 3]!) / 2;
        expect(r - middle).toBeLessThanOrEqual(TOLERANCE + 1e-9);
      }
    }
  });

  it('should start the next outline where a closed one started', () => {
    const segments: PathSegment[] = [['M', 1, 2], ['L', 5, 2], ['Z'], ['L', 9, 9]];
    expect(flattenPath(segments, [1, 0, 0, 1, 0, 0], { tolerance: 1, leastSteps: 1 })).toEqual([
      [1, 2, 5, 2],
      [1, 2, 9, 9],
    ]);
  });
});
