import { entryAt } from '../../base/at.ts';
import { type Descriptor, descriptorDistance } from '../look/descriptor.ts';

/**
 * Two prints nearer than this look the same from a step away; a choice of ours: a shift of 2 mm or a
 * swap of two small overlaps is less, one pull in another ink more.
 */
const APART = 0.012;
const HALVINGS = 4;

interface Candidate<T> {
  item: T;
  at: Descriptor;
  /** From the print that all come from. */
  distance: number;
  /** From the nearest of that print and all that were taken. */
  apart: number;
}

/**
 * Picks prints near to one, each of which shows that it is another: the nearest of those that are
 * some way from it and from all taken before. Where there is none, half as far will do, and so on.
 */
export class NearPool<T> {
  private readonly parent: Descriptor;
  private readonly taken: Descriptor[] = [];
  private readonly waiting: Candidate<T>[] = [];

  constructor(parent: Descriptor) {
    this.parent = parent;
  }

  /** Puts a candidate among those that may be taken. */
  offer(item: T, at: Descriptor): void {
    const distance = descriptorDistance(at, this.parent);
    let apart = distance;
    for (const other of this.taken) apart = Math.min(apart, descriptorDistance(at, other));
    this.waiting.push({ item, at, distance, apart });
  }

  /** Takes the nearest candidate that shows to be another; null when there is none at all. */
  take(): { item: T; at: Descriptor } | null {
    let best = -1;
    for (let step = 0; step <= HALVINGS && best < 0; step++) {
      const least = step < HALVINGS ? APART / 2 ** step : 0;
      this.waiting.forEach(({ distance, apart }, i) => {
        if (apart >= least && (best < 0 || distance < entryAt(this.waiting, best).distance)) best = i;
      });
    }
    if (best < 0) return null;
    const { item, at } = entryAt(this.waiting.splice(best, 1), 0);
    this.taken.push(at);
    for (const each of this.waiting) each.apart = Math.min(each.apart, descriptorDistance(each.at, at));
    return { item, at };
  }
}
