import { Clipper64, ClipType, PathType } from 'clipper2-ts';
import type { FillRule, Paths64 } from 'clipper2-ts';

/*
 * The clipper's own classes, and not its short names for them: those hold all that it can do, and a build
 * cannot leave half of it out.
 */

function clipped(kind: ClipType, subject: Paths64, clip: Paths64, rule: FillRule): Paths64 {
  const clipper = new Clipper64();
  clipper.addPaths(subject, PathType.Subject);
  clipper.addPaths(clip, PathType.Clip);
  const found: Paths64 = [];
  clipper.execute(kind, rule, found);
  return found;
}

/** What paths fill under a rule. */
export function union(paths: Paths64, rule: FillRule): Paths64 {
  return clipped(ClipType.Union, paths, [], rule);
}

/** What paths fill that others fill too. */
export function intersect(subject: Paths64, clip: Paths64, rule: FillRule): Paths64 {
  return clipped(ClipType.Intersection, subject, clip, rule);
}

/** What paths fill and others do not. */
export function difference(subject: Paths64, clip: Paths64, rule: FillRule): Paths64 {
  return clipped(ClipType.Difference, subject, clip, rule);
}
