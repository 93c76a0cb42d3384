import { f64 } from '../base/at.ts';
import { lineAlong } from './along-ring.ts';
import { EdgeGrid } from './edge-grid.ts';
import { steadyParts, type Stretch } from './steady.ts';

/** Edges that turn farther from each other than this run no joint: cosine of 30° (a choice, no source). */
const FACING = Math.cos(Math.PI / 6);

/** Rounding of the boolean grid, mm. */
const ROUNDING_MM = 0.0002;

/** How two outlines count as running along each other. */
export interface JointReach {
  /** They meet where they lie no farther apart than this, mm. */
  apartMm: number;
  /** They hold where they overlap by this or more, mm. */
  overlapMm: number;
  /** Joints shorter than this are corners and crossings, mm; along as much, their distance hardly changes. */
  leastMm: number;
  /** Told how many edges are looked at. */
  spend?: (edges: number) => void;
}

/** Where an edge of one outline runs along the other. */
export interface Joint {
  lengthMm: number;
  /** The widest that they stand apart along it, mm; below 0 where they overlap all along it. */
  apartMm: number;
  /** The edge along it, flat, mm. */
  line: number[];
  /** The middle of it. */
  xMm: number;
  yMm: number;
}

/**
 * Where the edge of one area runs along the edge of another, its own inside on the one side and the other's on the
 * other, without overlapping by a stated width. Each stretch is measured square to the edge. Edges that only cross, or
 * only come near, at however shallow an angle, are no joint: see `steadyParts`.
 * @param rings as `normalise` gives them, mm
 * @param other edges of the other area, made of such rings
 * @returns joints in the order of the rings; a stretch that breaks off for less than both widths goes on
 */
export function jointsOf(rings: readonly Float64Array[], other: EdgeGrid, reach: JointReach): Joint[] {
  return rings.flatMap((ring) => joined(facingStretches(ring, other, reach), ring, reach));
}

function facingStretches(ring: Float64Array, other: EdgeGrid, reach: JointReach): Stretch[] {
  const found: Stretch[] = [];
  const margin = Math.max(reach.apartMm, reach.overlapMm);
  let alongMm = 0;
  for (let i = 0; i + 1 < ring.length; i += 2) {
    const next = (i + 2) % ring.length;
    const edge = new Edge(f64(ring, i), f64(ring, i + 1), f64(ring, next), f64(ring, next + 1));
    const near = other.near(edge, margin, reach.spend);
    for (const at of near) {
      const stretch = edge.facing(other.edges.subarray(at, at + 4), reach);
      if (stretch !== null) found.push({ ...stretch, fromMm: stretch.fromMm + alongMm, toMm: stretch.toMm + alongMm });
    }
    alongMm += edge.lengthMm;
  }
  return found;
}

class Edge {
  readonly x: number;
  readonly y: number;
  readonly toX: number;
  readonly toY: number;
  readonly lengthMm: number;

  constructor(x: number, y: number, toX: number, toY: number) {
    [this.x, this.y, this.toX, this.toY] = [x, y, toX, toY];
    this.lengthMm = Math.hypot(toX - x, toY - y);
  }

  /** What of this edge lies opposite another that runs the other way, as far as that lies within reach. */
  facing(other: Float64Array, { apartMm, overlapMm }: JointReach): Stretch | null {
    const [rx = 0, ry = 0, sx = 0, sy = 0] = other;
    const { x, y, lengthMm } = this;
    const [ux, uy] = [(this.toX - x) / lengthMm, (this.toY - y) / lengthMm];
    // Outer rings run clockwise as seen, so that outside is to the left: (uy, −ux).
    const along = (px: number, py: number): number => (px - x) * ux + (py - y) * uy;
    const out = (px: number, py: number): number => (px - x) * uy - (py - y) * ux;
    const [from, to] = [along(sx, sy), along(rx, ry)];
    if (!(to - from >= FACING * Math.hypot(sx - rx, sy - ry))) return null;
    const [atFrom, atTo] = [out(sx, sy), out(rx, ry)];
    let [low, high] = [Math.max(0, from), Math.min(lengthMm, to)];
    const slope = (atTo - atFrom) / (to - from);
    for (const [bound, side] of [
      [apartMm + ROUNDING_MM, 1],
      [ROUNDING_MM - overlapMm, -1],
    ] as const) {
      if (slope === 0 && (atFrom - bound) * side > 0) return null;
      if (slope === 0) continue;
      const crosses = from + (bound - atFrom) / slope;
      if (slope * side > 0) high = Math.min(high, crosses);
      else low = Math.max(low, crosses);
    }
    if (!(high > low)) return null;
    return { fromMm: low, toMm: high, fromApartMm: atFrom + slope * (low - from), toApartMm: atFrom + slope * (high - from) };
  }
}

/** Stretches of one ring that go on from each other, as joints. */
function joined(stretches: Stretch[], ring: Float64Array, { apartMm, overlapMm, leastMm }: JointReach): Joint[] {
  const joints: Joint[] = [];
  let run: Stretch[] = [];
  let endMm = -Infinity;
  const close = (): void => {
    for (const { fromMm, toMm, apartMm: widest } of steadyParts(run, leastMm)) {
      const [xMm = 0, yMm = 0] = lineAlong(ring, (fromMm + toMm) / 2, toMm);
      joints.push({ lengthMm: toMm - fromMm, apartMm: widest, line: lineAlong(ring, fromMm, toMm), xMm, yMm });
    }
  };
  for (const stretch of stretches.sort((a, b) => a.fromMm - b.fromMm)) {
    if (stretch.fromMm > endMm + apartMm + overlapMm) {
      close();
      run = [];
      endMm = stretch.toMm;
    }
    run.push(stretch);
    endMm = Math.max(endMm, stretch.toMm);
  }
  close();
  return joints;
}
