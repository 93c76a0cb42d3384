import { entryAt, num } from '../../../base/at.ts';
import type { Meter, Model } from '../../model.ts';
import type { SetOrder } from '../sets/set-order.ts';
import type { SubsetSums } from '../subset-sums.ts';
import { ordersOn } from './block-orders.ts';
import { CappedSearch } from './capped-search.ts';
import { MOST_TIMES, SetCounts } from './set-counts.ts';

/** Most letters of a set that is searched. */
const MOST_LETTERS = 16;
/** Work on one set at first; four times as much each time that it was not enough. */
const FIRST_UNITS = 200_000;
/** Sets that are known to fit, of each block and cap. */
const FITS_KEPT = 100;
/** Units of work between two sums over all sets, for each of them. */
const SUM_SHARE = 4;
/** Sets of four letters that are remembered before all is begun afresh. */
const MOST_REMEMBERED = 500_000;

/** What was come to in a block for one cap. */
interface Front {
  block: number;
  cap: number;
  /** Units that the last step took. */
  cost: number;
  /** Work allowed on one set. */
  units: number;
  /** Letters of a set that is tried first. */
  first: number;
  /** Sets that fit. */
  fits: number[];
  /** Whether nothing can be shown any more. */
  ended: boolean;
}

/**
 * Raises what blocks of letters need by sets of letters that no word has only 1, 2 or 3 times each
 * (`CappedSearch`). Where no set of more than t letters of a block fits with so many of each, all
 * letters but t come more often; `SubsetSums` draws that conclusion. To show it, every larger set
 * must hold one that does not fit: such are looked for in sets that hold none yet, from the largest
 * sets down. Few of them rule out most larger sets, so that the first steps cost least.
 */
export class CapCuts {
  readonly #blocks: readonly SubsetSums[];
  readonly #orders: readonly SetOrder[][];
  readonly #meter: Meter;
  readonly #fronts: Front[];
  /** Units at which the sums of a block were worked out last. */
  readonly #summed: number[];
  #counts: SetCounts;

  /** @param blocks their sums over pairs, triples and fours drawn already */
  constructor(model: Model, blocks: readonly SubsetSums[], meter: Meter) {
    this.#blocks = blocks;
    this.#orders = blocks.map(({ letters }) => ordersOn(model.orders, letters));
    this.#meter = meter;
    this.#counts = new SetCounts(4, meter);
    this.#summed = blocks.map(() => meter.units);
    this.#fronts = blocks.flatMap((_, block) =>
      Array.from({ length: MOST_TIMES }, (__, i) => ({
        block,
        cap: i + 1,
        cost: i,
        units: FIRST_UNITS,
        first: 3,
        fits: [],
        ended: false,
      })),
    );
  }

  /** Goes on where a step cost least the last time, as long as there is any. */
  *work(): Generator<void, void> {
    for (;;) {
      const open = this.#fronts.filter((front) => !front.ended);
      if (open.length === 0) return;
      const front = open.reduce((a, b) => (b.cost < a.cost ? b : a));
      const start = this.#meter.units;
      if (!(yield* this.#raise(front))) front.units *= 4;
      front.cost = Math.max(2 * front.cost, this.#meter.units - start);
      if (this.#counts.sets.size > MOST_REMEMBERED) this.#counts = new SetCounts(4, this.#meter);
      yield;
    }
  }

  /**
   * Raises what a block needs by 1. In any word the letters that come `cap` times at most are a set
   * that fits, and the others come more often: if for each such set that comes to more than before
   * in all, so does the word.
   * @returns false when that was not shown
   */
  *#raise(front: Front): Generator<void, boolean> {
    const { block, cap } = front;
    const sums = entryAt(this.#blocks, block);
    const { total, letters } = sums;
    const n = letters.length;
    // Even no letter at all comes to no more then.
    if ((cap + 1) * n <= total) front.ended = true;
    for (let size = n; size > 0 && !front.ended; size--) {
      for (let set = 2 ** size - 1; set < 2 ** n; set = nextSet(set)) {
        if (sums.exceeds(set, cap) || sums.leastOf(set) + (cap + 1) * (n - size) > total) continue;
        if (!(yield* this.#refute(front, set))) return false;
      }
      this.#meter.units += (2 ** n) >> 8;
    }
    if (front.ended) return false;
    sums.note(letters, total + 1);
    // What smaller sets need is worked out anew when that costs little beside all else.
    if (this.#meter.units - num(this.#summed, block) > SUM_SHARE * 2 ** n) {
      yield* sums.sum();
      this.#summed[block] = this.#meter.units;
    }
    return true;
  }

  /** Looks for letters of a set that do not fit. @returns false when none were found */
  *#refute(front: Front, set: number): Generator<void, boolean> {
    const sums = entryAt(this.#blocks, front.block);
    const order = this.#grown(sums, set);
    const most = Math.min(order.length, MOST_LETTERS);
    for (let size = Math.min(most, front.first); size <= most; size++) {
      const bits = order.slice(0, size).reduce((sum, p) => sum | (1 << p), 0);
      let fits: boolean | null = true;
      if (!front.fits.some((known) => (bits & ~known) === 0)) {
        const search = new CappedSearch(entryAt(this.#orders, front.block), bits, this.#counts, this.#meter);
        fits = search.fits(new Array<number>(size).fill(front.cap), front.units);
        yield;
        if (fits) {
          front.fits.unshift(bits);
          if (front.fits.length > FITS_KEPT) front.fits.pop();
        }
      }
      if (fits === false) {
        sums.noteCap(bits, front.cap);
        front.first = size - 1;
        return true;
      }
      if (fits && size === order.length) front.ended = true;
    }
    return false;
  }

  /** Places of a set, each after those before it such that they need much together. */
  #grown(sums: SubsetSums, set: number): number[] {
    const order: number[] = [];
    for (let bits = 0; bits !== set;) {
      let best = -1;
      let most = -1;
      for (let left = set & ~bits; left !== 0; left &= left - 1) {
        const place = 31 - Math.clz32(left & -left);
        const least = sums.leastOf(bits | (1 << place));
        if (least > most) {
          most = least;
          best = place;
        }
      }
      order.push(best);
      bits |= 1 << best;
    }
    this.#meter.units += (order.length ** 2) >> 3;
    return order;
  }
}

/** The next larger number with as many bits. */
function nextSet(set: number): number {
  const low = set & -set;
  const high = set + low;
  return high | Math.floor(((set ^ high) >>> 2) / low);
}
