import { describe, expect, it } from 'vitest';
import { freeNeighbours, ringLayout, splitEdges } from '../../../../../src/components/ui/print/graph/order-graph-layout.ts';

const EDGES = [
  { a: 0, b: 1, areaMm2: 500, deltaE: 0.4 },
  { a: 1, b: 2, areaMm2: 20, deltaE: 30 },
  { a: 0, b: 3, areaMm2: 900, deltaE: 8 },
  { a: 2, b: 3, areaMm2: 100, deltaE: 1 },
];

describe('splitEdges', () => {
  it('should part free swaps from pairs whose order shows, heaviest first', () => {
    const { lines, free, overlapping } = splitEdges(EDGES, 1);
    expect(lines.map(({ a, b }) => [a, b])).toEqual([
      [0, 3],
      [1, 2],
      [2, 3],
    ]);
    expect([free, overlapping]).toEqual([1, 4]);
  });
});

describe('freeNeighbours', () => {
  it('should let neighbours change places that overlap invisibly or not at all', () => {
    expect(freeNeighbours(5, EDGES, 1)).toEqual([true, false, false, true]);
  });

  it('should have nothing to say of one pull or none', () => {
    expect(freeNeighbours(1, [], 1)).toEqual([]);
    expect(freeNeighbours(0, [], 1)).toEqual([]);
  });
});

describe('ringLayout', () => {
  it('should put the first down at the top and go on clockwise', () => {
    const dots = ringLayout(4, 10);
    const rounded = dots.map(({ x, y }) => [Math.round(x), Math.round(y)].map((value) => value + 0));
    expect(rounded).toEqual([
      [0, -10],
      [10, 0],
      [0, 10],
      [-10, 0],
    ]);
  });
});
