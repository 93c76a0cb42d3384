import type { DrawPoint, Handles } from '../../../engine/shapes/draw/curve.ts';
import { pulled, withHandle } from '../../../engine/shapes/draw/handles.ts';

/** A place on the board, mm. */
export interface BoardPlace {
  xMm: number;
  yMm: number;
}

/** What a press took hold of: a point, a handle of the chosen one, or handles that are being pulled out of a point. */
export type Hold = { what: 'point' } | { what: 'handle'; side: keyof Handles } | { what: 'pull'; fromMm: number };

const SIDES = ['out', 'into'] as const;

/** Place of the nearest point within a distance; −1 for none. */
export function nearestPoint(points: readonly DrawPoint[], { xMm, yMm }: BoardPlace, withinMm: number): number {
  let [found, least] = [-1, withinMm];
  for (const [i, point] of points.entries()) {
    const distance = Math.hypot(point.xMm - xMm, point.yMm - yMm);
    if (distance <= least) [found, least] = [i, distance];
  }
  return found;
}

/** Ends of the handles of a point. */
export function handleEnds({ xMm, yMm, handles }: DrawPoint): (BoardPlace & { side: keyof Handles })[] {
  if (handles === undefined) return [];
  return SIDES.map((side) => ({ side, xMm: xMm + handles[side][0], yMm: yMm + handles[side][1] }));
}

/** The handle of a point that ends within a distance, unless the point itself is nearer; null for none. */
export function nearestHandle(point: DrawPoint | undefined, at: BoardPlace, withinMm: number): keyof Handles | null {
  if (point === undefined) return null;
  let [found, least]: [keyof Handles | null, number] = [null, Math.min(withinMm, Math.hypot(point.xMm - at.xMm, point.yMm - at.yMm))];
  for (const end of handleEnds(point)) {
    const distance = Math.hypot(end.xMm - at.xMm, end.yMm - at.yMm);
    if (distance < least) [found, least] = [end.side, distance];
  }
  return found;
}

/** A point after what was held of it went to a place. */
export function draggedPoint(point: DrawPoint, hold: Hold, at: BoardPlace): DrawPoint {
  const way = [at.xMm - point.xMm, at.yMm - point.yMm] as const;
  if (hold.what === 'handle') return withHandle(point, hold.side, way);
  if (hold.what === 'point') return { ...point, ...at };
  return Math.hypot(...way) < hold.fromMm ? point : pulled(point, way);
}
