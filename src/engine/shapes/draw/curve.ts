import { entryAt } from '../../base/at.ts';
import { flattenPath, type PathSegment } from '../../geometry/flatten.ts';
import { IDENTITY } from '../../geometry/rings.ts';

/** A point that was set on the drawing board, mm, y down. */
export interface DrawPoint {
  readonly xMm: number;
  readonly yMm: number;
  /** Whether the outline runs round through it; else it turns there as a corner. */
  readonly round: boolean;
  /** Where the curve leaves it and comes to it, when that was set by hand; `round` then keeps both on one line. */
  readonly handles?: Handles;
}

/** The way from a point to the ends of its two handles, mm right and down: those of cubic Béziers. */
export interface Handles {
  /** Of the curve that comes from the point before. */
  readonly into: Way;
  /** Of the curve that goes to the next. */
  readonly out: Way;
}

export type Way = readonly [rightMm: number, downMm: number];

/** How far the edges may lie from the curve they stand for, mm: half of what an outline is kept to. */
export const FLAT_MM = 0.005;

/** Points nearer to each other than this are one, mm: the grid of outlines. */
const SAME_MM = 0.001;

/** The points without those that lie on the one before them, the last and the first too. */
export function apartPoints(points: readonly DrawPoint[]): DrawPoint[] {
  const apart = points.filter((point, i) => i === 0 || distance(point, entryAt(points, i - 1)) >= SAME_MM);
  while (apart.length > 1 && distance(entryAt(apart, 0), entryAt(apart, apart.length - 1)) < SAME_MM) apart.pop();
  return apart;
}

/**
 * The closed outline through points: straight between corners, cubic Béziers where there are handles, centripetal
 * Catmull–Rom splines elsewhere.
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
    const isCurve = [from, to].some((point) => point.handles !== undefined || (point.round && points.length > 2));
    if (!isCurve) return [from.xMm, from.yMm];
    const curve: PathSegment[] = [['M', from.xMm, from.yMm], bezier(points, i)];
    const [ring = []] = flattenPath(curve, IDENTITY, { tolerance: FLAT_MM, leastSteps: 2 });
    return ring.slice(0, -2);
  });
}

/**
 * The handles that a point would have if the outline ran round through it, as it does without any.
 * @param points each apart from the next
 */
export function roundHandles(points: readonly DrawPoint[], at: number): Handles {
  const { xMm, yMm } = entryAt(points, at);
  const round = points.with(at, { xMm, yMm, round: true });
  const [before, after] = [(at + points.length - 1) % points.length, at].map((span) => bezier(round, span));
  const to = (segment: readonly unknown[] | undefined, from: number): Way => [Number(segment?.[from]) - xMm, Number(segment?.[from + 1]) - yMm];
  return { into: to(before, 3), out: to(after, 1) };
}

/** The open line through points, as the outline runs. @returns flat, mm */
export function lineThrough(points: readonly DrawPoint[]): number[] {
  const last = points.at(-1);
  return last === undefined ? [] : [...spansThrough(points).slice(0, -1).flat(), last.xMm, last.yMm];
}

/** The span from a point to the next. */
function bezier(points: readonly DrawPoint[], at: number): PathSegment {
  const [before, from, to, after] = [at - 1, at, at + 1, at + 2].map((i) => neighbour(points, i)) as [DrawPoint, DrawPoint, DrawPoint, DrawPoint];
  const chord = Math.sqrt(distance(from, to));
  const isRound = (point: DrawPoint): boolean => point.round && points.length > 2;
  const out = from.handles?.out ?? (isRound(from) ? tangent([before, from, to], chord, true) : null);
  const into = to.handles === undefined ? (isRound(to) ? tangent([from, to, after], chord, false) : null) : backTo(to.handles.into);
  const third: Way = [(to.xMm - from.xMm) / 3, (to.yMm - from.yMm) / 3];
  // At a corner the span leaves along its chord.
  const [ox, oy] = out ?? third;
  const [ix, iy] = into ?? third;
  return ['C', from.xMm + ox, from.yMm + oy, to.xMm - ix, to.yMm - iy, to.xMm, to.yMm];
}

function backTo([right, down]: Way): Way {
  return [-right, -down];
}

/** A third of the tangent in the middle of three points, for the span of a given knot length. */
function tangent([a, b, c]: readonly [DrawPoint, DrawPoint, DrawPoint], span: number, isNext: boolean): Way {
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
