import { entryAt, num } from '../../base/at.ts';
import { type Descriptor, descriptorDistance } from '../look/descriptor.ts';
import { ALIKE_COSTS, isOpen, ranksOf, type TasteOrder } from '../taste/arrange-by-taste.ts';

/** Prints hang no nearer to each other than this share of how far the prints lie apart that they come from, where there are such. */
const LEAST_SHARE = 0.5;
const HALVINGS = 3;

/** A print that may hang. */
interface Candidate<T> {
  item: T;
  at: Descriptor;
  score: number;
  doubt: number;
  /** Distance to the nearest that hangs or that prints come from. */
  apart: number;
}

/** The middle distance between some prints; 0 for one alone. */
function usualDistance(looks: readonly Descriptor[]): number {
  const far = looks.flatMap((one, i) => looks.slice(0, i).map((other) => descriptorDistance(one, other)));
  return far.sort((a, b) => a - b)[far.length >> 1] ?? 0;
}

/**
 * Picks prints that are liked, or that a taste is unsure about, and none that looks like one that hangs: by rank of score, and
 * by what a print has not in common with those that hang, of those that lie far enough from them all.
 */
export class TastePool<T> {
  private readonly order: TasteOrder;
  private readonly taken: Descriptor[];
  private readonly usual: number;
  private readonly waiting: Candidate<T>[] = [];
  private places = 0;

  /** @param from looks of the prints that all come from */
  constructor(from: readonly Descriptor[], order: TasteOrder) {
    this.order = order;
    this.taken = [...from];
    this.usual = usualDistance(from);
  }

  /** Puts a candidate among those that may be taken. */
  offer(item: T, at: Descriptor, { score, doubt }: { score: number; doubt: number }): void {
    const apart = Math.min(...this.taken.map((other) => descriptorDistance(at, other)));
    this.waiting.push({ item, at, score, doubt, apart });
  }

  /** Takes the best for the next place; null when there is none at all. */
  take(): { item: T; at: Descriptor } | null {
    const { waiting, order } = this;
    const open = isOpen(this.places, order.unsure);
    const ranks = ranksOf(Int32Array.from(waiting, ({ score, doubt }) => (open ? doubt : score)));
    const worth = waiting.map(({ apart }, i) => {
      const rank = num(ranks, i);
      const apartness = this.usual === 0 ? 0 : Math.round(ALIKE_COSTS * Math.min(1, apart / this.usual));
      return (open ? rank : Math.round((rank * order.towards) / 100)) + apartness;
    });
    let best = -1;
    for (let step = 0; step <= HALVINGS && best < 0; step++) {
      const least = step < HALVINGS ? (this.usual * LEAST_SHARE) / 2 ** step : 0;
      waiting.forEach(({ apart }, i) => {
        if (apart >= least && (best < 0 || num(worth, i) > num(worth, best))) best = i;
      });
    }
    if (best < 0) return null;
    const { item, at } = entryAt(waiting.splice(best, 1), 0);
    this.places++;
    this.taken.push(at);
    for (const each of waiting) each.apart = Math.min(each.apart, descriptorDistance(each.at, at));
    return { item, at };
  }
}
