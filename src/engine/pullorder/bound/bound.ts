import { num } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import { distinctOrders, type Meter, type Model } from '../model.ts';
import { automataOf } from '../search/beam.ts';
import { areFew, fewSheets, tabledGroups } from '../search/few-sheets.ts';
import type { TabledGroup } from '../search/group-table.ts';
import { CapCuts } from './capped/cap-cuts.ts';
import { MOST_SHEETS } from './capped/set-masks.ts';
import { TimesLevels } from './capped/times-levels.ts';
import { Clashes } from './clashes.ts';
import { CoverRows } from './cover-rows.ts';
import { OnceSearch } from './once/once-search.ts';
import { PinnedSets } from './pinned/pinned-sets.ts';
import { SetRounds } from './set-rounds.ts';
import { someSheets } from './some-sheets.ts';
import { MAX_SUMMED } from './subset-sums.ts';
import { SumBlocks } from './sum-blocks.ts';

/** Most letters of a block where there is more than one; all sets of four of such are looked at soon. */
const A_BLOCK = 15;
/** Sheets above which some of them with all their letters never say most. */
const MANY_SHEETS = 20;
/** Work on sets that do not fit, in parts of the work on all else: at first, least and most. */
const CUT_SHARE = { first: 0.7, least: 0.15, most: 4 };
/** Work on how many letters come more than twice, before sets are looked at where letters are many; and on one step of it. Less where words that pin others see all sheets. */
const FIRST_LEVELS = { units: 2_500_000, step: 100_000, alone: 300_000, seen: 300_000 };
/** Work on a step above which larger blocks are begun. */
const DEAR_STEP = 300_000;
/** Work on circles of letters before all else; and in parts of the work on all else, while it raises the bound and when not. */
const FIRST_ONCE_UNITS = 100_000;
const ONCE_SHARE = 2;
const VAIN_ONCE_SHARE = 0.2;
/** Work on sets by words that pin the others, up to so many letters, before blocks are summed; and in parts of the work on all else while it raises the bound. */
const FIRST_PINNED = { letters: 64, units: 3_500_000 };
const PINNED_SHARE = 2;

/**
 * Lower bound on the length of any word that finishes a model, raised bit by bit.
 *
 * Three facts carry it. (1) Strike all letters outside a set X from a word: what is left finishes
 * the part of the model that keeps only the pulls of X, because turns that had come have still
 * come. So the letters of X come at least as often as a shortest word for that part is long.
 * (2) A word for all sheets is one for some of them. (3) Counts are whole numbers, so the least
 * total that agrees with all such facts is a covering integer programme. Parts are solved by A*,
 * whose lower bound holds even when it is cut short. Where there are more than a few sheets, what all
 * pairs, triples and fours need is rounded up at every size of set (`SubsetSums`) besides, and sets
 * that do not fit with only so many of each letter are taken in (`CapCuts`), and sets that split all
 * letters are proved by words that pin the others (`PinnedSets`). Where letters are many,
 * circles say more: of letters that precede one another round and round one comes twice (`OnceSearch`);
 * on top of that comes how many letters come more than twice (`TimesLevels`).
 *
 * Which sets X: groups that split all letters and clash much, then sets that need more than the
 * present cheapest mix of fractions gives them (`coverLp`). What was tried:
 * - pairs and triples alone: no more than 7/3 a letter however the sheets are shuffled; sets of 10
 *   or 12 letters show up to 3, even where their search is cut short;
 * - HiGHS on the same programmes (20 to 90 rows above three letters, up to 2400 in all): at most 1
 *   of 36 to 138 mounts more than ours, in 0.1 to more than 10 s, where ours takes some
 *   hundredths. It stays the outside check (tests/published/pullorder/covering.test.ts).
 */
export class BoundSearch {
  readonly #model: Model;
  readonly #random: Random;
  readonly #meter: Meter;
  readonly #letters: readonly number[];
  readonly #rows: CoverRows;
  readonly #clashes: Clashes;
  #sets: SetRounds | null = null;
  /** What circles show of the first and second times of all letters, and of how often they come beyond that. */
  #twiceAtMost = 0;
  #levels: TimesLevels | null = null;
  readonly #tasks: Generator<void, void>;
  /** No word is shorter. */
  best: number;
  /** A shortest word of the whole model, when one was met on the way. */
  word: number[] | null = null;
  /** Length of a word that is known: only shorter ones are looked for. */
  below = Infinity;

  /** @param model letters count 1 each, whatever `kinds` says */
  constructor(model: Model, random: Random, meter: Meter) {
    this.#model = { ...model, kinds: null, orders: distinctOrders(model.orders) };
    this.#random = random;
    this.#meter = meter;
    this.#rows = new CoverRows(this.#model, meter);
    this.#letters = this.#rows.letters;
    this.#clashes = new Clashes(this.#letters, random, meter);
    this.best = this.#rows.sumOf(this.#letters);
    this.#tasks = this.#work();
  }

  /** Works for about so many units. @returns false when it has nothing left to try */
  run(units: number): boolean {
    const until = this.#meter.units + units;
    while (this.#meter.units < until) if (this.#tasks.next().done) return false;
    return true;
  }

  /** Draws the conclusion from all rows; also how often each letter comes in a cheapest mix of fractions. */
  #cover(maxNodes: number): Float64Array {
    const { bound, counts } = this.#rows.cover(this.best, maxNodes);
    this.best = Math.max(this.best, bound);
    return counts;
  }

  *#work(): Generator<void, void> {
    const { orders } = this.#model;
    if (orders.length === 0) return;
    const start = this.#meter.units;
    const once = this.#once();
    yield* this.#spend(once, FIRST_ONCE_UNITS);
    yield* this.#pairs();
    this.#cover(200);
    yield;
    if (this.#letters.length > 2) this.#sets = yield* SetRounds.begin(this.#rows, this.#clashes, this.#random, this.#meter);
    // Triples all but settle mild orders, for which the search of all is long; not so shuffled ones.
    this.#cover(200);
    const few = this.#few();
    if (this.below - this.best > 1) yield* few;
    const many = this.#letters.length > MAX_SUMMED;
    // What needs of small sets show beyond levels, in blocks, is less the more blocks there are.
    const summed = !areFew(this.#model) && this.#letters.length <= 2 * A_BLOCK;
    const stacked = this.#sets && many && !areFew(this.#model) ? this.#stacked(this.#sets) : null;
    const seen = this.#letters.length <= FIRST_PINNED.letters && orders.length <= MOST_SHEETS;
    const firstLevels = seen ? FIRST_LEVELS.seen : FIRST_LEVELS.units;
    for (const until = this.#meter.units + firstLevels; stacked && this.#meter.units < until;) {
      if ((this.#levels?.nextCost ?? 0) > (summed ? FIRST_LEVELS.step : FIRST_LEVELS.alone) || stacked.next().done) break;
      yield;
    }
    const pinned = this.#sets && !areFew(this.#model) && this.#letters.length <= FIRST_PINNED.letters ? this.#pinned(this.#sets) : null;
    if (pinned) yield* this.#spend(pinned, FIRST_PINNED.units);
    const blocks = this.#sets && summed ? new SumBlocks(this.#sets.split(many ? A_BLOCK : MAX_SUMMED), this.#rows) : null;
    // All triples and fours of a block cost little and, rounded at every size, show most.
    for (let t = 0; blocks && t < 2; t++) yield* this.#sum(blocks);
    const cuts = blocks ? this.#counting(blocks, new CapCuts(this.#model, blocks.blocks, this.#meter).work()) : null;
    let rest = this.#meter.units - start;
    let share = CUT_SHARE.first;
    let onceShare = ONCE_SHARE;
    const gaining = summed ? VAIN_ONCE_SHARE : CUT_SHARE.most;
    let stackShare = gaining;
    let pinnedShare = PINNED_SHARE;
    let bySheets = Infinity;
    for (let round = 0; round < 40; round++) {
      onceShare = (yield* this.#spend(once, onceShare * rest)) > 0 ? ONCE_SHARE : VAIN_ONCE_SHARE;
      if (stacked) stackShare = (yield* this.#spend(stacked, stackShare * rest)) > 0 ? gaining : VAIN_ONCE_SHARE;
      if (pinned) pinnedShare = (yield* this.#spend(pinned, pinnedShare * rest)) > 0 ? PINNED_SHARE : 1;
      const summedBefore = blocks?.total ?? 0;
      if (cuts) yield* this.#spend(cuts, share * rest);
      const cut = (blocks?.total ?? 0) - summedBefore;
      const begun = { units: this.#meter.units, best: this.best };
      yield* this.#lookAtSets();
      this.#cover(300 * (1 + round));
      yield;
      if (blocks) yield* this.#sum(blocks);
      // A few sheets with all their letters say most where there are few sheets.
      if (orders.length <= MANY_SHEETS && bySheets >= this.best - 2 && round !== 1) bySheets = yield* this.#someSheets(round);
      if (round > 2) yield* few;
      const gained = this.best - begun.best;
      // Which of the two raised the bound more for its work gets more of it from now on.
      share = cut > 0 && cut >= share * gained ? Math.min(CUT_SHARE.most, 2 * share) : Math.max(CUT_SHARE.least, share / 2);
      rest = this.#meter.units - begun.units;
    }
  }

  /** What sets need that split all letters, by words that pin the others. */
  *#pinned(sets: SetRounds): Generator<void, void> {
    const known = {
      letters: this.#letters,
      split: (size: number, among: readonly number[], kicks?: number) => sets.split(size, among, kicks),
      least: () => this.best,
    };
    const pinned = new PinnedSets(this.#model, known, this.#meter);
    for (const steps = pinned.work(); !steps.next().done;) {
      this.best = Math.max(this.best, pinned.best);
      yield;
    }
  }

  /** What circles of letters need of which one must come twice, bit by bit. */
  *#once(): Generator<void, void> {
    const single = this.#letters.filter((l) => this.#rows.sumOf([l]) === 1);
    const search = new OnceSearch(this.#model.orders, single, this.#meter);
    const others = this.#rows.sumOf(this.#letters) - single.length;
    for (const steps = search.work(); ;) {
      const least = 2 * single.length - search.most;
      if (least + others > this.best) {
        this.best = least + others;
        this.#rows.note(single, least);
      }
      this.#twiceAtMost = least + 2 * (this.#letters.length - single.length);
      this.#stack();
      if (steps.next().done) return;
      yield;
    }
  }

  /** How often letters come beyond their second time, bit by bit; on top of their first and second times. */
  *#stacked(sets: SetRounds): Generator<void, void> {
    const n = this.#letters.length;
    const counts = Array.from({ length: this.#model.letterCount }, (_, l) => this.#rows.sumOf([l]));
    // Larger blocks show more in the end, smaller ones sooner.
    for (const size of n > 2 * MAX_SUMMED ? [A_BLOCK, MAX_SUMMED] : [MAX_SUMMED]) {
      const known = { split: sets.split(size), counts, needOf: (letters: number[]) => this.#rows.few(letters) };
      const levels = new TimesLevels(this.#model, known, this.#meter);
      this.#levels = levels;
      for (const steps = levels.work(); levels.nextCost < (size === A_BLOCK ? DEAR_STEP : Infinity) && !steps.next().done;) {
        this.#stack();
        yield;
      }
    }
  }

  /** Times up to the second and times beyond it are others, so that what they come to adds up. */
  #stack(): void {
    if (this.#levels) this.best = Math.max(this.best, this.#twiceAtMost + this.#levels.beyondTwo);
  }

  /** Takes steps for so many units. @returns by how much the bound rose */
  *#spend(steps: Generator<void, void>, units: number): Generator<void, number> {
    const before = this.best;
    for (const until = this.#meter.units + units; this.#meter.units < until && !steps.next().done;) yield;
    return this.best - before;
  }

  /** What blocks of letters need by sums over all their sets, together. */
  *#sum(blocks: SumBlocks): Generator<void, void> {
    yield* this.#counting(blocks, blocks.raise());
    yield;
  }

  /** Takes steps that raise blocks: those that are done count at once, whatever becomes of the others. */
  *#counting(blocks: SumBlocks, steps: Generator<void, void>): Generator<void, void> {
    for (let done = false; !done;) {
      done = steps.next().done === true;
      this.best = Math.max(this.best, blocks.total);
      if (!done) yield;
    }
  }

  /** A shortest word outright, where there are few sheets. */
  *#few(): Generator<void, void> {
    if (!this.#sets || !areFew(this.#model)) return;
    const automata = automataOf(this.#model, this.#meter);
    const splits: TabledGroup[][] = [];
    for (let size = 7; size > 2 && splits.length < 3;) {
      const split = yield* tabledGroups(this.#model, automata, this.#sets.split(size), { most: 3_000_000, meter: this.#meter });
      if (split) splits.push(split);
      else size--;
    }
    if (splits.length === 0) return;
    const search = fewSheets(this.#model, automata, splits, { below: () => this.below, maxNodes: 2_000_000, meter: this.#meter });
    for (;;) {
      const { value, done } = search.next();
      this.best = Math.max(this.best, done ? value.lower : value);
      if (done) return void (this.word = value.word);
      yield;
    }
  }

  /** Some of the sheets, more of them round by round. @returns the best bound that they gave */
  *#someSheets(round: number): Generator<void, number> {
    const asked = { size: 2 + Math.min(round >> 1, 4), tries: 4 + round, maxNodes: Math.min(24_000, 4000 * 2 ** (round >> 1)) };
    const found = yield* someSheets(this.#model, asked, {
      rows: this.#rows,
      random: this.#random,
      meter: this.#meter,
      raise: (least) => void (this.best = Math.max(this.best, least)),
    });
    this.word = found.word ?? this.word;
    return found.most;
  }

  /** A round of sets of letters; of all letters where they are but two. */
  *#lookAtSets(): Generator<void, void> {
    const raise = (least: number): void => void (this.best = Math.max(this.best, least));
    if (this.#sets) yield* this.#sets.next(raise, () => this.#cover(0));
    else raise(yield* this.#rows.least(this.#letters, 4000));
  }

  /** Finds how much each two letters clash: what they need together beyond what each needs alone. */
  *#pairs(): Generator<void, void> {
    const letters = this.#letters;
    if ((letters.length * (letters.length - 1)) / 2 > 4000) return this.#clashes.seeIn(this.#model.orders);
    for (let i = 0; i < letters.length; i++) {
      for (let j = 0; j < i; j++) {
        const pair = [num(letters, j), num(letters, i)];
        const excess = (yield* this.#rows.least(pair, 2000)) - this.#rows.sumOf(pair);
        if (excess > 0) this.#clashes.set(num(letters, j), num(letters, i), excess);
      }
      yield;
    }
  }

  /**
   * Splits all letters into groups that clash much within; another split at each call.
   * @param size most letters in a group
   */
  split(size: number): number[][] {
    return this.#clashes.split(size);
  }
}
