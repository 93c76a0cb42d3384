import { ringArea, shapeBounds } from './rings.ts';
import type { Box } from './types.ts';

/** Rounding of the boolean grid, there and back, mm. */
const GRID_MM = 0.001;

/** Whether a box lies within another, or on its edge. */
export function boxHolds(outer: Box, inner: Box): boolean {
  return (
    inner.xMm >= outer.xMm - GRID_MM &&
    inner.yMm >= outer.yMm - GRID_MM &&
    inner.xMm + inner.widthMm <= outer.xMm + outer.widthMm + GRID_MM &&
    inner.yMm + inner.heightMm <= outer.yMm + outer.heightMm + GRID_MM
  );
}

/**
 * The parts of an area that hang together: each its outer ring first, and then the holes in it.
 * @param rings as `normalise` gives them
 */
export function ringParts(rings: readonly Float64Array[]): Float64Array[][] {
  const outer = rings
    .map((ring) => ({ ring, area: ringArea(ring), box: shapeBounds([ring]) }))
    .filter(({ area }) => area > 0)
    .map((entry) => ({ ...entry, part: [entry.ring] }));
  for (const hole of rings) {
    if (ringArea(hole) > 0) continue;
    const box = shapeBounds([hole]);
    // Of those whose box is around it, the smallest that has a corner of it inside: boxes of neighbours may lie over each other.
    const around = outer.filter((other) => boxHolds(other.box, box)).sort((a, b) => a.area - b.area);
    const found = around.length === 1 ? around[0] : around.find(({ ring }) => holds(ring, hole));
    (found ?? around[0])?.part.push(hole);
  }
  return outer.map(({ part }) => part);
}

/** Whether a ring's first corner lies inside another ring. Source: crossings of a ray to the right (even-odd). */
export function holds(ring: Float64Array, [x = 0, y = 0]: Float64Array): boolean {
  let within = false;
  let [px = 0, py = 0] = ring.slice(-2);
  for (let i = 0; i + 1 < ring.length; i += 2) {
    const [qx = 0, qy = 0] = ring.subarray(i, i + 2);
    if (qy > y !== py > y && x < ((px - qx) * (y - qy)) / (py - qy) + qx) within = !within;
    [px, py] = [qx, qy];
  }
  return within;
}
