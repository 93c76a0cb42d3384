import { u8 } from '../../base/at.ts';
import { type Descriptor, LIGHTS_FROM } from '../look/descriptor.ts';

/** Whether a sum is enough is asked after so many terms: asking costs as much as a term. */
const TERMS = 12;

/** A descriptor turned round so that what tells prints apart soonest, where light lies, comes first. */
export type Turned = Uint8Array;

/**
 * @param at a descriptor of any length
 * @param out written to and given back; of the same length
 */
export function turned(at: Descriptor, out: Turned = new Uint8Array(at.length)): Turned {
  const from = LIGHTS_FROM % at.length;
  out.set(at.subarray(from));
  out.set(at.subarray(0, from), at.length - from);
  return out;
}

/** The descriptor of which this is the turned one. */
function turnedBack(at: Turned): Descriptor {
  const from = at.length - (LIGHTS_FROM % at.length);
  const out = new Uint8Array(at.length);
  out.set(at.subarray(from));
  out.set(at.subarray(0, from), at.length - from);
  return out;
}

/** Points of one length that were taken, packed: a wall of ten thousand prints asks for the nearest of them a hundred million times. */
export class TakenPoints {
  private points = new Uint8Array(0);
  private pointLength = 0;
  private count = 0;

  /** How many were taken. */
  get size(): number {
    return this.count;
  }

  /** The descriptor of a point, by its number from 0. */
  at(point: number): Descriptor {
    return turnedBack(this.points.subarray(point * this.pointLength, (point + 1) * this.pointLength));
  }

  add(at: Turned): void {
    this.pointLength = at.length;
    const from = this.count++ * at.length;
    if (from + at.length > this.points.length) {
      const grown = new Uint8Array(Math.max(64 * at.length, this.points.length * 2));
      grown.set(this.points);
      this.points = grown;
    }
    this.points.set(at, from);
  }

  /**
   * Square of the distance to the nearest, in steps; whole.
   * @param most what is given where none is nearer
   */
  nearest(at: Turned, most = Infinity): number {
    let square = most;
    // The last taken are asked first: the farther on, the nearer lie those taken late.
    for (let point = this.count - 1; point >= 0 && square > 0; point--) square = this.squareTo(point, at, square);
    return square;
  }

  /** The same of the last that was taken alone. */
  toLast(at: Turned, most: number): number {
    return this.squareTo(this.count - 1, at, most);
  }

  private squareTo(point: number, at: Turned, most: number): number {
    const { points } = this;
    const { length } = at;
    const from = point * length;
    let sum = 0;
    for (let i = 0; i < length && sum < most;) {
      for (const until = Math.min(i + TERMS, length); i < until; i++) {
        const off = u8(at, i) - u8(points, from + i);
        sum += off * off;
      }
    }
    return Math.min(sum, most);
  }
}
