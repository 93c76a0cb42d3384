import { entryAt } from '../../base/at.ts';
import { roundTo } from '../../base/units.ts';
import { type DrawPoint, type Handles, roundHandles, type Way } from './curve.ts';

/** How the outline goes through a point: as a corner, round by its neighbours, by two handles on one line, or by two handles each by itself. */
export type PointKind = 'corner' | 'round' | 'smooth' | 'cusp';

/** What kind a point is of. */
export function kindOf({ round, handles }: DrawPoint): PointKind {
  if (handles === undefined) return round ? 'round' : 'corner';
  return round ? 'smooth' : 'cusp';
}

/**
 * A point made of another kind; where it gets handles and has none, the outline runs round through it at first.
 * @param at its place among the points, each apart from the next
 */
export function ofKind(points: readonly DrawPoint[], at: number, kind: PointKind): DrawPoint {
  const { xMm, yMm, handles } = entryAt(points, at);
  const round = kind === 'round' || kind === 'smooth';
  if (kind === 'corner' || kind === 'round') return { xMm, yMm, round };
  const point = { xMm, yMm, round, handles: handles ?? toHundredths(roundHandles(points, at)) };
  return round ? withHandle(point, 'out', point.handles.out) : point;
}

/** A point with both handles pulled out of it, one to each side. @param out to where the one was pulled, from the point */
export function pulled({ xMm, yMm }: DrawPoint, [right, down]: Way): DrawPoint {
  return { xMm, yMm, round: true, handles: toHundredths({ into: [-right, -down], out: [right, down] }) };
}

/** A point with a handle elsewhere; where both lie on one line, the other one turns with it and keeps its length. */
export function withHandle(point: DrawPoint, side: keyof Handles, way: Way): DrawPoint {
  const { round, handles } = point;
  if (handles === undefined) return point;
  const other = side === 'into' ? 'out' : 'into';
  const length = Math.hypot(...way);
  const turned = round && length > 0 ? lengthened(way, -Math.hypot(...handles[other]) / length) : handles[other];
  return { ...point, handles: toHundredths(side === 'into' ? { into: way, out: turned } : { into: turned, out: way }) };
}

function lengthened([right, down]: Way, times: number): Way {
  return [right * times, down * times];
}

function toHundredths({ into, out }: Handles): Handles {
  const to = ([right, down]: Way): Way => [roundTo(right, 2), roundTo(down, 2)];
  return { into: to(into), out: to(out) };
}
