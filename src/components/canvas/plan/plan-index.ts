import { num, u32 } from '../../../engine/base/at.ts';
import type { WallPlan } from './wall-plan.ts';

/** Prints of about so many across and down share a bin. */
const BIN_PRINTS = 3;
/** Numbers, shadows and marks reach so far beyond a print, wall units. */
const REACH = 24;
const PAGE_ROWS = 3;

/** Which bins of a plan, as half-open ranges. */
export interface BinRange {
  firstColumn: number;
  endColumn: number;
  firstRow: number;
  endRow: number;
}

/** Finds the prints of a plan by where they hang. */
export class PlanIndex {
  readonly plan: WallPlan;
  private readonly size: number;
  private readonly columns: number;
  private readonly rows: number;
  /** Start of each bin in `prints`, and the end of the last. */
  private readonly starts: Uint32Array;
  private readonly prints: Uint32Array;
  private readonly placeOf = new Map<number, number>();

  constructor(plan: WallPlan) {
    this.plan = plan;
    this.size = Math.max(plan.printWidth, plan.printHeight) * BIN_PRINTS;
    this.columns = Math.max(1, Math.ceil(plan.width / this.size));
    this.rows = Math.max(1, Math.ceil(plan.height / this.size));
    this.starts = new Uint32Array(this.columns * this.rows + 1);
    this.prints = new Uint32Array(plan.sequence.length);
    const bins = plan.sequence.map((index) => this.binOf(num(plan.at, index * 2), num(plan.at, index * 2 + 1)));
    for (const bin of bins) this.starts[bin + 1] = u32(this.starts, bin + 1) + 1;
    for (let bin = 0; bin < this.columns * this.rows; bin++) this.starts[bin + 1] = u32(this.starts, bin + 1) + u32(this.starts, bin);
    const next = this.starts.slice();
    plan.sequence.forEach((index, place) => {
      const bin = num(bins, place);
      const at = u32(next, bin);
      this.prints[at] = index;
      next[bin] = at + 1;
      this.placeOf.set(index, place);
    });
  }

  private binOf(x: number, y: number): number {
    return clamp(Math.floor(y / this.size), this.rows - 1) * this.columns + clamp(Math.floor(x / this.size), this.columns - 1);
  }

  hangs(index: number): boolean {
    return this.placeOf.has(index);
  }

  /** The bins that touch a part of the wall, with the numbers and shadows of their prints. */
  bins(x: number, y: number, width: number, height: number): BinRange {
    const { plan, size } = this;
    return {
      firstColumn: clamp(Math.floor((x - plan.printWidth - REACH) / size), this.columns),
      endColumn: clamp(Math.floor((x + width + REACH) / size) + 1, this.columns),
      firstRow: clamp(Math.floor((y - plan.printHeight - REACH) / size), this.rows),
      endRow: clamp(Math.floor((y + height + REACH) / size) + 1, this.rows),
    };
  }

  /** The prints in a range of bins. */
  in(range: BinRange, out: number[] = []): number[] {
    out.length = 0;
    for (let row = range.firstRow; row < range.endRow; row++) {
      const from = u32(this.starts, row * this.columns + range.firstColumn);
      const to = u32(this.starts, row * this.columns + range.endColumn);
      if (range.endColumn > range.firstColumn) for (let i = from; i < to; i++) out.push(u32(this.prints, i));
    }
    return out;
  }

  /** The prints that touch a rectangle. */
  touching(x: number, y: number, width: number, height: number): number[] {
    const { at, printWidth, printHeight } = this.plan;
    return this.in(this.bins(x, y, width, height)).filter((index) => {
      const left = num(at, index * 2);
      const top = num(at, index * 2 + 1);
      return left < x + width && left + printWidth > x && top < y + height && top + printHeight > y;
    });
  }

  /** Whether a print, its shadow or its number touches a rectangle. */
  touches(index: number, { x, y, width, height }: { x: number; y: number; width: number; height: number }): boolean {
    const { at, printWidth, printHeight } = this.plan;
    const left = num(at, index * 2);
    const top = num(at, index * 2 + 1);
    const across = left - REACH < x + width && left + printWidth + REACH > x;
    return across && top - REACH < y + height && top + printHeight + REACH > y;
  }

  /** The print at a point with its number's room below it, −1 between prints. */
  printAt(x: number, y: number): number {
    return this.touching(x, y - REACH * 0.9, 0.001, REACH * 0.9).at(-1) ?? -1;
  }

  /**
   * The print that an arrow, page, Home or End key leads to; the same when there is none.
   * @param has whether a print is there already
   */
  after(from: number, key: string, has: (index: number) => boolean): number {
    const { sequence, inRows } = this.plan;
    const place = this.placeOf.get(from);
    if (key === 'Home' || place === undefined) return sequence.find(has) ?? from;
    if (key === 'End') return sequence.findLast(has) ?? from;
    if (inRows && (key === 'ArrowLeft' || key === 'ArrowRight')) {
      const next = sequence[place + (key === 'ArrowLeft' ? -1 : 1)];
      return next !== undefined && has(next) ? next : from;
    }
    if (key === 'PageUp' || key === 'PageDown') {
      let to = from;
      for (let i = 0; i < PAGE_ROWS; i++) to = this.nearest(to, key === 'PageUp' ? 'ArrowUp' : 'ArrowDown', has);
      if (to === from && inRows) return (key === 'PageUp' ? sequence.find(has) : sequence.findLast(has)) ?? from;
      return to;
    }
    return this.nearest(from, key, has);
  }

  /** The print that lies most nearly in a direction: what is off it counts twice. */
  private nearest(from: number, key: string, has: (index: number) => boolean): number {
    const { at, sequence } = this.plan;
    const sign = key === 'ArrowLeft' || key === 'ArrowUp' ? -1 : 1;
    const along = key === 'ArrowLeft' || key === 'ArrowRight' ? 0 : 1;
    let best = from;
    let least = Infinity;
    for (const index of sequence) {
      const ahead = (num(at, index * 2 + along) - num(at, from * 2 + along)) * sign;
      if (ahead <= 1 || !has(index)) continue;
      const cost = ahead + 2 * Math.abs(num(at, index * 2 + 1 - along) - num(at, from * 2 + 1 - along));
      if (cost < least) {
        least = cost;
        best = index;
      }
    }
    return best;
  }
}

function clamp(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}
