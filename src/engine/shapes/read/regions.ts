import { entryAt, f64, num } from '../../base/at.ts';
import { intersectOutlines, unionOutlines } from '../../geometry/booleans.ts';
import { flattenPath } from '../../geometry/flatten.ts';
import { shapeBounds } from '../../geometry/rings.ts';
import type { Box, Outline } from '../../geometry/types.ts';
import type { Clip, Drawn } from './drawn.ts';
import type { FaultList } from './faults.ts';
import { FLATTEN_SHARE, FLATTEN_TOLERANCE_MM, MAX_CROSSINGS, MAX_POINTS, MAX_REACH_MM } from './limits.ts';

/**
 * The tolerance for one drawing, mm: `FLATTEN_TOLERANCE_MM`, finer when the drawing is small.
 * @throws FileFault 'shape.size' when a point lies absurdly far out
 */
export function toleranceFor(drawn: readonly Drawn[], faults: FaultList): number {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const one of drawn) {
    const rings = flattenPath(one.segments, one.to, { tolerance: Infinity, leastSteps: 4 });
    const box = shapeBounds(rings);
    const reach = [box.xMm, box.yMm, box.xMm + box.widthMm, box.yMm + box.heightMm];
    if (!reach.every((v) => Math.abs(v) <= MAX_REACH_MM)) {
      throw faults.refuse(
        'shape.size',
        `its outlines reach more than ${MAX_REACH_MM / 1000} m from the page's corner; check its units and its viewBox.`,
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
  private readonly faults: FaultList;
  private readonly clipped = new Map<Clip, Float64Array[]>();
  private points = 0;

  constructor(tolerance: number, faults: FaultList) {
    this.tolerance = tolerance;
    this.faults = faults;
  }

  /**
   * The joined area of outlines, each within its clips, as `normalise` gives it.
   * @throws FileFault 'shape.too-many' past the caps
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
      let rings = unionOutlines(outlines);
      for (const clip of clips) rings = this.cut(rings, clip);
      regions.push({ rings, fillRule: 'nonzero' });
    }
    if (regions.length === 0) return [];
    return regions.length === 1 ? (entryAt(regions, 0).rings as Float64Array[]) : unionOutlines(regions);
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
    return intersectOutlines({ rings, fillRule: 'nonzero' }, { rings: window, fillRule: 'nonzero' });
  }

  private flatten(one: Drawn): Outline {
    const rings = flattenPath(one.segments, one.to, { tolerance: this.tolerance, leastSteps: 1 });
    for (const ring of rings) this.points += ring.length / 2;
    if (this.points > MAX_POINTS || likelyCrossings(rings) > MAX_CROSSINGS) {
      throw this.faults.refuse('shape.too-many', 'its outlines have too many corners or cross each other too often; simplify the drawing.');
    }
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

/** How often the edges cross, from pairs taken at even steps; drawings of few edges are never refused. */
function likelyCrossings(rings: readonly (readonly number[])[]): number {
  let count = 0;
  for (const ring of rings) count += ring.length / 2;
  if (count < 3000) return 0;
  const edges = new Float64Array(count * 4);
  let at = 0;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 2) {
      const next = i + 2 === ring.length ? 0 : i + 2;
      edges[at++] = num(ring, i);
      edges[at++] = num(ring, i + 1);
      edges[at++] = num(ring, next);
      edges[at++] = num(ring, next + 1);
    }
  }
  const samples = 50_000;
  let crossing = 0;
  // Multiples of two large primes run through the pairs without a pattern of their own.
  for (let k = 1; k <= samples; k++) {
    const i = (k * 7_919) % count;
    const j = (k * 104_729 + Math.floor(k / count)) % count;
    if (i !== j && cross(edges, i * 4, j * 4)) crossing++;
  }
  return (crossing / samples) * ((count * count) / 2);
}

/** Whether two edges of a table of four numbers an edge cross; i and j are where they begin there. */
function cross(edges: Float64Array, i: number, j: number): boolean {
  return sideOf(edges, i, j) * sideOf(edges, i, j + 2) < 0 && sideOf(edges, j, i) * sideOf(edges, j, i + 2) < 0;
}

/** On which side of an edge a point of the table lies: above 0, below 0, or 0 on its line. */
function sideOf(table: Float64Array, edge: number, point: number): number {
  const ax = f64(table, edge);
  const ay = f64(table, edge + 1);
  return (f64(table, edge + 2) - ax) * (f64(table, point + 1) - ay) - (f64(table, edge + 3) - ay) * (f64(table, point) - ax);
}
