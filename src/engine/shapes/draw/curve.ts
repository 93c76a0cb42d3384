import { entryAt } from '../../base/at.ts';
import { flattenPath, type PathSegment } from '../../geometry/flatten.ts';
import { IDENTITY } from '../../geometry/rings.ts';

/** A point that was set on the drawing board, mm, y down. */
export interface DrawPoint {
  readonly xMm: number;
  readonly yMm: number;
  /** Whether the outline runs round through it; else it turns there as a corner. */
  readonly round: boolean;
}

/** How far the edges may lie from the curve they stand for, mm: half of what an outline is kept to. */
const FLAT_MM = 0.005;

/** Points nearer to each other than this are one, mm: the grid of outlines. */
const SAME_MM = 0.001;

type Vector = readonly [x: number, y: number];

/** The points without those that lie on the one before them, the last and the first too. */
export function apartPoints(points: readonly DrawPoint[]): DrawPoint[] {
  const apart = points.filter((point, i) => i === 0 || distance(point, entryAt(points, i - 1)) >= SAME_MM);
  while (apart.length > 1 && distance(entryAt(apart, 0), entryAt(apart, apart.length - 1)) < SAME_MM) apart.pop();
  return apart;
}

/**
 * The closed outline through points: straight between corners, centripetal Catmull–Rom splines elsewhere.
 * @param points each apart from the next (`apartPoints`)
 * @returns flat ring, mm, within 0.005 mm of the curve; a ring of fewer than three points for fewer points
 * Source: Barry and Goldman (1988), Computer Graphics 22(4); Yuksel, Schaefer and Keyser (2011),
 * Computer-Aided Design 43(7) for the exponent of a half. From memory; a span goes as the cubic Bézier of the same tangents.
 */
export function outlineThrough(points: readonly DrawPoint[]): number[] {
  return spansThrough(points).flatMap((span) => span);
}

/** The edges of the outline from each point to the next, without the end of each. */
export function spansThrough(points: readonly DrawPoint[]): number[][] {
  return points.map((from, i) => {
    const to = neighbour(points, i + 1);
    if (points.length < 3 || (!from.round && !to.round)) return [from.xMm, from.yMm];
    const curve: PathSegment[] = [['M', from.xMm, from.yMm], bezier(neighbour(points, i - 1), from, to, neighbour(points, i + 2))];
    const [ring = []] = flattenPath(curve, IDENTITY, { tolerance: FLAT_MM, leastSteps: 2 });
    return ring.slice(0, -2);
  });
}

function bezier(before: DrawPoint, from: DrawPoint, to: DrawPoint, after: DrawPoint): PathSegment {
  const chord = Math.sqrt(distance(from, to));
  const out = from.round ? tangent([before, from, to], chord, true) : null;
  const into = to.round ? tangent([from, to, after], chord, false) : null;
  const third: Vector = [(to.xMm - from.xMm) / 3, (to.yMm - from.yMm) / 3];
  // At a corner the span leaves along its chord.
  const [ox, oy] = out ?? third;
  const [ix, iy] = into ?? third;
  return ['C', from.xMm + ox, from.yMm + oy, to.xMm - ix, to.yMm - iy, to.xMm, to.yMm];
}

/** A third of the tangent in the middle of three points, for the span of a given knot length. */
function tangent([a, b, c]: readonly [DrawPoint, DrawPoint, DrawPoint], span: number, isNext: boolean): Vector {
  const first = isNext ? Math.sqrt(distance(a, b)) : span;
  const second = isNext ? span : Math.sqrt(distance(b, c));
  const along = (p: number, q: number, r: number): number =>
    (((q - p) / first - (r - p) / (first + second) + (r - q) / second) * span) / 3;
  return [along(a.xMm, b.xMm, c.xMm), along(a.yMm, b.yMm, c.yMm)];
}

function neighbour(points: readonly DrawPoint[], at: number): DrawPoint {
  return entryAt(points, (at + points.length) % points.length);
}

function distance(a: DrawPoint, b: DrawPoint): number {
  return Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
}
