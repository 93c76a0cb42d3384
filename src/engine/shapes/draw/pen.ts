import { entryAt, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { simplifyRing } from '../../geometry/simplify.ts';
import { apartPoints, type DrawPoint, spansThrough } from './curve.ts';
import { say } from '../../words/en/shapes/draw.ts';

/** Points that one line of a pen may have; some minutes of drawing without lifting it. */
export const MOST_PEN_POINTS = 10_000;

/** How often each point of a line goes towards the middle of its neighbours. */
const STEADYING = 6;

/** How often points are put in where the outline strays, before all are kept. */
const ROUNDS = 40;

/**
 * The points through which a line drawn freehand runs smoothly, closed from its end to its start. No point
 * of the pen lies farther from the outline through them than the error, but where the pen itself jumps.
 * @param pen flat [x0, y0, …], mm, in the order drawn
 * @param errorMm how far the outline may stray, above 0
 * @throws EngineError 'draw.pen-points' for more than 10,000 points, 'draw.few-points' for fewer than three
 */
export function penPoints(pen: ArrayLike<number>, errorMm: number): DrawPoint[] {
  if (pen.length / 2 > MOST_PEN_POINTS)
    throw new EngineError('draw.pen-points', say.lineHasMoreThan10);
  const drawn = steadied(apartPoints(penDrawn(pen)), errorMm / 2);
  const kept = keptAtFirst(drawn, errorMm / 2);
  for (let round = 0; round < ROUNDS; round++) {
    const points = drawn.filter((_, i) => kept.has(i));
    const strays = points.length < 3 ? [] : straysFrom(drawn, kept, errorMm / 2);
    if (strays.length === 0) return enough(points);
    for (const at of strays) kept.add(at);
  }
  return enough(drawn);
}

function enough(points: DrawPoint[]): DrawPoint[] {
  if (points.length < 3) throw fewPoints();
  return points;
}

/** @returns the refusal of an outline of fewer than three points */
export function fewPoints(): EngineError {
  return new EngineError('draw.few-points', say.shapeNeedsAtLeast);
}

/**
 * A line drawn freehand with a shaking hand evened out, open from its first point to its last.
 * @param pen flat [x0, y0, …], mm, in the order drawn
 * @param errorMm no point moves farther than this
 * @returns flat, mm
 */
export function steadyLine(pen: ArrayLike<number>, errorMm: number): number[] {
  const drawn = apartPoints(penDrawn(pen));
  const [first, last] = [drawn[0], drawn.at(-1)];
  if (first === undefined || last === undefined) return [];
  return [first, ...steadied(drawn, errorMm).slice(1, -1), last].flatMap(({ xMm, yMm }) => [xMm, yMm]);
}

function penDrawn(pen: ArrayLike<number>): DrawPoint[] {
  return Array.from({ length: pen.length >> 1 }, (_, i) => ({ xMm: num(pen, 2 * i), yMm: num(pen, 2 * i + 1), round: true }));
}

/** The line with a shaking hand evened out: each point goes towards the middle of its neighbours, so far at most. */
function steadied(drawn: readonly DrawPoint[], mostMm: number): DrawPoint[] {
  let points = [...drawn];
  for (let round = 0; round < STEADYING && drawn.length > 3; round++) {
    const before = points;
    points = before.map((point, i) => {
      const [last, next] = [entryAt(before, (i + before.length - 1) % before.length), entryAt(before, (i + 1) % before.length)];
      const from = entryAt(drawn, i);
      const right = (last.xMm + 2 * point.xMm + next.xMm) / 4 - from.xMm;
      const down = (last.yMm + 2 * point.yMm + next.yMm) / 4 - from.yMm;
      const by = Math.min(1, mostMm / Math.max(Math.hypot(right, down), mostMm));
      return { xMm: from.xMm + by * right, yMm: from.yMm + by * down, round: true };
    });
  }
  return apartPoints(points);
}

/** Places of the points that are corners of the line without its small turns. */
function keptAtFirst(drawn: readonly DrawPoint[], errorMm: number): Set<number> {
  const ring = simplifyRing(
    drawn.flatMap(({ xMm, yMm }) => [xMm, yMm]),
    errorMm,
  );
  const kept = new Set<number>();
  for (const [at, { xMm, yMm }] of drawn.entries()) {
    if (xMm === ring[2 * kept.size] && yMm === ring[2 * kept.size + 1]) kept.add(at);
  }
  return kept;
}

/** Of each span of the outline through the points kept, the one drawn that lies farthest off, where that is too far. */
function straysFrom(drawn: readonly DrawPoint[], kept: ReadonlySet<number>, errorMm: number): number[] {
  const points = drawn.filter((_, i) => kept.has(i));
  const spans = spansThrough(points);
  const strays: number[] = [];
  let [span, far, worst] = [-1, errorMm, -1];
  const end = (): void => {
    if (worst >= 0) strays.push(worst);
    [far, worst] = [errorMm, -1];
  };
  for (const [at, point] of drawn.entries()) {
    if (kept.has(at)) {
      end();
      span++;
      continue;
    }
    const to = entryAt(points, (span + 1) % points.length);
    const distance = distanceToLine(point, [...entryAt(spans, span), to.xMm, to.yMm]);
    if (distance > far) [far, worst] = [distance, at];
  }
  end();
  return strays;
}

function distanceToLine({ xMm, yMm }: DrawPoint, line: readonly number[]): number {
  let least = Infinity;
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [ax, ay] = [num(line, i), num(line, i + 1)];
    const [bx, by] = [num(line, i + 2) - ax, num(line, i + 3) - ay];
    const squared = bx * bx + by * by;
    const along = squared === 0 ? 0 : Math.min(1, Math.max(0, ((xMm - ax) * bx + (yMm - ay) * by) / squared));
    least = Math.min(least, Math.hypot(xMm - ax - along * bx, yMm - ay - along * by));
  }
  return least;
}
