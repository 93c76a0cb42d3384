import { ClipperOffset, EndType, JoinType } from 'clipper2-ts';
import type { Paths64 } from 'clipper2-ts';

/** How far a corner may stand out in a mitre, and how fine arcs are cut into lines. */
interface Corners {
  mitreLimit?: number;
  arcSteps?: number;
}

/** Closed paths made wider, in steps of their grid, with round corners; narrower by less than 0. */
export function widened(paths: Paths64, by: number, { mitreLimit = 2, arcSteps = 0 }: Corners = {}): Paths64 {
  const offset = new ClipperOffset(mitreLimit, arcSteps);
  offset.addPaths(paths, JoinType.Round, EndType.Polygon);
  const found: Paths64 = [];
  offset.execute(by, found);
  return found;
}
