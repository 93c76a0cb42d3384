import { num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import type { Random } from '../../base/random.ts';
import { say } from '../../words/en/pullorder/search.ts';
import { BoundSearch } from '../bound/bound.ts';
import { MAX_SET_UPS, unpackCost, wordCost, type Compiled, type Meter, type Model } from '../model.ts';
import { automataOf } from './beam.ts';
import { findBeam } from './cast.ts';
import { exact, type ExactResult } from './exact.ts';
import { canExchange, Exchanger } from './exchange/exchange.ts';
import { areFew, MAX_FEW_SHEETS } from './few-sheets.ts';
import { completed } from './from-order.ts';
import { Improver } from './improve.ts';
import { hasInksOfTheirOwn, hasTwins, inkModelOf, screensOf, writeOut } from './kinds-and-screens.ts';

/** What the search holds so far; the word is always a whole plan, the bounds always hold. */
export interface SearchState {
  word: number[];
  bound: { setUps: number; mounts: number };
}

const MEGA = 1_000_000;
/** States after which automata are thrown away and begun afresh, so that memory stays small. */
const MAX_STATES = 600_000;
/** Share of the work on the order of screens that goes to exchange, where there is any. */
const EXCHANGED = 0.85;
/** Sheets up to which a wide beam is worth twice the work. */
const MAX_BEAMED_SHEETS = 12;
/** An empty press, before the word and after it. */
const ALONE = { before: -1, after: -1 };

/**
 * The search as a series of slices, each yielding where it stands. Mounts come first, so the order
 * of screens is searched on its own (a screen stays mounted while it finds work); its plan is then
 * written out in kinds and bettered for ink changes and changes of offset. Each round has twice the
 * work of the one before, and ends early when the plan is shown to be a cheapest one.
 * @param from letters of kinds of an order at hand, whole or not; none = []
 * @throws EngineError 'pullorder.too-large' when a plan needs more set-ups than can be counted
 */
export function* search(compiled: Compiled, from: readonly number[], means: Means): Generator<SearchState, void> {
  const { kindModel } = compiled;
  const { random, meter } = means;
  const automata = automataOf(kindModel, meter);
  const first = findBeam(kindModel, automata, { width: 1, random, meter });
  if (!first) {
    throw new EngineError('pullorder.too-large', say.pullOrderNeedsMore(MAX_SET_UPS));
  }
  if (first.length === 0) yield { word: [], bound: { setUps: 0, mounts: 0 } };
  else {
    const atHand = completed(from, first, automata);
    const cheaper = from.length > 0 && wordCost(kindModel, atHand) <= wordCost(kindModel, first) ? atHand : first;
    yield* new PlanSearch(compiled, cheaper, means).run();
  }
}

/** What stays the same over a search. */
interface Means {
  random: Random;
  meter: Meter;
  /** Units of the first round; a caller that knows its budget gives it. */
  firstRound: number;
}

class PlanSearch {
  readonly #compiled: Compiled;
  readonly #means: Means;
  readonly #meter: Meter;
  /** Better words of kinds, and better orders of screens. */
  readonly #kinds: Improver;
  readonly #screens: Improver;
  /** A quicker way to better orders of screens; null where there are too many sheets for it. */
  readonly #exchanger: Exchanger | null;
  readonly #mountBound: BoundSearch;
  /** The same as the bound on mounts where set-ups, or inks, are mounts. */
  readonly #setUpBound: BoundSearch;
  readonly #inkBound: BoundSearch;
  /** The cheapest word of kinds so far, and its packed cost. */
  #best: number[];
  #bestCost: number;

  /** @param first a whole word of kinds */
  constructor(compiled: Compiled, first: number[], means: Means) {
    const { kindModel, screenModel } = compiled;
    const { random, meter } = means;
    this.#compiled = compiled;
    this.#means = means;
    this.#meter = meter;
    this.#kinds = new Improver(kindModel, first, random, meter);
    this.#screens = new Improver(screenModel, screensOf(compiled, first), random, meter);
    this.#exchanger = canExchange(screenModel, this.#screens.word.length) ? new Exchanger(screenModel, random, meter) : null;
    this.#mountBound = new BoundSearch(screenModel, random, meter);
    // With one kind a screen and no kind twice in a row both bounds are the same; it is found once.
    const oneToOne = kindModel.letterCount === screenModel.letterCount && !hasTwins(kindModel);
    this.#setUpBound = oneToOne ? this.#mountBound : new BoundSearch(kindModel, random, meter);
    // Ink changes follow the same law as mounts; with one ink a screen they are the same number.
    this.#inkBound = hasInksOfTheirOwn(kindModel) ? this.#mountBound : new BoundSearch(inkModelOf(kindModel), random, meter);
    this.#best = first;
    this.#bestCost = wordCost(kindModel, first);
  }

  *run(): Generator<SearchState, void> {
    yield this.#soFar();
    let proven = isSmall(this.#compiled.kindModel) && (yield* this.#tryAtOnce());
    for (let round = 0; !proven; round++) proven = yield* this.#round(round);
    yield* this.#boundSetUps();
  }

  #soFar(): SearchState {
    if (this.#kinds.cost < this.#bestCost) {
      this.#bestCost = this.#kinds.cost;
      this.#best = [...this.#kinds.word];
    }
    const mounts = this.#mountBound.best;
    return { word: this.#best, bound: { mounts, setUps: Math.max(this.#setUpBound.best, mounts) } };
  }

  /** The smallest problems are done at once. @returns whether the plan is shown to be a cheapest one */
  *#tryAtOnce(): Generator<SearchState, boolean> {
    const result = exact(this.#compiled.kindModel, this.#kinds.automata, {
      ...ALONE,
      below: this.#bestCost,
      maxNodes: Math.max(2000, Math.min(20_000, Math.floor(this.#means.firstRound / 1000))),
      meter: this.#meter,
    });
    const proven = this.#settle(result);
    yield this.#soFar();
    return proven;
  }

  /** All ways to a better plan or bound in turn. @returns whether the plan is shown to be a cheapest one */
  *#round(round: number): Generator<SearchState, boolean> {
    const { kindModel } = this.#compiled;
    const total = this.#means.firstRound * 2 ** Math.min(round, 8);
    if (!this.#fewestMounts()) yield* this.#orderScreens(round, total);
    yield* this.#sliced((this.#boundShare() > 0.5 ? 0.2 : 0.4) * total, (units) => {
      if (this.#fewestMounts()) return false;
      this.#betterScreens(units);
      return true;
    });
    if (this.#inkBound !== this.#mountBound) yield* this.#sliced(0.02 * total, (units) => this.#inkBound.run(units));
    if (this.#setUpBound !== this.#mountBound) yield* this.#sliced(0.06 * total, (units) => this.#setUpBound.run(units));
    yield* this.#sliced(0.3 * total, (units) => {
      this.#kinds.run(units);
      this.#takeKinds();
      return !this.#atBounds();
    });
    if (this.#atBounds()) return true;
    let proven = false;
    if (isSmall(kindModel)) {
      proven = this.#settle(this.#cheapest(kindModel, this.#bestCost, { units: 0.08 * total, round }));
      yield this.#soFar();
    }
    for (const improver of [this.#kinds, this.#screens]) if (improver.states > MAX_STATES) improver.forget();
    return proven;
  }

  /** A better order of screens by beams, and a better bound on their number. */
  *#orderScreens(round: number, total: number): Generator<SearchState, void> {
    const { screenModel } = this.#compiled;
    this.#beamScreens(round, total);
    yield this.#soFar();
    yield* this.#sliced(this.#boundShare() * total, (units) => {
      this.#mountBound.below = this.#screens.cost;
      const more = this.#mountBound.run(units);
      const { word } = this.#mountBound;
      if (word && word.length < this.#screens.cost) this.#screens.set(word);
      this.#takeScreens();
      return more && !this.#fewestMounts();
    });
    if (!isSmall(screenModel) || areFew(screenModel) || this.#fewestMounts()) return;
    const result = this.#cheapest(screenModel, this.#screens.cost, { units: 0.08 * total, round });
    this.#mountBound.best = Math.max(this.#mountBound.best, result.lower);
    if (result.word) this.#screens.set(result.word);
    this.#takeScreens();
    yield this.#soFar();
  }

  /** Most by exchange, which shortens words quicker; windows find what it does not. */
  #betterScreens(units: number): void {
    const exchanger = this.#exchanger;
    if (exchanger !== null) {
      if (exchanger.length !== this.#screens.cost) exchanger.set(this.#screens.word);
      exchanger.run(EXCHANGED * units);
      if (exchanger.length < this.#screens.cost) this.#screens.set(exchanger.word);
      this.#takeScreens();
    }
    this.#screens.run(exchanger === null ? units : (1 - EXCHANGED) * units);
    this.#takeScreens();
  }

  /** A narrow beam tells what a wide one costs; a small part of the round is for it. */
  #beamScreens(round: number, total: number): void {
    const { screenModel } = this.#compiled;
    const { random, meter } = this.#means;
    const find = (width: number): number[] | null =>
      findBeam(screenModel, this.#screens.automata, { width, below: this.#screens.cost, round, random, meter });
    const start = meter.units;
    const narrow = find(8);
    if (narrow) this.#screens.set(narrow);
    const width = Math.min(4000, Math.floor((8 * beamShare(screenModel) * total) / (meter.units - start)) - 8);
    const found = width > 8 ? find(width) : null;
    if (found && found.length < this.#screens.cost) this.#screens.set(found);
    this.#takeScreens();
  }

  /**
   * The plan is a cheapest one; fewer set-ups at more mounts may still be possible, so their bound
   * goes on.
   */
  *#boundSetUps(): Generator<SearchState, void> {
    const spare = exact({ ...this.#compiled.kindModel, kinds: null }, this.#kinds.automata, {
      ...ALONE,
      below: this.#best.length,
      maxNodes: Math.max(2000, Math.min(50_000, Math.floor(this.#means.firstRound / 500))),
      meter: this.#meter,
    });
    this.#setUpBound.best = Math.max(this.#setUpBound.best, spare.lower);
    yield this.#soFar();
  }

  /** Slices of about a tenth of a second, so that a stop is heard; until the work says false. */
  *#sliced(units: number, work: (units: number) => boolean): Generator<SearchState, void> {
    const until = this.#meter.units + units;
    while (this.#meter.units < until) {
      if (!work(Math.min(MEGA, until - this.#meter.units))) return;
      yield this.#soFar();
    }
  }

  /** An exact search within some units, by groups that clash. */
  #cheapest(model: Model, below: number, { units, round }: { units: number; round: number }): ExactResult {
    const orders = model.orders.length;
    return exact(model, automataOf(model, this.#meter), {
      ...ALONE,
      below,
      maxNodes: Math.min(400_000, Math.floor(units / (150 + 15 * orders))),
      meter: this.#meter,
      // Larger groups say more but have more states; which pays is tried in turn.
      groups: this.#mountBound.split(num(orders <= 6 ? [6, 7, 5] : [5, 4, 5], round % 3)),
    });
  }

  /** Takes what an exact search of kinds found; true when it shows the plan to be a cheapest one. */
  #settle(result: ExactResult): boolean {
    this.#mountBound.best = Math.max(this.#mountBound.best, unpackCost(result.lower).mounts);
    if (result.word) this.#kinds.set(result.word);
    return result.finished;
  }

  #takeScreens(): void {
    if (this.#screens.cost >= unpackCost(this.#kinds.cost).mounts) return;
    this.#kinds.set(writeOut(this.#compiled, this.#kinds.automata, this.#screens.word));
  }

  #takeKinds(): void {
    const order = screensOf(this.#compiled, this.#kinds.word);
    if (order.length < this.#screens.cost) this.#screens.set(order);
  }

  /** Whether the order of screens has reached its bound. */
  #fewestMounts(): boolean {
    return this.#mountBound.best >= this.#screens.cost;
  }

  /** Whether each part of the cost has reached its bound. */
  #atBounds(): boolean {
    const { word, bound } = this.#soFar();
    const cost = unpackCost(this.#bestCost);
    const inks = cost.inkChanges <= this.#inkBound.best && cost.registerMoves === 0;
    return cost.mounts <= bound.mounts && inks && word.length <= bound.setUps;
  }

  /** Where there are few sheets a shortest word is likely to be found on the way to a bound. */
  #boundShare(): number {
    const { screenModel } = this.#compiled;
    if (!areFew(screenModel)) return 0.2;
    return screenModel.orders.length < MAX_FEW_SHEETS ? 0.55 : 0.3;
  }
}

/** Share of a round for a wide beam: with few sheets it finds what exchange does not. */
function beamShare(model: Model): number {
  return model.orders.length <= MAX_BEAMED_SHEETS ? 0.12 : 0.06;
}

/** Whether an exact search may get through. */
function isSmall(model: Model): boolean {
  return model.orders.reduce((n, order) => n + order.letters.length, 0) <= 240 && model.orders.length <= 12;
}
