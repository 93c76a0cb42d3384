import { describe, expect, it } from 'vitest';
import { outlineArea } from '../../../src/engine/geometry/booleans.ts';
import { grownRings } from '../../../src/engine/geometry/offset.ts';
import { WorkBudget } from '../../../src/engine/geometry/work.ts';

const circle = (r: number, corners = 20_000): number[] =>
  Array.from({ length: corners }, (_, i) => [r * Math.cos((2 * Math.PI * i) / corners), r * Math.sin((2 * Math.PI * i) / corners)]).flat();
const square = (side: number, at = 0): number[] => [at, at, at + side, at, at + side, at + side, at, at + side];
const backwards = (ring: number[]): number[] =>
  ring.reduceRight<number[]>((out, _, i) => (i % 2 === 0 ? [...out, ring[i]!, ring[i + 1]!] : out), []);
const grown = (rings: number[][], mm: number): Float64Array[] => grownRings(rings, mm, new WorkBudget());
const area = (rings: readonly Float64Array[]): number => outlineArea({ rings, fillRule: 'nonzero' });

/** What chords within 1 µm of their arc may take, before and after, mm² a mm of it. */
const CHORDS = 0.002;

describe('edges moved', () => {
  // A disc moved by d is the disc of radius r + d: π (r + d)².
  it.each([0.05, 0.5, 3, -0.05, -0.5, -4.9])('should make of a disc of 5 mm the disc that is larger by %s', (mm) => {
    const exact = Math.PI * (5 + mm) ** 2;
    expect(Math.abs(area(grown([circle(5)], mm)) - exact)).toBeLessThan(2 * Math.PI * (5 + mm) * CHORDS);
  });

  // Steiner's formula for a convex body: area + perimeter · d + π d².
  it.each([0.1, 1, 7])('should make of a square one with round corners: s² + 4 s d + π d² for d = %s', (mm) => {
    const exact = 100 + 40 * mm + Math.PI * mm * mm;
    const found = area(grown([square(10)], mm));
    expect(Math.abs(found - exact)).toBeLessThan(2 * Math.PI * mm * CHORDS + 1e-3);
  });

  it.each([-0.1, -1, -4.99])('should make of a square a smaller one with sharp corners: (s − 2 d)², d = %s', (mm) => {
    expect(area(grown([square(10)], mm))).toBeCloseTo((10 + 2 * mm) ** 2, 3);
  });

  it('should move the edge of a hole the other way', () => {
    const frame = [square(10), backwards(square(4, 3))];
    // The outside gains 40 d + π d², the hole keeps (4 − 2 d)².
    expect(area(grown(frame, 0.5))).toBeCloseTo(100 + 20 + Math.PI * 0.25 - 9, 2);
    // The hole, grown by choking what is round it, has round corners.
    expect(area(grown(frame, -0.5))).toBeCloseTo(81 - (16 + 8 + Math.PI * 0.25), 2);
  });

  it('should leave nothing of what is narrower than twice the way in', () => {
    expect(grown([square(10)], -5)).toEqual([]);
    expect(grown([], 2)).toEqual([]);
  });

  it('should give the same rings every time, and the same ones for no way', () => {
    expect(grown([circle(5, 60)], 0.3)).toEqual(grown([circle(5, 60)], 0.3));
    expect(area(grown([square(10)], 0))).toBe(100);
  });
});
