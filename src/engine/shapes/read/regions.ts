import { entryAt, num } from '../../base/at.ts';
import { cutRings, outlineArea, subtractRings, unionOutlines } from '../../geometry/booleans.ts';
import { flattenPath } from '../../geometry/flatten.ts';
import { shapeBounds } from '../../geometry/rings.ts';
import type { Box, Outline } from '../../geometry/types.ts';
import { WorkBudget } from '../../geometry/work.ts';
import type { PageSize } from '../place/lay-out.ts';
import type { Clip, Drawn } from './drawn.ts';
import type { FaultList } from './faults.ts';
import { reachOf, strokeArea } from './paint/pen.ts';
import { FLATTEN_SHARE, FLATTEN_TOLERANCE_MM, MAX_POINTS, MAX_REACH_MM, MAX_WORK } from './limits.ts';
import { say } from '../../words/en/shapes/read.ts';

/**
 * The tolerance for one drawing, mm: `FLATTEN_TOLERANCE_MM`, finer when the drawing is small.
 * @throws FileFault 'shape.size' when a point lies absurdly far out
 */
export function toleranceFor(drawn: readonly Drawn[], faults: FaultList): number {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const one of drawn) {
    const rings = flattenPath(one.segments, one.to, { tolerance: Infinity, leastSteps: 4 });
    const box = shapeBounds(rings);
    const over = one.pen === undefined ? 0 : reachOf(one.pen);
    const reach = [box.xMm - over, box.yMm - over, box.xMm + box.widthMm + over, box.yMm + box.heightMm + over];
    if (!reach.every((v) => Math.abs(v) <= MAX_REACH_MM)) {
      throw faults.refuse(
        'shape.size',
        say.itsOutlinesReachMore(MAX_REACH_MM / 1000),
      );
    }
    left = Math.min(left, num(reach, 0));
    top = Math.min(top, num(reach, 1));
    right = Math.max(right, num(reach, 2));
    bottom = Math.max(bottom, num(reach, 3));
  }
  const side = Math.max(right - left, bottom - top);
  return Math.min(FLATTEN_TOLERANCE_MM, Math.max(side * FLATTEN_SHARE, 1e-6));
}

/** Flattens, joins and clips outlines, under the caps. */
export class Regions {
  private readonly tolerance: number;
  private readonly budget = new WorkBudget(MAX_WORK);
  private readonly clipped = new Map<Clip, Float64Array[]>();
  private points = 0;

  constructor(tolerance: number) {
    this.tolerance = tolerance;
  }

  /**
   * The joined area of outlines, each within its clips, as `normalise` gives it.
   * @throws EngineError 'geometry.…' past the caps
   */
  union(drawn: readonly Drawn[]): Float64Array[] {
    // Outlines under the same clips are joined first and cut once.
    const groups = new Map<readonly Clip[], Outline[]>();
    for (const one of drawn) {
      const group = groups.get(one.clips);
      if (group === undefined) groups.set(one.clips, [this.flatten(one)]);
      else group.push(this.flatten(one));
    }
    const regions: Outline[] = [];
    for (const [clips, outlines] of groups) {
      let rings = unionOutlines(outlines, this.budget);
      for (const clip of clips) rings = this.cut(rings, clip);
      regions.push({ rings, fillRule: 'nonzero' });
    }
    if (regions.length === 0) return [];
    return regions.length === 1 ? (entryAt(regions, 0).rings as Float64Array[]) : unionOutlines(regions, this.budget);
  }

  /** What joined outlines fill together. */
  join(a: Float64Array[], b: Float64Array[]): Float64Array[] {
    if (a.length === 0 || b.length === 0) return a.length === 0 ? b : a;
    return unionOutlines([a, b].map((rings): Outline => ({ rings, fillRule: 'nonzero' })), this.budget);
  }

  /** What some joined outlines fill and others do not. */
  minus(rings: Float64Array[], taken: Float64Array[]): Float64Array[] {
    return rings.length === 0 || taken.length === 0 ? rings : subtractRings(rings, taken, this.budget);
  }

  /** Whether an outline fills a share of a box that starts at 0, 0. */
  covers(one: Drawn, page: PageSize, share: number): boolean {
    if (one.pen !== undefined) return false;
    const { xMm, yMm, widthMm, heightMm } = shapeBounds(flattenPath(one.segments, one.to, { tolerance: Infinity, leastSteps: 4 }));
    const [right, bottom] = [Math.min(page.widthMm, xMm + widthMm), Math.min(page.heightMm, yMm + heightMm)];
    const least = page.widthMm * page.heightMm * share;
    // Seldom does more than one come near it, so only that one is joined and measured.
    if (Math.max(0, right - Math.max(0, xMm)) * Math.max(0, bottom - Math.max(0, yMm)) < least) return false;
    const ring = Float64Array.of(0, 0, page.widthMm, 0, page.widthMm, page.heightMm, 0, page.heightMm);
    const inside = cutRings(this.union([one]), [ring], this.budget);
    return inside.length > 0 && outlineArea({ rings: inside, fillRule: 'nonzero' }) >= least;
  }

  /** What of some joined outlines lies within a clip. */
  cut(rings: Float64Array[], clip: Clip): Float64Array[] {
    if (rings.length === 0) return rings;
    let window = this.clipped.get(clip);
    if (window === undefined) {
      window = this.union(clip.drawn);
      this.clipped.set(clip, window);
    }
    if (isBox(window) && isWithin(shapeBounds(rings), shapeBounds(window))) return rings;
    return cutRings(rings, window, this.budget);
  }

  private flatten(one: Drawn): Outline {
    const { tolerance } = this;
    const mostPoints = MAX_POINTS - this.points;
    const rings =
      one.pen === undefined
        ? flattenPath(one.segments, one.to, { tolerance, leastSteps: 1, mostPoints })
        : strokeArea(one.segments, { to: one.to, pen: one.pen, tolerance, mostPoints });
    for (const ring of rings) this.points += ring.length / 2;
    return { rings, fillRule: one.fillRule };
  }
}

function isBox(rings: readonly Float64Array[]): boolean {
  if (rings.length !== 1 || entryAt(rings, 0).length !== 8) return false;
  const ring = entryAt(rings, 0);
  return [0, 2, 4, 6].every((i) => ring[i] === ring[(i + 2) % 8] || ring[i + 1] === ring[(i + 3) % 8]);
}

function isWithin(inner: Box, outer: Box): boolean {
  return (
    inner.xMm >= outer.xMm &&
    inner.yMm >= outer.yMm &&
    inner.xMm + inner.widthMm <= outer.xMm + outer.widthMm &&
    inner.yMm + inner.heightMm <= outer.yMm + outer.heightMm
  );
}
