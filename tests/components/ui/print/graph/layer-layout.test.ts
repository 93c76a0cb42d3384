import { describe, expect, it } from 'vitest';
import { folds, layerLayout, linesOf } from '../../../../../src/components/ui/print/graph/layer-layout.ts';
import { orderParts } from '../../../../../src/engine/order/parts/order-parts.ts';
import type { OverlapEdge } from '../../../../../src/workers/api/picture-api.ts';
import { heldPairs } from '../../../../helpers/held-pairs.ts';

describe('layerLayout', () => {
  it.each([2, 6, 20, 60, 200])('should show 80 pulls without one thing over another, folded or not (one pair in %i)', (oneIn) => {
    const parts = orderParts(80, heldPairs(80, oneIn));
    const folded = layerLayout(parts, () => false, 640);
    const open = layerLayout(parts, () => true, 340);
    expect(open.dots.size).toBe(80);
    expect(folded.dots.size).toBe(
      parts
        .flat()
        .filter((group) => !folds(group))
        .flatMap(({ layers }) => layers.flat()).length,
    );
    expect(folded.tiles.length + folded.dots.size).toBeLessThan(40);
    expect([folded.widthPx <= 640, open.widthPx <= 340]).toEqual([true, true]);
    for (const { panels, tiles, dots, ends, widthPx, heightPx } of [folded, open]) {
      expect(ends.size).toBe(80);
      const boxes = [
        ...tiles.map(({ x, y, widthPx: wide }) => [x, y, x + wide, y + 24] as const),
        ...[...dots.values()].map(({ x, y }) => [x - 11, y - 11, x + 11, y + 11] as const),
      ];
      for (const [i, [left, top, right, bottom]] of boxes.entries()) {
        expect(panels.filter((p) => p.x <= left && p.y <= top && right <= p.x + p.widthPx && bottom <= p.y + p.heightPx).length).toBe(1);
        for (const [l, t, r, b] of boxes.slice(i + 1)) expect(left >= r || l >= right || top >= b || t >= bottom).toBe(true);
      }
      expect(Math.max(...boxes.map(([, , right]) => right))).toBeLessThanOrEqual(widthPx);
      expect(Math.max(...boxes.map(([, , , bottom]) => bottom))).toBeLessThanOrEqual(heightPx);
    }
  });

  it('should go on in rows where a long group is wider than the room, first down first', () => {
    // Each of 40 pulls holds the next: 40 layers of one pull, in groups of up to 10.
    const parts = orderParts(
      40,
      Array.from({ length: 39 }, (_, a) => ({ a, b: a + 1 })),
    );
    for (const roomPx of [120, 200, 340, 900]) {
      const { dots, tiles, widthPx } = layerLayout(parts, () => true, roomPx);
      expect(widthPx).toBeLessThanOrEqual(roomPx);
      for (const { group } of tiles) {
        const places = group.layers.flat().map((at) => dots.get(at)!);
        for (const [i, dot] of places.slice(1).entries()) {
          const before = places[i]!;
          expect(dot.y > before.y ? dot.x < before.x : dot.y === before.y && dot.x > before.x).toBe(true);
        }
      }
    }
  });

  it('should draw the lines of one pull, one to a folded group, no lower than they say', () => {
    // 0 under 1 to 4, and 4 under 5; 1 to 4 are a group that folds.
    const pair = (a: number, b: number, areaMm2: number): OverlapEdge => ({ a, b, areaMm2, deltaE: 10 });
    const edges = [pair(0, 1, 1), pair(0, 2, 2), pair(0, 3, 3), pair(0, 4, 4), pair(4, 5, 2)];
    const parts = orderParts(6, edges);
    const folded = layerLayout(parts, () => false, 640);
    const own = (at: number): OverlapEdge[] => edges.filter(({ a, b }) => a === at || b === at);
    expect(linesOf(0, own(0), folded.ends).map(({ under, widthPx }) => [under, widthPx])).toEqual([[false, 5]]);
    const open = layerLayout(parts, () => true, 640);
    // As thick as they weigh, the heaviest 5 px: 1 to 4 parts of area at one ΔE.
    expect(linesOf(0, own(0), open.ends).map(({ widthPx }) => widthPx)).toEqual([1.25, 2.5, 3.75, 5]);
    expect(linesOf(4, own(4), open.ends).map(({ under }) => under)).toEqual([true, false]);
    for (const { path, bottomPx } of linesOf(4, own(4), open.ends)) {
      const [x0, y0, x1, y1, x2, y2] = path.match(/-?[\d.]+/g)!.map(Number) as [number, number, number, number, number, number];
      expect(x0 - x1).toBeCloseTo(x1 - x2, 9);
      for (let t = 0; t <= 1; t += 0.05) expect((1 - t) ** 2 * y0 + 2 * t * (1 - t) * y1 + t ** 2 * y2).toBeLessThanOrEqual(bottomPx);
    }
  });
});
