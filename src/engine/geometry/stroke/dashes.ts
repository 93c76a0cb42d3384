import { entryAt, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/geometry/stroke.ts';
import type { PenLine } from './pen-line.ts';

/** A dash without a length keeps this one, as a share of the pattern, so that its caps know their way. */
const DOT = 1e-6;

/**
 * Cuts a line into the dashes of a pattern; each is a line of its own with its caps.
 * @param pattern lengths of dash, gap, dash …, none below 0; an odd number is gone through twice
 * @param from where in the pattern the line begins
 * @param most dashes at most
 * @returns the line itself for a pattern of no length
 * @throws EngineError 'geometry.too-many-points' past `most`
 * Source: SVG 2 §13.5.6 (dash positions)
 */
export function dashLine(line: PenLine, pattern: readonly number[], { from, most }: { from: number; most: number }): PenLine[] {
  const lengths = pattern.length % 2 === 1 ? [...pattern, ...pattern] : pattern;
  const whole = lengths.reduce((sum, one) => sum + one, 0);
  if (!(whole > 0) || line.points.length < 4) return [line];
  if ((lineLength(line) / whole) * (lengths.length / 2) > most) {
    throw new EngineError('geometry.too-many-points', say.linesHaveMoreThan(most));
  }
  let rest = ((from % whole) + whole) % whole;
  let at = 0;
  while (rest >= num(lengths, at) && rest > 0) {
    rest -= num(lengths, at);
    at = (at + 1) % lengths.length;
  }
  const cutter = new Cutter(lengths, whole * DOT, at, num(lengths, at) - rest);
  const { points, corners, closed } = line;
  const n = points.length / 2;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const j = (i + 1) % n;
    cutter.go([num(points, 2 * i), num(points, 2 * i + 1)], [num(points, 2 * j), num(points, 2 * j + 1)], entryAt(corners, j));
  }
  return cutter.dashes;
}

/** Length of a line, its closing edge too. */
export function lineLength({ points, closed }: PenLine): number {
  let sum = 0;
  for (let i = 2; i < points.length; i += 2)
    sum += Math.hypot(num(points, i) - num(points, i - 2), num(points, i + 1) - num(points, i - 1));
  const end = points.length - 2;
  return closed ? sum + Math.hypot(num(points, 0) - num(points, end), num(points, 1) - num(points, end + 1)) : sum;
}

type Point = readonly [x: number, y: number];

/** Goes along edges and cuts them where the pattern says. */
class Cutter {
  readonly dashes: PenLine[] = [];
  private readonly lengths: readonly number[];
  private readonly dot: number;
  private at: number;
  private left: number;
  private open: PenLine | null = null;

  constructor(lengths: readonly number[], dot: number, at: number, left: number) {
    this.lengths = lengths;
    this.dot = dot;
    this.at = at;
    this.left = left;
  }

  go([ax, ay]: Point, [bx, by]: Point, corner: boolean): void {
    const length = Math.hypot(bx - ax, by - ay);
    if (length === 0) return;
    const on = (mm: number): Point => [ax + ((bx - ax) * mm) / length, ay + ((by - ay) * mm) / length];
    let done = 0;
    while (this.left <= length - done) {
      done += this.left;
      if (this.at % 2 === 0) this.end(on(done), on(done + this.dot), on(done - this.left));
      this.at = (this.at + 1) % this.lengths.length;
      this.left = num(this.lengths, this.at);
    }
    this.left -= length - done;
    if (this.at % 2 === 0) {
      this.open ??= this.begin(on(done));
      this.open.points.push(bx, by);
      this.open.corners.push(corner);
    }
  }

  private begin(point: Point): PenLine {
    const dash: PenLine = { points: [...point], corners: [true], closed: false };
    this.dashes.push(dash);
    return dash;
  }

  private end(point: Point, beyond: Point, start: Point): void {
    const dash = this.open ?? this.begin(start);
    const dotted = this.open === null && start[0] === point[0] && start[1] === point[1];
    dash.points.push(...(dotted ? beyond : point));
    dash.corners.push(true);
    this.open = null;
  }
}
