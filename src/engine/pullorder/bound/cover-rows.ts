import { entryAt, num } from '../../base/at.ts';
import { distinctOrders, type Meter, type Model, type Order } from '../model.ts';
import { automataOf } from '../search/beam.ts';
import { exact } from '../search/exact.ts';
import { coverLp, type CoverLp } from './cover-lp.ts';
import { coverBound, type CoverRow } from './cover.ts';
import { holds, pullsByLetter } from './letter-pulls.ts';
import { forcedCounts } from './multiplicity.ts';
import { LetterSets, MAX_SET } from './sets/letter-sets.ts';
import { SubsetSums } from './subset-sums.ts';

interface KnownRow extends CoverRow {
  /** Whether `least` is exact; else it was found with so many states. */
  finished: boolean;
  nodes: number;
  /** How much more than their own counts the letters need, per letter. */
  excess: number;
}

/** What sets of letters of a model need together, remembered, and the conclusion from all of it. */
export class CoverRows {
  /** Letters that come at all. */
  readonly letters: readonly number[];
  readonly #model: Model;
  readonly #meter: Meter;
  /** Fewest times of each letter on its own. */
  readonly #counts: number[];
  readonly #rows = new Map<string, KnownRow>();
  readonly #sets: LetterSets;
  readonly #pullsOf: Map<number, number[]>[];
  /** Letters that come twice on some sheet. */
  readonly #twice = new Set<number>();

  /** @param model letters count 1 each */
  constructor(model: Model, meter: Meter) {
    this.#model = model;
    this.#meter = meter;
    this.#counts = forcedCounts(model.orders, (l) => l, model.letterCount, model.cascade);
    this.letters = this.#counts.flatMap((n, l) => (n > 0 ? [l] : []));
    this.#pullsOf = pullsByLetter(model.orders);
    for (const pulls of this.#pullsOf) for (const [l, own] of pulls) if (own.length > 1) this.#twice.add(l);
    this.#sets = new LetterSets(model, meter);
  }

  /** The sheets that all is about. */
  get orders(): readonly Order[] {
    return this.#model.orders;
  }

  /** What letters need each on its own. */
  sumOf(letters: readonly number[]): number {
    return letters.reduce((sum, l) => sum + num(this.#counts, l), 0);
  }

  /** Least number of times that these letters come together, or less when `maxNodes` ends the search. */
  *least(letters: readonly number[], maxNodes: number): Generator<void, number> {
    const sorted = [...letters].sort((a, b) => a - b);
    const key = sorted.join();
    const known = this.#rows.get(key);
    if (known && (known.finished || known.nodes >= maxNodes)) return known.least;
    const repeats = sorted.some((l) => this.#twice.has(l));
    let least = Math.max(known?.least ?? 0, this.sumOf(sorted));
    let finished = false;
    if (sorted.length <= MAX_SET) {
      const found = yield* this.#sets.steps(sorted, maxNodes);
      least = Math.max(least, found.least);
      finished = found.finished && !repeats;
    }
    if (sorted.length > MAX_SET || repeats) {
      const part = this.#onLetters(sorted);
      const found = exact(part, automataOf(part, this.#meter), { below: Infinity, before: -1, after: -1, maxNodes, meter: this.#meter });
      least = Math.max(least, found.lower);
      finished ||= found.finished;
    }
    this.#rows.set(key, { letters: sorted, least, finished, nodes: maxNodes, excess: (least - this.sumOf(sorted)) / sorted.length });
    return least;
  }

  /** What up to four letters need, without noting it as a row. */
  few(letters: readonly number[]): number {
    return Math.max(this.#sets.least(letters, 1).least, this.sumOf(letters));
  }

  /** Notes what letters need, as it was found elsewhere. */
  note(letters: readonly number[], least: number): void {
    const sorted = [...letters].sort((a, b) => a - b);
    const key = sorted.join();
    const known = this.#rows.get(key);
    if (known && known.least >= least) return;
    const excess = (least - this.sumOf(sorted)) / sorted.length;
    this.#rows.set(key, { letters: sorted, least, finished: known?.finished ?? false, nodes: known?.nodes ?? 0, excess });
  }

  /** Sums over all sets of some letters, of which nothing is known yet. */
  sums(letters: readonly number[]): SubsetSums {
    return new SubsetSums(
      letters,
      letters.map((l) => num(this.#counts, l)),
      this.#meter,
    );
  }

  /** Tells sums what was found for sets of their letters. @returns whether some of it was news */
  tell(sums: SubsetSums): boolean {
    let news = false;
    for (const { letters, least } of this.#rows.values()) if (sums.note(letters, least)) news = true;
    this.#meter.units += this.#rows.size;
    return news;
  }

  /**
   * The conclusion from all rows so far.
   * @param from a total that is known to be a lower bound already
   * @param maxNodes branchings for a bound in whole numbers; 0 for the bound in fractions only
   */
  cover(from: number, maxNodes: number): CoverLp {
    const useful = [...this.#rows.values()].filter((row) => row.excess > 0);
    // The tightest rows first; a programme of thousands of rows would eat the time it saves.
    useful.sort((a, b) => b.excess - a.excess);
    this.#meter.units += this.#rows.size;
    const inFractions = coverLp(this.#counts, useful.slice(0, 250), 800, this.#meter);
    if (maxNodes === 0) return inFractions;
    const known = Math.max(from, inFractions.bound);
    const bound = coverBound(this.#counts, useful.slice(0, 1500), { from: known, maxNodes, meter: this.#meter });
    return { bound, counts: inFractions.counts };
  }

  /** The model with the pulls of these letters only. */
  #onLetters(letters: readonly number[]): Model {
    const parts = this.#model.orders.map((order, c): Order => {
      const pulls = letters.flatMap((l) => entryAt(this.#pullsOf, c).get(l) ?? []).sort((a, b) => a - b);
      this.#meter.units += 20 + 2 * pulls.length ** 2;
      return {
        letters: pulls.map((p) => num(order.letters, p)),
        preds: pulls.map((p) => pulls.flatMap((q, i) => (q < p && holds(entryAt(order.preds, p), q) ? [i] : []))),
      };
    });
    return { ...this.#model, orders: distinctOrders(parts) };
  }
}
