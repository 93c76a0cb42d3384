import { entryAt } from '../../base/at.ts';
import { type Descriptor, squaredSteps } from '../look/descriptor.ts';

/** Candidates kept at most; of more, those nearest to what was taken go. */
const MOST_WAITING = 512;

/**
 * Picks prints far from each other: the next is always the candidate whose nearest neighbour among
 * all taken and avoided is farthest, the first that came among equals. When all candidates are
 * offered before the first is taken, no k points lie closer around the rest than half as close.
 * Source: T. F. Gonzalez, "Clustering to minimize the maximum intercluster distance", Theoretical
 * Computer Science 38 (1985) 293–306.
 */
export class Spread<T> {
  private readonly waiting: { item: T; at: Descriptor; square: number }[] = [];
  private readonly taken: Descriptor[] = [];
  private readonly most: number;

  constructor(most = MOST_WAITING) {
    this.most = most;
  }

  get size(): number {
    return this.waiting.length;
  }

  /** Keeps what comes away from this point, as if it were taken already. */
  avoid(at: Descriptor): void {
    this.taken.push(at);
    for (const each of this.waiting) each.square = Math.min(each.square, squaredSteps(each.at, at, each.square));
  }

  /** Puts a candidate among those that may be taken. */
  offer(item: T, at: Descriptor): void {
    let square = Infinity;
    // The last taken are asked first: the farther on, the nearer lie those taken late.
    for (let i = this.taken.length - 1; i >= 0 && square > 0; i--) {
      square = Math.min(square, squaredSteps(at, entryAt(this.taken, i), square));
    }
    this.waiting.push({ item, at, square });
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

  private farthest(wanted: (item: T) => boolean): number {
    let farthest = -1;
    this.waiting.forEach(({ item, square }, i) => {
      if (wanted(item) && (farthest < 0 || square > entryAt(this.waiting, farthest).square)) farthest = i;
    });
    return farthest;
  }
}
