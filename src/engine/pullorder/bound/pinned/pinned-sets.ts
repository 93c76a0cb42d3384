import type { Meter, Model } from '../../model.ts';
import { PinnedSet } from './pinned-set.ts';

/** Letters up to which all are one set; more are split into sets of at most so many. */
const ALONE = 30;
const A_SET = 15;
/** Kicks that a split into sets is worth; cores are split anew instead. */
const KICKS = 20;
/** Letters of a core at most, and splits into cores that are begun, of which that one goes on which promises most. */
const CORES = { alone: { size: 8, tried: 6 }, ofMany: { size: 5, tried: 4 } };

/** Lengths that are ruled out at once where all letters are one set; of several sets each would go on too far. */
const TOGETHER = 2;

/** What is known of letters before. */
interface Known {
  letters: readonly number[];
  /** Splits letters into sets of at most so many that are likely to need much, the more the more kicks; another split each time. */
  split: (size: number, among: readonly number[], kicks?: number) => number[][];
  /** What all letters need, as far as is known. */
  least: () => number;
}

/** A set that is worked on. */
interface Work {
  set: PinnedSet;
  steps: Generator<void, void>;
  /** Work since it was last raised. */
  spent: number;
}

/** What sets of letters need that split all of them, each by words that pin its letters (`PinnedSet`); their sum is what all need. */
export class PinnedSets {
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

  /** Raises `best`, where a letter more is likely to take least. */
  *work(): Generator<void, void> {
    const { letters, split, least } = this.#known;
    const alone = letters.length <= ALONE;
    const works: Work[] = [];
    const { size, tried: splits } = alone ? CORES.alone : CORES.ofMany;
    for (const own of alone ? [letters] : split(A_SET, letters, KICKS)) {
      const tried = Array.from({ length: splits }, () => new PinnedSet(this.#model, split(size, own), this.#meter));
      for (const set of tried) yield* set.look();
      const set = tried.reduce((a, b) => (b.least > a.least ? b : a));
      works.push({ set, steps: set.work(alone ? TOGETHER : 1), spent: 0 });
    }
    for (;;) {
      const open = works.filter(({ set }) => !set.ended);
      if (open.length === 0) return;
      const next = open.reduce((a, b) => (costOf(b) < costOf(a) ? b : a));
      // What is known of all letters need not be shown again.
      if (alone) next.set.skipTo(least());
      const before = next.set.least;
      const start = this.#meter.units;
      next.steps.next();
      next.spent = next.set.least > before ? 0 : next.spent + this.#meter.units - start;
      this.best = Math.max(this.best, alone ? next.set.least : works.reduce((sum, { set }) => sum + set.least, 0));
      yield;
    }
  }
}

/** Work that it takes to raise a set, as far as can be told. */
function costOf({ set, spent }: Work): number {
  return Math.max(spent, set.nextCost);
}
