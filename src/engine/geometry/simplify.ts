import { num } from '../base/at.ts';
import type { Ring } from './types.ts';

/**
 * A closed outline with fewer corners, none of those left out farther than a tolerance from it.
 * @param ring flat [x0, y0, …]
 * @param tolerance in the ring's unit, 0 or more
 * @returns corners of the ring, in its order; fewer than three where it is thinner than the tolerance
 * Source: Douglas and Peucker (1973), The Canadian Cartographer 10(2), from memory, on the two halves between
 * the first corner and the one farthest from it. Cost O(n²) at worst.
 */
export function simplifyRing(ring: Ring, tolerance: number): number[] {
  const corners = ring.length >> 1;
  if (corners < 4) return Array.from(ring);
  const keep = new Uint8Array(corners);
  const far = farthest(0, corners, (at) => Math.hypot(num(ring, 2 * at) - num(ring, 0), num(ring, 2 * at + 1) - num(ring, 1)));
  keep[0] = 1;
  keep[far.at] = far.distance > tolerance ? 1 : 0;
  const waits: [number, number][] = [
    [0, far.at],
    [far.at, corners],
  ];
  for (let next = waits.pop(); next !== undefined; next = waits.pop()) {
    const [from, to] = next;
    if (to - from < 2) continue;
    const found = farthest(from + 1, to, (at) => distanceTo(ring, at, from, to % corners));
    if (found.distance <= tolerance) continue;
    keep[found.at] = 1;
    waits.push([from, found.at], [found.at, to]);
  }
  const out: number[] = [];
  keep.forEach((kept, at) => {
    if (kept === 1) out.push(num(ring, 2 * at), num(ring, 2 * at + 1));
  });
  return out;
}

function farthest(from: number, to: number, distanceOf: (at: number) => number): { at: number; distance: number } {
  let found = { at: from, distance: -1 };
  for (let at = from; at < to; at++) {
    const distance = distanceOf(at);
    if (distance > found.distance) found = { at, distance };
  }
  return found;
}

/** How far a corner lies from the stretch between two others. */
function distanceTo(ring: Ring, at: number, from: number, to: number): number {
  const [ax, ay] = [num(ring, 2 * from), num(ring, 2 * from + 1)];
  const [bx, by] = [num(ring, 2 * to) - ax, num(ring, 2 * to + 1) - ay];
  const [x, y] = [num(ring, 2 * at) - ax, num(ring, 2 * at + 1) - ay];
  const squared = bx * bx + by * by;
  const along = squared === 0 ? 0 : Math.min(1, Math.max(0, (x * bx + y * by) / squared));
  return Math.hypot(x - along * bx, y - along * by);
}
