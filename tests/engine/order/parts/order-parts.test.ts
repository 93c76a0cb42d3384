import { describe, expect, it } from 'vitest';
import { orderParts } from '../../../../src/engine/order/parts/order-parts.ts';
import { heldPairs } from '../../../helpers/held-pairs.ts';

describe('orderParts', () => {
  it('should gather a small stack as one does by hand', () => {
    // 0 under 1, 2, 3 and 4, those under 5; 6 under 8; 7 and 9 held by nothing.
    const edges = [1, 2, 3, 4].flatMap((at) => [
      { a: 0, b: at },
      { a: at, b: 5 },
    ]);
    expect(orderParts(10, [...edges, { a: 6, b: 8 }])).toEqual([
      [{ layers: [[0]] }, { layers: [[1, 2, 3, 4]] }, { layers: [[5]] }],
      [{ layers: [[6], [8]] }],
      [{ layers: [[7, 9]] }],
    ]);
    expect(orderParts(0, [])).toEqual([]);
  });

  it.each([2, 6, 20, 60, 200, 2000])('should keep every order that shows, with one pair in %i of 80 holding', (oneIn) => {
    const edges = heldPairs(80, oneIn);
    const parts = orderParts(80, edges);
    const down = parts.toReversed().flatMap((part) => part.flatMap(({ layers }) => layers.flatMap((layer) => layer.toReversed())));
    expect(down.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 80 }, (_, at) => at));
    // Parts turned about, and each layer too: every pair that holds still lies as it lay.
    for (const { a, b } of edges) expect(down.indexOf(a)).toBeLessThan(down.indexOf(b));
    const partOf = new Map(parts.flatMap((part, i) => part.flatMap(({ layers }) => layers.flat().map((at) => [at, i] as const))));
    for (const { a, b } of edges) expect(partOf.get(a)).toBe(partOf.get(b));
    for (const { layers } of parts.flat())
      for (const layer of layers) expect(edges.some(({ a, b }) => layer.includes(a) && layer.includes(b))).toBe(false);
  });
});
