import { defined, entryAt, num } from '../../base/at.ts';
import { flattenPath, type Fineness, type PathSegment } from '../flatten.ts';
import type { Affine } from '../rings.ts';

/** A line as a pen follows it. */
export interface PenLine {
  /** Flat [x0, y0, …]; a closed line does not repeat its first point. */
  points: number[];
  /** Whether two pieces meet at each point: there the join shows, elsewhere a curve goes on. */
  corners: boolean[];
  closed: boolean;
}

/** Nearer points are one, in the units mapped to: far under the grid of the booleans. */
const SAME = 1e-7;

/**
 * Turns a path into the lines that a pen follows, each with its corners; a lone 'M' draws none.
 * @param to from file coordinates to mm
 * @throws EngineError as `flattenPath`
 */
export function penLines(segments: readonly PathSegment[], to: Affine, fineness: Fineness): PenLine[] {
  const lines: PenLine[] = [];
  let line: PenLine | null = null;
  let left = fineness.mostPoints ?? Infinity;
  let [x, y, startX, startY] = [0, 0, 0, 0];
  for (const segment of segments) {
    if (segment[0] === 'M') {
      [, x, y] = segment;
      [startX, startY] = [x, y];
      line = null;
      continue;
    }
    line ??= begin(lines, x, y, to);
    if (segment[0] === 'Z') {
      close(line);
      [x, y] = [startX, startY];
      line = null;
      continue;
    }
    const ring = defined(flattenPath([['M', x, y], segment], to, { ...fineness, mostPoints: left })[0]);
    left -= ring.length / 2 - 1;
    for (let i = 2; i + 1 < ring.length; i += 2) add(line, num(ring, i), num(ring, i + 1), i + 3 >= ring.length);
    x = segment[segment.length - 2] as number;
    y = segment[segment.length - 1] as number;
  }
  return lines;
}

function begin(lines: PenLine[], x: number, y: number, [a, b, c, d, e, f]: Affine): PenLine {
  const line: PenLine = { points: [a * x + c * y + e, b * x + d * y + f], corners: [true], closed: false };
  lines.push(line);
  return line;
}

function add({ points, corners }: PenLine, x: number, y: number, corner: boolean): void {
  if (isSame(points, points.length - 2, x, y)) {
    if (corner) corners[corners.length - 1] = true;
    return;
  }
  points.push(x, y);
  corners.push(corner);
}

function close(line: PenLine): void {
  line.closed = true;
  const { points, corners } = line;
  if (points.length > 2 && isSame(points, points.length - 2, num(points, 0), num(points, 1))) {
    points.length -= 2;
    corners.pop();
  }
}

function isSame(points: readonly number[], at: number, x: number, y: number): boolean {
  return Math.abs(num(points, at) - x) < SAME && Math.abs(num(points, at + 1) - y) < SAME;
}

/** The same line from its end to its start. */
export function backwards({ points, corners, closed }: PenLine): PenLine {
  const turned: number[] = [];
  for (let i = points.length - 2; i >= 0; i -= 2) turned.push(num(points, i), num(points, i + 1));
  return { points: turned, corners: corners.map((_, i) => entryAt(corners, corners.length - 1 - i)), closed };
}
