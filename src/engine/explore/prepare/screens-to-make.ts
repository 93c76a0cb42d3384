import { entryAt } from '../../base/at.ts';
import { bestOfAllSets, MOST_FOR_ALL_SETS } from './all-sets.ts';
import { Climb } from './climb.ts';
import { linkBound } from './link-bound.ts';
import { disputed, Relaxation, type Relaxed } from './relaxation.ts';
import {
  affordable,
  costOf,
  fillUp,
  type ScreensAsked,
  type ScreenSets,
  screenSets,
  type Spent,
  weightWith,
  within,
} from './screen-sets.ts';

/** Which screens to have made. */
export interface ScreensToMake {
  /** New ones, in the order of their ids, at most as many as were asked for. */
  screens: string[];
  /** Weight of the prints whose screens are then all there, those that are printed already among them. */
  printed: number;
  /** No set of so many new screens prints more; equal to `printed` where that was proven best. */
  bound: number;
}

/** How long is sought where nothing is proven. */
export interface Effort {
  /** Groups times branches that are looked at. */
  branches: number;
  /** Looks of the climb at prints, for each group. */
  climb: number;
  /** Rounds of the bound by links. */
  rounds: number;
}

/** Some seconds on a slow machine. */
const WHOLE: Effort = { branches: 60_000, climb: 60_000, rounds: 8 };
const LEAST_BRANCHES = 8;
const MOST_BRANCHES = 3000;
const MOST_LOOKS = 60_000_000;
/** Rounds of the bound by links times pairs of screens that a print lacks; one round is always made. */
const MOST_LINKS = 8_000_000;
/** Of the climb, so much comes before the branches: a good choice early saves most of them. */
const FIRST_CLIMB = 1 / 30;
/** Of so many screens all sets are gone through sooner than branches are. */
const FEW_SCREENS = 16;

/** The effort for one of many questions that are asked together. */
export function effortOf(share: number): Effort {
  return { branches: WHOLE.branches * share, climb: WHOLE.climb * share, rounds: Math.max(2, Math.round(WHOLE.rounds * share)) };
}

/** A part of the question: screens settled as made or not, and what at most can come of it. */
interface Branch {
  settled: ReadonlyMap<number, boolean>;
  relaxed: Relaxed;
}

class Search {
  private readonly sets: ScreenSets;
  private readonly relaxations: Relaxation[];
  private readonly effort: Effort;
  /** What weights go up by: 1 where all are whole. */
  private readonly grain: number;
  private made: ReadonlySet<number> = new Set();
  private weight = 0;

  constructor(sets: ScreenSets, effort: Effort) {
    this.sets = sets;
    this.effort = effort;
    this.relaxations = sets.limits.map((limit) => new Relaxation(sets.groups, limit));
    this.grain = sets.groups.every(({ weight }) => Number.isInteger(weight)) ? 1 : 0;
  }

  /** Best first: what is left open always holds the bound. */
  run(start: readonly number[]): { made: ReadonlySet<number>; weight: number; bound: number } {
    const open: Branch[] = [];
    this.offer(start);
    this.branch(open, new Map());
    const screens = this.sets.names.length;
    if (open.length > 0 && screens <= FEW_SCREENS) return this.allSets();
    if (open.length > 0 && screens > MOST_FOR_ALL_SETS) this.climb(FIRST_CLIMB);
    const most = Math.max(LEAST_BRANCHES, Math.min(MOST_BRANCHES, Math.floor(this.effort.branches / (1 + this.sets.groups.length))));
    for (let branches = 0; branches < most && open.length > 0; branches++) {
      open.sort((a, b) => a.relaxed.bound - b.relaxed.bound);
      const { settled, relaxed } = entryAt(open.splice(-1), 0);
      if (!this.promises(relaxed.bound)) return this.result(0);
      const screen = disputed(this.sets.groups, relaxed);
      if (screen < 0) continue;
      for (const made of [true, false]) this.branch(open, new Map(settled).set(screen, made));
    }
    return this.unproven(open);
  }

  /** Goes on where branches are left: higher from what was found, and with another bound. */
  private unproven(open: readonly Branch[]): { made: ReadonlySet<number>; weight: number; bound: number } {
    const bound = open.reduce((most, { relaxed }) => Math.max(most, relaxed.bound), 0);
    if (!this.promises(bound)) return this.result(0);
    if (this.sets.names.length <= MOST_FOR_ALL_SETS) return this.allSets();
    this.climb(1 - FIRST_CLIMB);
    if (!this.promises(bound)) return this.result(0);
    const { groups, names, limits } = this.sets;
    const links = groups.reduce((sum, { lacks }) => sum + lacks.length ** 2, 0);
    const rounds = Math.max(1, Math.min(this.effort.rounds, Math.floor(MOST_LINKS / links)));
    return this.result(Math.min(bound, linkBound(groups, names.length, entryAt(limits, 0).most, rounds)));
  }

  private allSets(): { made: ReadonlySet<number>; weight: number; bound: number } {
    this.offer(bestOfAllSets(this.sets));
    return this.result(0);
  }

  private climb(share: number): void {
    this.offer(new Climb(this.sets).from(this.made, Math.min(MOST_LOOKS, this.effort.climb * this.sets.groups.length) * share).made);
  }

  private promises(bound: number): boolean {
    return bound > this.weight + 1e-9 * Math.max(1, this.weight) && bound >= this.weight + this.grain - 1e-6;
  }

  private branch(open: Branch[], settled: ReadonlyMap<number, boolean>): void {
    const made = [...settled].filter(([, is]) => is).map(([screen]) => screen);
    let nearest: Relaxed | null = null;
    for (const [i, limit] of this.sets.limits.entries()) {
      const left = limit.most - costOf(made, limit);
      if (!within(0, left)) return;
      const relaxed = entryAt(this.relaxations, i).solve(settled, left);
      this.offer([...made, ...relaxed.fits.screens]);
      if (nearest === null || relaxed.bound < nearest.bound) nearest = relaxed;
    }
    if (nearest === null) return;
    // A choice that another limit forbids leaves what was settled before.
    if (this.sets.limits.length > 1) this.offer(made);
    if (this.promises(nearest.bound)) open.push({ settled, relaxed: nearest });
  }

  /** Keeps a choice that prints more than any before, filled up with what else fits. */
  private offer(screens: Iterable<number>): void {
    const made = new Set(screens);
    if (!affordable(made, this.sets.limits)) return;
    fillUp(this.sets, made);
    const weight = weightWith(this.sets.groups, made);
    if (weight <= this.weight) return;
    this.made = made;
    this.weight = weight;
  }

  private result(open: number): { made: ReadonlySet<number>; weight: number; bound: number } {
    if (!this.promises(open)) return { made: this.made, weight: this.weight, bound: this.weight };
    return { made: this.made, weight: this.weight, bound: this.grain > 0 ? Math.floor(open + 1e-6) : open };
  }
}

/** What is asked beside the number of screens, and where to begin. */
interface Beside {
  spent?: readonly Spent[];
  /** A choice to begin from; what of it no print needs is left out. */
  start?: readonly string[];
  effort?: Effort;
}

/**
 * As `screensToMake`, also within what else is spent.
 * @throws EngineError as screensToMake
 */
export function screensWithinAll(asked: ScreensAsked, { spent = [], start = [], effort = WHOLE }: Beside): ScreensToMake {
  const sets = screenSets(asked, spent);
  const begin = start.map((id) => sets.names.indexOf(id)).filter((screen) => screen >= 0);
  const { made, weight, bound } = new Search(sets, effort).run(begin);
  const needed = new Set(sets.groups.filter(({ lacks }) => lacks.every((screen) => made.has(screen))).flatMap(({ lacks }) => lacks));
  return {
    screens: [...needed].sort((a, b) => a - b).map((screen) => entryAt(sets.names, screen)),
    printed: sets.printedNow + weight,
    bound: sets.printedNow + bound,
  };
}

/**
 * The set of new screens with which most of the prints, by weight, can be printed. A print counts only
 * when all its screens are there, so adding screens one by one can be far off: branches are searched best
 * first under the linear relaxation of the integer programme, to the proof where its work allows, then all
 * sets of up to 24 screens, else a search from many starts with the least of two true bounds beside it.
 * Deterministic; screens that no print needs are never named.
 * @throws EngineError 'prepare.prints', 'prepare.have', 'prepare.most', 'prepare.print', 'prepare.weight'
 * Source: checked against all subsets and an integer programming solver, tests/engine/explore/prepare.
 */
export function screensToMake(asked: ScreensAsked): ScreensToMake {
  return screensWithinAll(asked, {});
}
