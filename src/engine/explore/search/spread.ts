import { entryAt, i32, u8 } from '../../base/at.ts';
import { type Descriptor, squaredSteps } from '../look/descriptor.ts';

/** Candidates kept at most; of more, those nearest to what was taken go. */
const MOST_WAITING = 512;

/** A descriptor is summed in so many parts, which mostly tell that two are far enough from each other. */
const SUMS = 9;

/** How many numbers make a part, at most. */
function most(at: Descriptor): number {
  return Math.ceil(at.length / SUMS);
}

/**
 * The sums of the parts. The square of a difference of sums is at most so many times the sum of the
 * squares of the differences as there are numbers (Cauchy and Schwarz).
 */
function sumsOf(at: Descriptor): Int32Array {
  const sums = new Int32Array(SUMS);
  const each = most(at);
  for (let i = 0; i < at.length; i++) sums[(i / each) | 0] = i32(sums, (i / each) | 0) + u8(at, i);
  return sums;
}

/** A candidate with the square of its distance to the nearest taken. */
interface Waiting<T> {
  item: T;
  at: Descriptor;
  sums: Int32Array;
  square: number;
}

/**
 * Picks prints far from each other: the next is always the candidate whose nearest neighbour among
 * all taken and avoided is farthest, the first that came among equals. When all candidates are
 * offered before the first is taken, no k points lie closer around the rest than half as close.
 * Source: T. F. Gonzalez, "Clustering to minimize the maximum intercluster distance", Theoretical
 * Computer Science 38 (1985) 293–306.
 */
export class Spread<T> {
  private readonly waiting: Waiting<T>[] = [];
  private readonly taken: Descriptor[] = [];
  /** Sums of the taken, SUMS each, one after the other. */
  private takenSums = new Int32Array(SUMS * 64);
  private readonly most: number;

  constructor(most = MOST_WAITING) {
    this.most = most;
  }

  get size(): number {
    return this.waiting.length;
  }

  /** Keeps what comes away from this point, as if it were taken already. */
  avoid(at: Descriptor): void {
    const from = this.taken.push(at) * SUMS - SUMS;
    if (from + SUMS > this.takenSums.length) {
      const grown = new Int32Array(this.takenSums.length * 2);
      grown.set(this.takenSums);
      this.takenSums = grown;
    }
    this.takenSums.set(sumsOf(at), from);
    for (const each of this.waiting) this.compare(each, from);
  }

  /** Puts a candidate among those that may be taken. */
  offer(item: T, at: Descriptor): void {
    const offered = { item, at, sums: sumsOf(at), square: Infinity };
    // The last taken are asked first: the farther on, the nearer lie those taken late.
    for (let from = (this.taken.length - 1) * SUMS; from >= 0 && offered.square > 0; from -= SUMS) this.compare(offered, from);
    this.waiting.push(offered);
    if (this.waiting.length > this.most) {
      let nearest = this.waiting.length - 1;
      for (let i = nearest - 1; i >= 0; i--) if (entryAt(this.waiting, i).square < entryAt(this.waiting, nearest).square) nearest = i;
      this.waiting.splice(nearest, 1);
    }
  }

  /**
   * Takes the candidate farthest from all taken before; null when there is none.
   * @param wanted which candidates come first; where there are none of them, all do
   */
  take(wanted: (item: T) => boolean = () => true): { item: T; at: Descriptor } | null {
    let farthest = this.farthest(wanted);
    if (farthest < 0) farthest = this.farthest(() => true);
    if (farthest < 0) return null;
    const { item, at } = entryAt(this.waiting.splice(farthest, 1), 0);
    this.avoid(at);
    return { item, at };
  }

  /** Brings the distance of a candidate down to that from one taken, whose sums begin there. */
  private compare(each: Waiting<T>, from: number): void {
    const { takenSums } = this;
    const { sums } = each;
    let least = 0;
    for (let i = 0; i < SUMS; i++) {
      const off = i32(sums, i) - i32(takenSums, from + i);
      least += off * off;
    }
    if (least < each.square * most(each.at))
      each.square = Math.min(each.square, squaredSteps(each.at, entryAt(this.taken, from / SUMS), each.square));
  }

  private farthest(wanted: (item: T) => boolean): number {
    let farthest = -1;
    this.waiting.forEach(({ item, square }, i) => {
      if (wanted(item) && (farthest < 0 || square > entryAt(this.waiting, farthest).square)) farthest = i;
    });
    return farthest;
  }
}
