import { edgeWeight } from '../../../../engine/order/overlaps.ts';
import type { OverlapEdge } from '../../../../workers/api/picture-api.ts';

/** A dot of the order graph, in its drawing's units. */
export interface Dot {
  x: number;
  y: number;
}

/**
 * Dots on a circle, first down at the top, clockwise: the order is read off the ring and a line
 * across it is a pair that may not change places. The same for everybody, whatever the lines are.
 */
export function ringLayout(count: number, radius: number): Dot[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / Math.max(1, count) - Math.PI / 2;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
}

/** Overlapping pairs whose order shows, heaviest first, and how many pairs overlap at all. */
export function splitEdges(edges: readonly OverlapEdge[], minDeltaE: number): { lines: OverlapEdge[]; free: number; overlapping: number } {
  const overlapping = edges.filter((edge) => edge.areaMm2 > 0);
  const lines = overlapping
    .filter((edge) => edge.deltaE >= minDeltaE)
    .sort((one, other) => edgeWeight(other) - edgeWeight(one) || one.a - other.a || one.b - other.b);
  return { lines, free: overlapping.length - lines.length, overlapping: overlapping.length };
}

/** Whether pulls i and i + 1 may change places and no line forbids it, for every neighbouring two. */
export function freeNeighbours(pulls: number, edges: readonly OverlapEdge[], minDeltaE: number): boolean[] {
  const held = new Set(
    splitEdges(edges, minDeltaE)
      .lines.filter((edge) => Math.abs(edge.a - edge.b) === 1)
      .map((edge) => Math.min(edge.a, edge.b)),
  );
  return Array.from({ length: Math.max(0, pulls - 1) }, (_, i) => !held.has(i));
}
