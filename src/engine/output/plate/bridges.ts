import { num } from '../../base/at.ts';
import { subtractRings } from '../../geometry/booleans.ts';
import { ringParts } from '../../geometry/parts.ts';
import { ringArea } from '../../geometry/rings.ts';
import type { WorkBudget } from '../../geometry/work.ts';

/** An opening with the bridges that hold what would fall out of it. */
export interface Bridged {
  /** What is open, as `normalise` gives it: no part of it has a hole. */
  rings: Float64Array[];
  /** Pieces of the sheet that lie loose in openings without bridges. */
  islands: number;
  bridges: number;
}

/** Rounds of bridging; a bridge across a third ring leaves another hole, which the next round bridges. */
const MOST_ROUNDS = 8;
/** Corners of one ring that are compared with all of another; more are taken in steps. */
const MOST_CORNERS = 400;

/**
 * Leaves bridges in openings, so that no piece of the sheet is loose: two for each island, at its nearest places to
 * the rim on either side, or one where there is no room for two.
 * @param rings what is cut out, as `normalise` gives it
 * @param widthMm of a bridge, above 0
 */
export function withBridges(rings: readonly Float64Array[], widthMm: number, budget: WorkBudget): Bridged {
  let open = rings.map((ring) => ring);
  let bridges = 0;
  const islands = rings.filter((ring) => ringArea(ring) <= 0).length;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const strips = ringParts(open).flatMap(([outer, ...holes]) =>
      outer === undefined ? [] : holes.flatMap((hole) => stripsOf(hole, outer, { widthMm, two: round === 0 })),
    );
    if (strips.length === 0) break;
    bridges += strips.length;
    for (const strip of strips) open = subtractRings(open, [strip], budget);
  }
  return { rings: open, islands, bridges };
}

/** The rectangles of an island's bridges. */
function stripsOf(hole: Float64Array, outer: Float64Array, { widthMm, two }: { widthMm: number; two: boolean }): number[][] {
  const first = nearest(hole, outer, () => true);
  if (first === null) return [];
  const [cx, cy] = middleOf(hole);
  const [dx, dy] = [first.x - cx, first.y - cy];
  // The other side of the island, as seen from its middle, and not within a bridge's width of the first.
  const across = two
    ? nearest(hole, outer, (x, y) => (x - cx) * dx + (y - cy) * dy <= 0 && Math.hypot(x - first.x, y - first.y) > 2 * widthMm)
    : null;
  return [first, ...(across === null ? [] : [across])].map((link) => strip(link, widthMm));
}

interface Link {
  x: number;
  y: number;
  toX: number;
  toY: number;
}

/** The shortest way from the middle of an edge, or else a corner, of one ring to the edges of another. */
function nearest(from: Float64Array, to: Float64Array, may: (x: number, y: number) => boolean): Link | null {
  let best: Link | null = null;
  let least = Infinity;
  for (const [x, y] of startsOn(from)) {
    if (!may(x, y)) continue;
    for (let j = 0; j + 1 < to.length; j += 2) {
      const next = (j + 2) % to.length;
      const [toX, toY] = onEdge([x, y], [num(to, j), num(to, j + 1)], [num(to, next), num(to, next + 1)]);
      const far = Math.hypot(toX - x, toY - y);
      // What is nearer by rounding alone takes no place of a middle, which holds better.
      if (far < least - 1e-6) [least, best] = [far, { x, y, toX, toY }];
    }
  }
  return best;
}

/** Places where a bridge may begin: middles of edges, then corners. */
function startsOn(ring: Float64Array): Point[] {
  const step = 2 * Math.max(1, Math.floor(ring.length / 2 / MOST_CORNERS));
  const corners: Point[] = [];
  for (let i = 0; i + 1 < ring.length; i += step) corners.push([num(ring, i), num(ring, i + 1)]);
  const middles = corners.map(([x, y], i): Point => {
    const [nextX, nextY] = corners[i + 1] ?? corners[0] ?? [x, y];
    return step > 2 ? [x, y] : [(x + nextX) / 2, (y + nextY) / 2];
  });
  return [...middles, ...corners];
}

type Point = readonly [x: number, y: number];

/** The place of an edge that is nearest to a point. */
function onEdge([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): [number, number] {
  const [dx, dy] = [bx - ax, by - ay];
  const squared = dx * dx + dy * dy;
  const t = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / squared));
  return [ax + t * dx, ay + t * dy];
}

function middleOf(ring: Float64Array): Point {
  let [x, y] = [0, 0];
  for (let i = 0; i + 1 < ring.length; i += 2) [x, y] = [x + num(ring, i), y + num(ring, i + 1)];
  const corners = ring.length / 2;
  return [x / corners, y / corners];
}

/** A rectangle along a way, a little longer, so that slanting rims are met in all its width. */
function strip({ x, y, toX, toY }: Link, widthMm: number): number[] {
  const long = Math.hypot(toX - x, toY - y);
  const [ux, uy] = long === 0 ? [1, 0] : [(toX - x) / long, (toY - y) / long];
  const more = widthMm / 2;
  const [ax, ay, bx, by] = [x - ux * more, y - uy * more, toX + ux * more, toY + uy * more];
  const [sx, sy] = [(-uy * widthMm) / 2, (ux * widthMm) / 2];
  return [ax - sx, ay - sy, bx - sx, by - sy, bx + sx, by + sy, ax + sx, ay + sy];
}
