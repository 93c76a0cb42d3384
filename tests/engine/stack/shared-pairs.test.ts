import { describe, expect, it } from 'vitest';
import { buildCellMap } from '../../../src/engine/stack/cell-map.ts';
import { pairOverlapAreas, sharedAmong, sharedByBoth, sharedPairs, shares } from '../../../src/engine/stack/overlap-areas.ts';
import { placedSpans } from '../../../src/engine/stack/screen-spans.ts';
import { PAPER, blobRing, numbersFrom, sheetShape, stackOf } from './fixtures.ts';

const GRID = { widthMm: PAPER.widthMm, heightMm: PAPER.heightMm, rows: 96 };

/** Small and large shapes in a heap, so that pairs share nothing, slivers and half the sheet. */
function heap(count: number) {
  const next = numbersFrom(`heap ${count}`);
  const shapes = Array.from({ length: count }, (_, i) =>
    sheetShape(`s${i}`, [blobRing(next, 120 + next() * 300, 120 + next() * 500, i % 2 === 0 ? 6 : 60, 40)]),
  );
  const { studio, pulls } = stackOf(shapes, next);
  return buildCellMap(placedSpans({ pulls }, studio, GRID), GRID);
}

describe('sharedPairs', () => {
  // Against the areas themselves, which the polygon library checks elsewhere.
  it.each([1, 20, 70])('should tell which of %i pulls share a least area as their summed areas do', (count) => {
    const map = heap(count);
    const areas = pairOverlapAreas(map);
    // The areas that pairs have are the least ones at which any slip would show.
    for (const leastMm2 of [1, 40, ...areas.filter((area) => area > 0).slice(0, 60)]) {
      const shared = sharedPairs(map, leastMm2);
      const told: boolean[] = [];
      for (let a = 0; a < count; a++) for (let b = 0; b < count; b++) told.push(shares(shared, a, b));
      expect(told).toEqual(Array.from(areas, (area) => area >= leastMm2));
    }
  });

  it('should keep what is shared when pulls are left out and numbered anew', () => {
    const shared = sharedPairs(heap(70), 1);
    const kept = [69, 3, 40, 0, 33, 8];
    const among = sharedAmong(shared, kept);
    kept.forEach((row, a) => kept.forEach((column, b) => expect(shares(among, a, b)).toBe(shares(shared, row, column))));
    const both = new Uint32Array(70);
    let listed = 0;
    for (let a = 1; a < 70; a++) {
      const count = sharedByBoth(shared, 0, a, both);
      const expected = Array.from({ length: 70 }, (_, k) => k).filter((k) => shares(shared, 0, k) && shares(shared, a, k));
      expect([...both.subarray(0, count)]).toEqual(expected);
      listed += count;
    }
    expect(listed).toBeGreaterThan(20);
  });
});
