import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outlineArea, unionOutlines } from '../../../src/engine/geometry/booleans.ts';
import type { Outline } from '../../../src/engine/geometry/types.ts';
import { WorkBudget } from '../../../src/engine/geometry/work.ts';

const box = (x: number, y: number, width: number, height: number): number[] => [x, y, x + width, y, x + width, y + height, x, y + height];
const filled = (rings: number[][]): Outline => ({ rings, fillRule: 'nonzero' });
const area = (rings: readonly Float64Array[]): number => outlineArea({ rings, fillRule: 'nonzero' });

function stepsOf(rings: number[][]): number {
  for (let steps = 1; ; steps *= 2) {
    try {
      unionOutlines([filled(rings)], new WorkBudget(steps));
      return steps;
    } catch {
      // More are needed.
    }
  }
}

describe('the work of booleans', () => {
  it('should grow with crossings: n stripes across n have 4 n²', () => {
    const stripes = (n: number): number[][] => Array.from({ length: n }, (_, i) => [box(i, 0, 0.3, n), box(0, i, n, 0.3)]).flat();
    expect(stepsOf(stripes(40)) / stepsOf(stripes(10))).toBe(16);
  });

  it('should grow with overlaps on one line, which cross nowhere', () => {
    const shingles = (n: number): number[][] => Array.from({ length: n }, (_, i) => box(i / 100, 1, 20, 9));
    expect(stepsOf(shingles(400)) / stepsOf(shingles(100))).toBeGreaterThanOrEqual(16);
  });

  it('should not grow faster than dots that lie apart, so that a halftone can be read', () => {
    const dots = (n: number): number[][] =>
      Array.from({ length: n * n }, (_, i) => box((i % n) + (i % 7) / 50, Math.floor(i / n) + (i % 11) / 50, 0.5, 0.5));
    expect(stepsOf(dots(100)) / stepsOf(dots(25))).toBeLessThanOrEqual(16);
    expect(area(unionOutlines([filled(dots(100))]))).toBeCloseTo(2500, 6);
  });

  it('should hardly grow with copies in one place, which fill what one fills', () => {
    const copies = (n: number): Outline[] => Array.from({ length: n }, () => filled([box(1, 1, 20, 9), box(5, 5, 20, 9)]));
    expect(area(unionOutlines(copies(5000), new WorkBudget(2000)))).toBeCloseTo(2 * 180 - 16 * 5, 6);
  });

  it('should count each crossing once, however wide its edges are', () => {
    // One long edge each way among short ones, so that it lies in many columns: n lines across it have 4 n crossings.
    const comb = (n: number): number[][] => [box(0, 10, 2 * n, 0.5), ...Array.from({ length: n }, (_, i) => box(2 * i + 0.5, 0, 0.25, 20))];
    expect(stepsOf(comb(512)) / stepsOf(comb(128))).toBe(4);
  });

  it('should be refused in a sentence when it is too much', () => {
    const fan = Array.from({ length: 300 }, (_, i) => [50, 50, i / 3, 0, i / 3 + 0.1, 0]);
    expect(() => unionOutlines([filled(fan)], new WorkBudget(1000))).toThrow(expect.objectContaining({ code: 'geometry.too-much-work' }));
  });

  it('should leave out nothing where a large drawing is joined in parts', () => {
    const rect = fc.tuple(fc.nat(60), fc.nat(60), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }));
    fc.assert(
      fc.property(fc.array(rect, { minLength: 600, maxLength: 700 }), (rects) => {
        const covered = new Set<number>();
        for (const [x, y, w, h] of rects) for (let i = x; i < x + w; i++) for (let j = y; j < y + h; j++) covered.add(i * 100 + j);
        expect(area(unionOutlines([filled(rects.map((r) => box(...r)))]))).toBeCloseTo(covered.size, 6);
      }),
      { numRuns: 20, seed: 1 },
    );
  });
});
