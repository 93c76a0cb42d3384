import { describe, expect, it } from 'vitest';
import { outlineArea } from '../../../src/engine/geometry/booleans.ts';
import { leastLine } from '../../../src/engine/output/thin/least-line.ts';
import { thinPlaces } from '../../../src/engine/output/thin/thin-places.ts';

const box = (x: number, y: number, width: number, height: number): number[] => [x, y, x + width, y, x + width, y + height, x, y + height];
const disc = (x: number, y: number, r: number): number[] =>
  Array.from({ length: 200 }, (_, i) => [x + r * Math.cos((Math.PI * i) / 100), y + r * Math.sin((Math.PI * i) / 100)]).flat();
const thin = (rings: number[][], lineMm: number, gapMm = 0) => thinPlaces({ rings, fillRule: 'nonzero' }, { lineMm, gapMm });
const area = (rings: readonly Float64Array[]): number => outlineArea({ rings, fillRule: 'nonzero' });

describe('the least line of a mesh', () => {
  it('should be an opening and two threads, and surely three pitches: by hand for 90 threads of 48 µm', () => {
    // Pitch 10000/90 = 111.1 µm, opening 63.1: 63.1 + 96 = 159.1 µm; 3 · 111.1 = 333.3 µm.
    expect(leastLine({ threadsPerCm: 90, threadUm: 48 })).toEqual({ holdsMm: 0.159, safeMm: 0.333 });
  });
});

describe('thin places', () => {
  // Two blocks joined by a bar: opening by half the width leaves the blocks, whatever its width under that.
  const dumbbell = (wide: number): number[][] => [box(0, 0, 10, 10), box(20, 0, 10, 10), box(10, 5 - wide / 2, 10, wide)];

  it.each([0.1, 0.2, 0.32])('should find a bar of %s mm between two blocks, its length and its width', (wide) => {
    const { places, lines, gaps } = thin(dumbbell(wide), 0.33);
    expect([lines, gaps]).toEqual([1, 0]);
    const [{ box: found, rings, widthMm, kind }] = places as [(typeof places)[0]];
    expect(kind).toBe('line');
    expect(Math.abs(found.xMm - 10)).toBeLessThan(0.02);
    expect(Math.abs(found.widthMm - 10)).toBeLessThan(0.04);
    // At both ends a disc of the least line dips into the bar: by a segment of a circle over a chord as long as the bar is wide.
    const [r, chord] = [0.33 / 2, wide / 2];
    const segment = r * r * Math.asin(chord / r) - chord * Math.sqrt(r * r - chord * chord);
    expect(Math.abs(area(rings) - (10 * wide - 2 * segment))).toBeLessThan(0.005);
    expect(Math.abs(widthMm - wide)).toBeLessThan(0.33 / 64);
  });

  it('should find nothing where a bar is as wide as the least line', () => {
    expect(thin(dumbbell(0.34), 0.33)).toEqual({ places: [], lines: 0, gaps: 0 });
  });

  it('should not take corners for thin places, but the tip of a wedge', () => {
    expect(thin([box(0, 0, 10, 10)], 2).lines).toBe(0);
    // A wedge of 2 mm over 20 mm is narrower than 1 mm along its first half.
    const { places } = thin([[0, 0, 20, -1, 20, 1]], 1);
    expect(places).toHaveLength(1);
    expect(places[0]!.box.xMm).toBeCloseTo(0, 3);
    expect(places[0]!.box.widthMm).toBeGreaterThan(9.5);
    expect(places[0]!.box.widthMm).toBeLessThan(10.5);
  });

  it('should spare the tips of a star, but not a whisker nor a short bridge', () => {
    // Tips of 60° lose h (1 / sin 30° − 1), h being half the least line.
    const triangle = [0, 0, 10, 0, 5, 5 * Math.sqrt(3)];
    expect(thin([triangle], 0.33, 0.33)).toEqual({ places: [], lines: 0, gaps: 0 });
    expect(thin([box(0, 0, 10, 10), box(10, 5, 1, 0.2)], 0.33).lines).toBe(1);
    expect(thin([box(0, 0, 10, 10), box(10, 5, 0.5, 0.2), box(10.5, 0, 10, 10)], 0.33).lines).toBe(1);
  });

  it('should find dots too small to hold, each by itself', () => {
    const { lines, places } = thin([disc(0, 0, 0.1), disc(3, 0, 0.1), disc(9, 0, 5)], 0.33);
    expect(lines).toBe(2);
    expect(places.map(({ widthMm }) => Math.abs(widthMm - 0.2) < 0.01)).toEqual([true, true]);
  });

  it('should find gaps by closing: a slit between two blocks, and a pinhole', () => {
    const slit = [box(0, 0, 10, 10), box(10.25, 0, 10, 10)];
    const { lines, gaps, places } = thin(slit, 0, 0.7);
    expect([lines, gaps]).toEqual([0, 1]);
    expect(Math.abs(places[0]!.box.xMm - 10)).toBeLessThan(0.01);
    expect(Math.abs(places[0]!.widthMm - 0.25)).toBeLessThan(0.7 / 64 + 1e-3);
    expect(thin(slit, 0, 0.24).gaps).toBe(0);
    const pinhole = [box(0, 0, 10, 10), disc(5, 5, 0.2)];
    expect(thinPlaces({ rings: pinhole, fillRule: 'evenodd' }, { lineMm: 0, gapMm: 0.7 }).gaps).toBe(1);
  });

  it('should say the same every time, and nothing of nothing', () => {
    const many = Array.from({ length: 40 }, (_, i) => box(i, (i * 7) % 5, 0.2, 3));
    expect(thin(many, 0.33, 0.7)).toEqual(thin(many, 0.33, 0.7));
    expect(thin([], 0.33, 0.7).places).toEqual([]);
  });
});
