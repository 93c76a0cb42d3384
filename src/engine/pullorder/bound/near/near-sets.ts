import type { Meter, Model } from '../../model.ts';
import { ordersOn } from '../capped/block-orders.ts';
import { NearWords } from './near-words.ts';

/** Letters of a set at most. */
const A_SET = 12;
/** Splits that are begun, of which that one goes on which promises most. */
const TRIED = 3;
/** Letters up to which all sets are looked at: to choose a split, and in the chosen one. */
const LOOKED_AT = { first: 4, chosen: 5 };
/** Larger sets are looked at where the excess that words may have is such a part of their letters, with so much work each. */
const CHEAP = { share: 0.1, units: 500 };
/** Work on a whole set: at first and at last, four times as much each time. */
const WHOLE = { first: 50_000, last: 800_000 };

/** What is known of letters before. */
interface Known {
  /** Splits all letters into sets of at most so many that are likely to need much; another split each time. */
  split: (size: number) => number[][];
  /** Takes what letters need together. */
  note: (letters: readonly number[], least: number) => void;
}

interface Part {
  letters: readonly number[];
  words: NearWords;
}

/** What sets of letters need that split all of them, by lists of near words (`NearWords`); their sum is what all need. */
export class NearSets {
  /** No word has fewer letters. */
  best = 0;
  readonly #model: Model;
  readonly #known: Known;
  readonly #meter: Meter;

  constructor(model: Model, known: Known, meter: Meter) {
    this.#model = model;
    this.#known = known;
    this.#meter = meter;
  }

  /** Raises `best` split by split. */
  *work(): Generator<void, void> {
    for (;;) {
      let chosen: Part[] = [];
      for (let t = 0; t < TRIED; t++) {
        const parts = this.#known.split(A_SET).map((letters) => this.#part(letters));
        for (const { words } of parts) yield* words.sets(LOOKED_AT.first, Infinity, 1);
        if (t === 0 || totalOf(parts) > totalOf(chosen)) chosen = parts;
      }
      for (const { words } of chosen) yield* words.sets(LOOKED_AT.chosen, Infinity, 1);
      this.#take(chosen);
      for (const { words, letters } of chosen) {
        yield* words.sets(letters.length, CHEAP.units, CHEAP.share);
        this.#take(chosen);
      }
      for (let units = WHOLE.first; units <= WHOLE.last; units *= 4) {
        for (const { words, letters } of chosen) {
          const exact = words.prove(2 ** letters.length - 1, units);
          this.#take(chosen);
          if (exact && chosen.length === 1) return;
          yield;
        }
      }
      yield;
      for (const { letters, words } of chosen) this.#known.note(letters, words.leastOf(2 ** letters.length - 1));
    }
  }

  #part(letters: readonly number[]): Part {
    const orders = ordersOn(this.#model.orders, letters);
    this.#meter.units += orders.length * letters.length;
    return { letters, words: new NearWords(orders, letters.length, this.#meter) };
  }

  #take(parts: readonly Part[]): void {
    this.best = Math.max(this.best, totalOf(parts));
  }
}

function totalOf(parts: readonly Part[]): number {
  return parts.reduce((sum, { letters, words }) => sum + words.leastOf(2 ** letters.length - 1), 0);
}
