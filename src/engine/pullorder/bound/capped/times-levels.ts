import { num } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import type { Meter, Model } from '../../model.ts';
import type { SetOrder } from '../sets/set-order.ts';
import { ordersOn } from './block-orders.ts';
import { CappedSearch } from './capped-search.ts';
import { RefutedSets } from './refuted-sets.ts';
import { SetChoice } from './set-choice.ts';
import { MOST_TIMES, SetCounts } from './set-counts.ts';

/** Fewest times that are told apart here; of letters that come once circles tell more (`OnceSearch`). */
const LEAST_TIMES = 2;
/** Most letters of a set that is searched. */
const MOST_LETTERS = 16;
/** Work on one set at first; four times as much each time that it was not enough. */
const FIRST_UNITS = 50_000;
/** Sets that are known to fit, of each block and cap. */
const FITS_KEPT = 100;
/** Sets of four letters that are remembered before all is begun afresh. */
const MOST_REMEMBERED = 500_000;

/** What is known of letters before. */
interface Known {
  /** Each letter in one block of at most 25. */
  split: readonly (readonly number[])[];
  /** Fewest times of each letter, by letter. */
  counts: readonly number[];
  /** What three letters need together. */
  needOf: (letters: number[]) => number;
}

/** Letters that are looked at together. */
interface Block {
  letters: readonly number[];
  /** Null until the first step. */
  tables: Tables | null;
}

interface Tables {
  orders: readonly SetOrder[];
  choice: SetChoice;
}

/** What was come to in a block for one number of times. */
interface Front {
  block: Block;
  times: number;
  /** No more letters of the block come so often at most. */
  most: number;
  /** Sets of which no word has each letter so often at most; null until the first step. */
  refuted: RefutedSets | null;
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
 * How many letters come more than twice, and more than three times, at least; in blocks of letters.
 *
 * A word is as long as the sum, over all t from 0, of how many letters it has more than t times. Those
 * that it has t times at most are a set that fits: with the others struck out it is a word that
 * finishes what is left with each letter t times at most (`CappedSearch`). Where no set of more than a
 * letters of a block fits, all but a come more often; blocks add up, for every t by itself. To show it,
 * each set of so many letters must hold one that does not fit: such are looked for in sets that hold
 * none yet. Few of them rule out most larger sets, so that the first steps cost least.
 */
export class TimesLevels {
  readonly #meter: Meter;
  readonly #fronts: Front[];
  readonly #tablesOf: (block: Block) => Tables;
  readonly #refutedOf: (front: Front) => RefutedSets;
  #counts: SetCounts;

  constructor(model: Model, { split, counts, needOf }: Known, meter: Meter) {
    this.#meter = meter;
    this.#counts = new SetCounts(4, meter);
    this.#fronts = split.flatMap((letters) => {
      const block = { letters, tables: null };
      return Array.from({ length: MOST_TIMES + 1 - LEAST_TIMES }, (_, i) => ({
        block,
        times: LEAST_TIMES + i,
        most: letters.length,
        refuted: null,
        cost: 2 * i * FIRST_UNITS,
        units: FIRST_UNITS,
        first: 3,
        fits: [],
        ended: letters.length === 0,
      }));
    });
    this.#tablesOf = ({ letters }) => ({
      orders: ordersOn(model.orders, letters),
      choice: new SetChoice(letters.length, (i, j, h) => needOf([num(letters, i), num(letters, j), num(letters, h)])),
    });
    this.#refutedOf = ({ block: { letters }, times }) => {
      const refuted = new RefutedSets(letters.length);
      letters.forEach((l, place) => num(counts, l) > times && refuted.note(1 << place));
      return refuted;
    };
  }

  /** Any word has all letters together so often at least, beyond the second time of each. */
  get beyondTwo(): number {
    return this.#fronts.reduce((sum, { block, most }) => sum + block.letters.length - most, 0);
  }

  /** Units that the next step is likely to take. */
  get nextCost(): number {
    return this.#cheapest()?.cost ?? Infinity;
  }

  /** Goes on where a step cost least the last time, as long as there is any. */
  *work(): Generator<void, void> {
    for (let front = this.#cheapest(); front !== null; front = this.#cheapest()) {
      const start = this.#meter.units;
      if (!(yield* this.#lower(front))) front.units *= 4;
      front.cost = Math.max(2 * front.cost, this.#meter.units - start);
      if (this.#counts.sets.size > MOST_REMEMBERED) this.#counts = new SetCounts(4, this.#meter);
      yield;
    }
  }

  #cheapest(): Front | null {
    const open = this.#fronts.filter((front) => !front.ended);
    return open.length === 0 ? null : open.reduce((a, b) => (b.cost < a.cost ? b : a));
  }

  /** Lowers how many letters come so often at most by 1. @returns false when that was not shown */
  *#lower(front: Front): Generator<void, boolean> {
    const refuted = (front.refuted ??= this.#refutedOf(front));
    for (let set = refuted.next(front.most); set >= 0; set = refuted.next(front.most)) {
      const found = yield* this.#misfit(front, set);
      if (found === null) return false;
      refuted.note(found);
      this.#meter.units += 1 << Math.max(0, front.block.letters.length - bitCount(found) - 10);
    }
    front.most--;
    front.ended = front.most === 0;
    return true;
  }

  /** Letters of a set that do not fit, as bits; null when none were found. */
  *#misfit(front: Front, set: number): Generator<void, number | null> {
    const { block, times } = front;
    const { orders, choice } = (block.tables ??= this.#tablesOf(block));
    const order = choice.first(set, MOST_LETTERS);
    this.#meter.units += order.length ** 2;
    const until = this.#meter.units + front.units;
    for (let size = Math.min(order.length, front.first); size <= order.length && this.#meter.units < until; size++) {
      const bits = order.slice(0, size).reduce((sum, p) => sum | (1 << p), 0);
      let fits: boolean | null = true;
      if (!front.fits.some((known) => (bits & ~known) === 0)) {
        const search = new CappedSearch(orders, bits, this.#counts, this.#meter);
        fits = search.fits(new Array<number>(size).fill(times), until - this.#meter.units);
        yield;
        if (fits) {
          front.fits.unshift(bits);
          if (front.fits.length > FITS_KEPT) front.fits.pop();
        }
      }
      if (fits === false) {
        front.first = Math.max(1, size - 1);
        return bits;
      }
      if (fits && bits === set) front.ended = true;
    }
    return null;
  }
}
