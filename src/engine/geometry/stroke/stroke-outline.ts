import { entryAt, num } from '../../base/at.ts';
import { backwards, type PenLine } from './pen-line.ts';

/** How lines end and turn. */
export interface Nib {
  /** In the units of the lines; above 0. */
  width: number;
  cap: 'butt' | 'round' | 'square';
  join: 'miter' | 'round' | 'bevel';
  /** Length of a mitre over the width, at most; a longer one is a bevel. */
  miterLimit: number;
}

/** A turn smaller than this is none, as a sine. */
const STRAIGHT = 1e-9;

type Point = readonly [x: number, y: number];

/**
 * What a pen covers along a line: rings that overlap and all run clockwise as seen (y down), so that
 * they fill by the nonzero rule what the edges' bars, the joins and the caps cover together.
 * A library's offsetting is not used: past the limit it squares a mitre, where SVG bevels it.
 * @param tolerance how far round joins and caps may be from their circle
 * Source: SVG 2 §13.4 (shape of a stroke), §13.5.3–5 (caps, joins, mitre limit)
 */
export function strokeRings(line: PenLine, nib: Nib, tolerance: number): number[][] {
  const pen = new Pen(nib, tolerance);
  if (line.points.length < 4) return pen.dot([num(line.points, 0), num(line.points, 1)]);
  const back = backwards(line);
  if (line.closed) return [pen.side(line), pen.side(back)];
  return [[...pen.side(line), ...pen.side(back)]];
}

class Pen {
  private readonly nib: Nib;
  private readonly r: number;
  private readonly step: number;

  constructor(nib: Nib, tolerance: number) {
    this.nib = nib;
    this.r = nib.width / 2;
    this.step = tolerance < this.r ? 2 * Math.acos(1 - tolerance / this.r) : Math.PI / 2;
  }

  /** A line without a length: a round or square dot, or none. */
  dot([x, y]: Point): number[][] {
    const { r } = this;
    if (this.nib.cap === 'butt') return [];
    if (this.nib.cap === 'square') return [[x - r, y - r, x + r, y - r, x + r, y + r, x - r, y + r]];
    const ring: number[] = [];
    this.arc(ring, [x, y], [r, 0], 2 * Math.PI);
    return [ring];
  }

  /** The outline on the left of the pen; an open line ends in its cap. */
  side({ points, corners, closed }: PenLine): number[] {
    const ring: number[] = [];
    const n = points.length / 2;
    const edges = closed ? n : n - 1;
    const ways = Array.from({ length: edges }, (_, i) => this.way(points, i, (i + 1) % n));
    const long = (i: number): number => {
      const j = (i + 1) % n;
      return Math.hypot(num(points, 2 * j) - num(points, 2 * i), num(points, 2 * j + 1) - num(points, 2 * i + 1));
    };
    for (let i = 0; i < n; i++) {
      const at: Point = [num(points, 2 * i), num(points, 2 * i + 1)];
      if (!closed && i === 0) put(ring, at, this.left(entryAt(ways, 0)));
      else if (!closed && i === n - 1) this.end(ring, at, entryAt(ways, edges - 1));
      else {
        const before = (i + edges - 1) % edges;
        const turn = {
          from: entryAt(ways, before),
          to: entryAt(ways, i),
          corner: entryAt(corners, i),
          short: Math.min(long(before), long(i)),
        };
        this.turn(ring, at, turn);
      }
    }
    return ring;
  }

  private way(points: readonly number[], i: number, j: number): Point {
    const [x, y] = [num(points, 2 * j) - num(points, 2 * i), num(points, 2 * j + 1) - num(points, 2 * i + 1)];
    const length = Math.hypot(x, y);
    return length === 0 ? [1, 0] : [x / length, y / length];
  }

  private left([x, y]: Point): Point {
    return [y * this.r, -x * this.r];
  }

  private end(ring: number[], at: Point, way: Point): void {
    const [x, y] = this.left(way);
    const reach: Point = [way[0] * this.r, way[1] * this.r];
    if (this.nib.cap === 'round') {
      this.arc(ring, at, [x, y], Math.PI);
      return;
    }
    put(ring, at, [x, y]);
    if (this.nib.cap === 'square') {
      put(ring, at, [x + reach[0], y + reach[1]]);
      put(ring, at, [reach[0] - x, reach[1] - y]);
    }
    put(ring, at, [-x, -y]);
  }

  private turn(ring: number[], at: Point, { from, to, corner, short }: { from: Point; to: Point; corner: boolean; short: number }): void {
    const sine = from[0] * to[1] - from[1] * to[0];
    const cosine = from[0] * to[0] + from[1] * to[1];
    const [before, after] = [this.left(from), this.left(to)];
    const mitre: Point = [(before[0] + after[0]) / (1 + cosine), (before[1] + after[1]) / (1 + cosine)];
    if (Math.abs(sine) < STRAIGHT && cosine > 0) {
      put(ring, at, after);
    } else if (sine < 0) {
      // Where both edges are long enough their bars meet in one point; else each goes round by the pen's middle.
      if (2 * this.r * Math.tan(-Math.atan2(sine, cosine) / 2) <= short) put(ring, at, mitre);
      else for (const off of [before, [0, 0] as const, after]) put(ring, at, off);
    } else if (!corner || this.nib.join === 'round') {
      this.arc(ring, at, before, Math.atan2(sine, cosine));
    } else {
      put(ring, at, before);
      // Source: SVG 2 §13.5.5: mitre length over width = 1 ÷ sin(θ/2), θ between the edges.
      if (this.nib.join === 'miter' && Math.sqrt(2 / (1 + cosine)) <= this.nib.miterLimit) put(ring, at, mitre);
      put(ring, at, after);
    }
  }

  private arc(ring: number[], at: Point, [x, y]: Point, angle: number): void {
    const steps = Math.max(1, Math.ceil(Math.abs(angle) / this.step));
    for (let i = 0; i <= steps; i++) {
      const [cos, sin] = [Math.cos((angle * i) / steps), Math.sin((angle * i) / steps)];
      put(ring, at, [x * cos - y * sin, x * sin + y * cos]);
    }
  }
}

function put(ring: number[], at: Point, off: Point): void {
  ring.push(at[0] + off[0], at[1] + off[1]);
}
