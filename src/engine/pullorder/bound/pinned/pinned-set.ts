import { entryAt, num } from '../../../base/at.ts';
import type { Meter, Model } from '../../model.ts';
import { ordersOn } from '../capped/block-orders.ts';
import { masksOf, type SetMasks } from '../capped/set-masks.ts';
import { NearWords } from '../near/near-words.ts';
import type { Core } from './core-sums.ts';
import { PinnedSearch } from './pinned-search.ts';

/** Letters of sets that are looked at in a core before it is chosen, and after. */
const LOOKED_AT = { first: 4, chosen: 5 };
/** Larger sets are looked at where the excess that words may have is such a part of their letters, with so much work each. */
const CHEAP = { share: 0.1, units: 500 };
/** Work on a whole core. */
const WHOLE = 50_000;
/** By how much a search is likely to cost more than one for a letter less in the core, in the whole set. */
const DEARER = { core: 8, set: 3 };
/** Part by which a search may take longer than was thought before others have their turn. */
const LONGER = 1.5;
/** Work that a length is likely to take up to which several are ruled out at once. */
const CHEAP_LENGTH = 3_000_000;
/** Longest word that is looked at. */
const MOST_LENGTH = 250;

/** A search for words that have exactly as many letters of a core as it is known to need. */
interface Race {
  search: Generator<void, boolean>;
  spent: number;
  /** What it is likely to take. */
  guess: number;
}

/**
 * What letters need that are split into cores.
 *
 * Words of a length are ruled out core by core: those that have exactly as many letters of a core as it
 * needs are shown not to be (`PinnedSearch`), so that it has one more in all words of that length, and again,
 * until the cores have more together than the word. Which core is cheapest is not known before, so that
 * their searches take turns; what one shows narrows the others.
 */
export class PinnedSet {
  /** No word has fewer letters. */
  least: number;
  /** Whether nothing more can be shown: some word has so many, or they are too many to look at. */
  ended = false;
  /** Work that the next letter is likely to take. */
  nextCost = 0;
  readonly #meter: Meter;
  readonly #parts: readonly NearWords[];
  readonly #masks: SetMasks;
  readonly #splits: readonly (readonly number[])[];
  #cores: readonly Core[] = [];
  /** By core and letters of it: what it took to rule them out. */
  readonly #took = new Map<string, number>();

  /** @param split different letters, at most 31 in all, in cores of at most 12 */
  constructor(model: Model, split: readonly (readonly number[])[], meter: Meter) {
    const letters = split.flat();
    this.#meter = meter;
    const orders = ordersOn(model.orders, letters);
    this.#masks = masksOf(orders, 2 ** letters.length - 1);
    let from = 0;
    this.#splits = split.map((own) => own.map(() => from++));
    this.#parts = split.map((own) => new NearWords(ordersOn(model.orders, own), own.length, meter));
    meter.units += orders.length * letters.length;
    this.least = this.#sum();
  }

  /** Looks at small sets of each core, whose sum is the first bound. */
  *look(): Generator<void, void> {
    for (const part of this.#parts) yield* part.sets(LOOKED_AT.first, Infinity, 1);
    this.least = this.#sum();
  }

  /**
   * Raises `least` bit by bit, for as long as words are shorter than what can be looked at.
   * @param together lengths that are ruled out at once where that is cheap
   */
  *work(together: number): Generator<void, void> {
    for (const [j, part] of this.#parts.entries()) {
      const size = entryAt(this.#splits, j).length;
      yield* part.sets(LOOKED_AT.chosen, Infinity, 1);
      yield* part.sets(size, CHEAP.units, CHEAP.share);
      part.prove(2 ** size - 1, WHOLE);
      yield;
    }
    this.least = Math.max(this.least, this.#sum());
    this.#cores = this.#parts.map((part, j) => {
      const letters = entryAt(this.#splits, j);
      return { letters, least: Uint8Array.from({ length: 2 ** letters.length }, (_, set) => (set === 0 ? 0 : part.leastOf(set))) };
    });
    // Several lengths at once cost little more than the longest one by itself.
    for (let lengths = together; !this.ended;) {
      const start = this.#meter.units;
      const limit = this.least + (this.nextCost < CHEAP_LENGTH ? lengths : 1) - 1;
      const none = yield* this.#ruleOut(limit);
      if (none) this.least = Math.max(this.least, limit + 1);
      else if (this.least < limit) lengths = 1;
      this.ended = this.least >= MOST_LENGTH || (!none && this.least === limit);
      this.nextCost = DEARER.set * (this.#meter.units - start);
      yield;
    }
  }

  /** Passes over lengths that are known to be too short. */
  skipTo(least: number): void {
    this.least = Math.max(this.least, Math.min(least, MOST_LENGTH));
  }

  #sum(): number {
    return this.#parts.reduce((sum, part, j) => sum + part.leastOf(2 ** entryAt(this.#splits, j).length - 1), 0);
  }

  /** Shows that no word has so many letters. @returns false when there is one */
  *#ruleOut(limit: number): Generator<void, boolean> {
    const needs = this.#cores.map((core) => num(core.least, core.least.length - 1));
    const begin = (j: number, guess: number): Race => ({
      search: new PinnedSearch(this.#masks, this.#cores, { limit, needs, exact: j }, this.#meter).none(),
      spent: 0,
      guess: this.#took.get(`${j} ${num(needs, j)}`) ?? guess,
    });
    const races = needs.map((_, j) => begin(j, 0));
    while (this.least <= limit && needs.reduce((a, b) => a + b, 0) <= limit) {
      const race = races.reduce((a, b) => (b.guess < a.guess ? b : a));
      const j = races.indexOf(race);
      const start = this.#meter.units;
      const { done, value } = race.search.next();
      race.spent += this.#meter.units - start;
      if (!done) {
        if (race.spent > race.guess) race.guess = LONGER * race.spent;
        yield;
        continue;
      }
      if (!value) return false;
      this.#took.set(`${j} ${num(needs, j)}`, race.spent);
      needs[j] = num(needs, j) + 1;
      races[j] = begin(j, DEARER.core * race.spent);
    }
    return true;
  }
}
