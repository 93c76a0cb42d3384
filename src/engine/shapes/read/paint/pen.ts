import { num } from '../../../base/at.ts';
import { EngineError } from '../../../base/error.ts';
import type { PathSegment } from '../../../geometry/flatten.ts';
import { type Affine, compose, mapRings, ringArea } from '../../../geometry/rings.ts';
import { dashLine, lineLength } from '../../../geometry/stroke/dashes.ts';
import { penLines, type PenLine } from '../../../geometry/stroke/pen-line.ts';
import { strokeRings } from '../../../geometry/stroke/stroke-outline.ts';
import type { Pen } from '../drawn.ts';
import { diagonalOf, numbersOf, pxOf, type Viewport } from '../lengths.ts';
import { MAX_POINTS, MAX_REACH_MM } from '../limits.ts';
import type { Look } from '../look.ts';
import { say } from '../../../words/en/shapes/read.ts';

/** A pen pressed flatter than this has no width, as a share of its length squared. */
const FLAT = 1e-9;

/**
 * The pen of a look; values that are none of CSS's are as if they were not there.
 * @param to from the element's coordinates to mm
 * @param viewport what percentages refer to
 */
export function penOf(look: Look, { to, viewport, pathLength }: { to: Affine; viewport: Viewport | null; pathLength: string | undefined }): Pen {
  const diagonal = viewport === null ? null : diagonalOf(viewport);
  const limit = Number.parseFloat(look['stroke-miterlimit']);
  const join = look['stroke-linejoin'].toLowerCase();
  const cap = look['stroke-linecap'].toLowerCase();
  const dashes = look['stroke-dasharray'].split(/[\s,]+/u).map((one) => pxOf(one, diagonal) ?? -1);
  const whole = numbersOf(pathLength ?? '')?.[0];
  return {
    width: pxOf(look['stroke-width'], diagonal) ?? 1,
    cap: cap === 'round' || cap === 'square' ? cap : 'butt',
    join: join === 'round' || join === 'bevel' ? join : 'miter',
    miterLimit: limit >= 1 ? limit : 4,
    dashes: dashes.every((one) => one >= 0) ? dashes : [],
    dashFrom: pxOf(look['stroke-dashoffset'], diagonal) ?? 0,
    pathLength: whole !== undefined && whole > 0 ? whole : null,
    frame: to,
  };
}

/** How far a pen covers beyond its line at most, mitres not counted, mm. */
export function reachOf({ width, frame: [a, b, c, d] }: Pen): number {
  return (width / 2) * Math.max(Math.hypot(a, b), Math.hypot(c, d));
}

/**
 * What a stroke covers: rings that overlap, to be filled by the nonzero rule, mm.
 * @param to from the path's coordinates to mm
 * @param tolerance how far curves may be from their edges, mm
 * @param mostPoints corners at most
 * @throws EngineError 'geometry.too-far', 'geometry.too-many-points'
 */
export function strokeArea(
  segments: readonly PathSegment[],
  { to, pen, tolerance, mostPoints }: { to: Affine; pen: Pen; tolerance: number; mostPoints: number },
): Float64Array[] {
  const back = inverseOf(pen.frame);
  if (back === null) return [];
  const [a, b, c, d] = pen.frame;
  const fineness = tolerance / Math.max(Math.hypot(a, b), Math.hypot(c, d));
  const lines = penLines(segments, compose(back, to), { tolerance: fineness, leastSteps: 1, mostPoints });
  const rings: Float64Array[] = [];
  let points = 0;
  for (const line of dashed(lines, pen, mostPoints)) {
    for (const ring of mapRings(strokeRings(line, pen, fineness), pen.frame)) {
      points += ring.length / 2;
      if (points > mostPoints) throw new EngineError('geometry.too-many-points', say.strokesHaveMoreThan(MAX_POINTS));
      if (!ring.every((mm) => Math.abs(mm) <= MAX_REACH_MM)) {
        throw new EngineError('geometry.too-far', say.strokeReachesTooFar);
      }
      // A mirrored pen turns its rings round; with others they would then cancel.
      rings.push(a * d - b * c < 0 ? reversed(ring) : ring);
    }
  }
  return rings.filter((ring) => ringArea(ring) !== 0 || ring.length > 6);
}

function dashed(lines: readonly PenLine[], pen: Pen, most: number): PenLine[] {
  if (pen.dashes.length === 0) return [...lines];
  const drawn = lines.reduce((sum, line) => sum + lineLength(line), 0);
  const scale = pen.pathLength === null ? 1 : drawn / pen.pathLength;
  const pattern = pen.dashes.map((one) => one * scale);
  return lines.flatMap((line) => dashLine(line, pattern, { from: pen.dashFrom * scale, most }));
}

function inverseOf([a, b, c, d, e, f]: Affine): Affine | null {
  const size = a * d - b * c;
  if (!(Math.abs(size) > FLAT * (a * a + b * b + c * c + d * d))) return null;
  return [d / size, -b / size, -c / size, a / size, (c * f - d * e) / size, (b * e - a * f) / size];
}

function reversed(ring: Float64Array): Float64Array {
  const n = ring.length;
  return Float64Array.from(ring, (_, i) => num(ring, i % 2 === 0 ? n - 2 - i : n - i));
}
