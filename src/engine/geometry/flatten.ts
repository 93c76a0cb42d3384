import { num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/geometry/geometry.ts';
import type { Affine } from './rings.ts';

/**
 * A piece of an outline in the coordinates of the file, all absolute.
 * 'A' is the elliptical arc of SVG: radii, turn in degrees, large-arc and sweep flags, end point.
 */
export type PathSegment =
  | readonly ['M' | 'L', number, number]
  | readonly ['Q', number, number, number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['A', number, number, number, boolean, boolean, number, number]
  | readonly ['Z'];

/** How finely curves become straight edges. */
export interface Fineness {
  /** No point of a curve is farther than this from its edges, in the units mapped to. */
  tolerance: number;
  /** Edges a curve at least. */
  leastSteps: number;
  /** Corners of all rings at most; any number when left out. */
  mostPoints?: number;
}

/** Nothing may lie farther from the page's corner, curves' handles included, mm: a kilometre. */
const FARTHEST_MM = 1e6;

/** Edges a curve at most; a circle of 8 m has 630 at 0.05 mm. */
const MOST_STEPS = 10_000;

/** An ellipse that is flatter than this is a line. */
const FLATTEST = 1e-9;

/**
 * Turns outlines into rings of straight edges; open outlines are closed, as a fill closes them.
 * @param segments starts with 'M'
 * @param to from file coordinates to mm; curves are measured after it
 * @returns flat rings [x0, y0, …]; a ring may have fewer than three points
 * @throws EngineError 'geometry.too-far' for a point that is no number or over a kilometre away,
 *   'geometry.too-many-points'
 * Cost: edges grow with 1 / √tolerance, up to 10,000 a curve. Pure.
 */
export function flattenPath(segments: readonly PathSegment[], to: Affine, fineness: Fineness): number[][] {
  const [a, b, c, d, e, f] = to;
  const rings: number[][] = [];
  let ring: number[] = [];
  // Where the pen and the start of the outline are, in file coordinates.
  let [x, y, startX, startY] = [0, 0, 0, 0];
  const mapX = (px: number, py: number): number => near(a * px + c * py + e);
  const mapY = (px: number, py: number): number => near(b * px + d * py + f);
  const { mostPoints = Infinity } = fineness;
  let points = 0;
  const moveTo = (px: number, py: number): void => {
    ring = [mapX(px, py), mapY(px, py)];
    rings.push(ring);
    [startX, startY] = [px, py];
  };
  let closed = false;
  for (const segment of segments) {
    if (segment[0] === 'Z') {
      [x, y] = [startX, startY];
      closed = true;
      continue;
    }
    if (segment[0] === 'M') moveTo(segment[1], segment[2]);
    else if (closed) moveTo(startX, startY);
    closed = false;
    const before = ring.length;
    switch (segment[0]) {
      case 'L':
        ring.push(mapX(segment[1], segment[2]), mapY(segment[1], segment[2]));
        break;
      case 'Q': {
        const [, x1, y1, x2, y2] = segment;
        const p = [x, y, x1, y1, x2, y2];
        addQuadratic(ring, mapPoints(p, mapX, mapY), fineness);
        break;
      }
      case 'C': {
        const [, x1, y1, x2, y2, x3, y3] = segment;
        const p = [x, y, x1, y1, x2, y2, x3, y3];
        addCubic(ring, mapPoints(p, mapX, mapY), fineness);
        break;
      }
      case 'A':
        addArc(ring, { x, y, segment, to }, fineness);
        break;
    }
    points += (ring.length - before) / 2;
    if (points > mostPoints) {
      throw new EngineError('geometry.too-many-points', say.outlinesHaveMoreThan(mostPoints));
    }
    x = segment[segment.length - 2] as number;
    y = segment[segment.length - 1] as number;
  }
  return rings;
}

function near(mm: number): number {
  if (!(Math.abs(mm) <= FARTHEST_MM)) {
    throw new EngineError('geometry.too-far', say.pointOfOutlineLies(FARTHEST_MM / 1000));
  }
  return mm;
}

type Axis = (x: number, y: number) => number;

function mapPoints(p: readonly number[], mapX: Axis, mapY: Axis): number[] {
  const out: number[] = [];
  for (let i = 0; i < p.length; i += 2) out.push(mapX(num(p, i), num(p, i + 1)), mapY(num(p, i), num(p, i + 1)));
  return out;
}

/**
 * Equal steps of the parameter. An edge is off its curve by at most (1/8) max|B''| / n², the error
 * of linear interpolation (any numerical analysis textbook; for Bézier curves also Wang 1984).
 */
function stepsFor(secondDerivative: number, fineness: Fineness): number {
  const steps = Math.ceil(Math.sqrt(secondDerivative / (8 * fineness.tolerance)));
  return Math.min(Math.max(fineness.leastSteps, steps, 1), MOST_STEPS);
}

function addQuadratic(ring: number[], p: readonly number[], fineness: Fineness): void {
  const [x0, y0, x1, y1, x2, y2] = p as [number, number, number, number, number, number];
  const bend = 2 * Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2);
  const n = stepsFor(bend, fineness);
  for (let i = 1; i < n; i++) {
    const t = i / n;
    const u = 1 - t;
    ring.push(u * u * x0 + 2 * u * t * x1 + t * t * x2, u * u * y0 + 2 * u * t * y1 + t * t * y2);
  }
  ring.push(x2, y2);
}

function addCubic(ring: number[], p: readonly number[], fineness: Fineness): void {
  const [x0, y0, x1, y1, x2, y2, x3, y3] = p as [number, number, number, number, number, number, number, number];
  // B'' runs in a straight line from the one to the other, so the longer one is its maximum.
  const bend = 6 * Math.max(Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2), Math.hypot(x1 - 2 * x2 + x3, y1 - 2 * y2 + y3));
  const n = stepsFor(bend, fineness);
  for (let i = 1; i < n; i++) {
    const t = i / n;
    const u = 1 - t;
    const [b0, b1, b2, b3] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    ring.push(b0 * x0 + b1 * x1 + b2 * x2 + b3 * x3, b0 * y0 + b1 * y1 + b2 * y2 + b3 * y3);
  }
  ring.push(x3, y3);
}

/** An elliptical arc from where the pen is, in file coordinates, and the map to mm. */
interface Arc {
  x: number;
  y: number;
  segment: Extract<PathSegment, readonly ['A', ...unknown[]]>;
  to: Affine;
}

/** End point to centre form: SVG 1.1 appendix F.6.5, radii out of range: F.6.6. */
function addArc(ring: number[], arc: Arc, fineness: Fineness): void {
  const { x, y, segment, to } = arc;
  const [, rxIn, ryIn, turnDeg, large, sweep, endX, endY] = segment;
  const [a, b, c, d, e, f] = to;
  const end = (): number => ring.push(near(a * endX + c * endY + e), near(b * endX + d * endY + f));
  if (x === endX && y === endY) return;
  let rx = Math.abs(rxIn);
  let ry = Math.abs(ryIn);
  if (Math.min(rx, ry) <= FLATTEST * Math.max(rx, ry)) {
    end();
    return;
  }
  const phi = (turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
  // Half the chord, in circles of radius 1 instead of ellipses.
  const halfX = (x - endX) / 2;
  const halfY = (y - endY) / 2;
  let u = (cos * halfX + sin * halfY) / rx;
  let v = (cos * halfY - sin * halfX) / ry;
  const reach = Math.hypot(u, v);
  if (reach > 1) {
    rx *= reach;
    ry *= reach;
    u /= reach;
    v /= reach;
  }
  const square = Math.min(1, u * u + v * v);
  const offset = (large === sweep ? -1 : 1) * Math.sqrt((1 - square) / square);
  const cu = offset * v;
  const cv = -offset * u;
  const from = Math.atan2(v - cv, u - cu);
  let span = Math.atan2(-v - cv, -u - cu) - from;
  if (sweep && span < 0) span += 2 * Math.PI;
  if (!sweep && span > 0) span -= 2 * Math.PI;
  // From the unit circle to mm in one map.
  const mx = [a * cos * rx + c * sin * rx, b * cos * rx + d * sin * rx] as const;
  const my = [c * cos * ry - a * sin * ry, d * cos * ry - b * sin * ry] as const;
  const centreX = (x + endX) / 2 + cos * rx * cu - sin * ry * cv;
  const centreY = (y + endY) / 2 + sin * rx * cu + cos * ry * cv;
  const ox = near(a * centreX + c * centreY + e);
  const oy = near(b * centreX + d * centreY + f);
  const n = arcSteps(Math.abs(span), near(longestRadius(mx, my)), fineness);
  for (let i = 1; i < n; i++) {
    const angle = from + (span * i) / n;
    const [p, q] = [Math.cos(angle), Math.sin(angle)];
    ring.push(ox + mx[0] * p + my[0] * q, oy + mx[1] * p + my[1] * q);
  }
  end();
}

/** The longer half axis of the ellipse that the two columns span: the greater singular value. */
function longestRadius(p: readonly [number, number], q: readonly [number, number]): number {
  const sum = Math.hypot(p[0] + q[1], p[1] - q[0]);
  const difference = Math.hypot(p[0] - q[1], p[1] + q[0]);
  return (sum + difference) / 2;
}

/** A chord over an angle δ is off its circle by r (1 − cos δ/2); a map stretches that by its longest radius. */
function arcSteps(span: number, radius: number, fineness: Fineness): number {
  const quarters = Math.ceil(span / (Math.PI / 2));
  const least = Math.max(quarters, fineness.leastSteps, 1);
  if (!(fineness.tolerance < radius)) return least;
  return Math.min(Math.max(least, Math.ceil(span / (2 * Math.acos(1 - fineness.tolerance / radius)))), MOST_STEPS);
}
