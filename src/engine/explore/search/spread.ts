import { defined, entryAt } from '../../base/at.ts';
import type { Descriptor } from '../look/descriptor.ts';
import { TakenPoints, type Turned, turned } from './taken-points.ts';

/** Candidates kept at most; of more, those nearest to what was taken go. */
const MOST_WAITING = 512;

/** A candidate with the square of its distance to the nearest taken. */
interface Waiting<T> {
  item: T;
  turned: Turned;
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
  /** What waited and went, for those that come: each lives just long enough to be copied by V8's collector of young objects. */
  private readonly spare: Waiting<T>[] = [];
  private readonly taken = new TakenPoints();
  private readonly most: number;

  constructor(most = MOST_WAITING) {
    this.most = most;
  }

  get size(): number {
    return this.waiting.length;
  }

  /** The number of the point that was avoided or taken last, and the descriptor of such a point. */
  get last(): number {
    return this.taken.size - 1;
  }

  takenAt(point: number): Descriptor {
    return this.taken.at(point);
  }

  /** Keeps what comes away from this point, as if it were taken already. */
  avoid(at: Descriptor): void {
    this.avoidTurned(turned(at));
  }

  private avoidTurned(at: Turned): void {
    this.taken.add(at);
    for (const each of this.waiting) each.square = this.taken.toLast(each.turned, each.square);
  }

  private entry(item: T, at: Descriptor): Waiting<T> {
    const entry = this.spare.pop() ?? { item, turned: new Uint8Array(at.length), square: 0 };
    entry.item = item;
    entry.square = this.taken.nearest(turned(at, entry.turned));
    return entry;
  }

  /** Takes a candidate out; its entry holds until the next comes. */
  private leave(place: number): Waiting<T> {
    const [entry] = this.waiting.splice(place, 1);
    this.spare.push(defined(entry));
    return defined(entry);
  }

  /** Puts a candidate among those that may be taken. @returns the one that went for it, if there were too many */
  offer(item: T, at: Descriptor): T | null {
    this.waiting.push(this.entry(item, at));
    if (this.waiting.length <= this.most) return null;
    let nearest = this.waiting.length - 1;
    for (let i = nearest - 1; i >= 0; i--) if (entryAt(this.waiting, i).square < entryAt(this.waiting, nearest).square) nearest = i;
    return this.leave(nearest).item;
  }

  /**
   * Takes the candidate farthest from all taken before; null when there is none.
   * @param wanted which candidates come first; where there are none of them, all do
   */
  take(wanted: (item: T) => boolean = () => true): { item: T; at: Descriptor } | null {
    let farthest = this.farthest(wanted);
    if (farthest < 0) farthest = this.farthest(() => true);
    if (farthest < 0) return null;
    const { item, turned: at } = this.leave(farthest);
    this.avoidTurned(at);
    return { item, at: this.takenAt(this.last) };
  }

  private farthest(wanted: (item: T) => boolean): number {
    let farthest = -1;
    this.waiting.forEach(({ item, square }, i) => {
      if (wanted(item) && (farthest < 0 || square > entryAt(this.waiting, farthest).square)) farthest = i;
    });
    return farthest;
  }
}
