import { entryAt } from '../../base/at.ts';
import { disputed, Relaxation, type Relaxed } from './relaxation.ts';
import { fillUp, type ScreensAsked, type ScreenSets, screenSets, weightWith } from './screen-sets.ts';

/** Which screens to have made. */
export interface ScreensToMake {
  /** New ones, in the order of their ids, at most as many as were asked for. */
  screens: string[];
  /** Weight of the prints whose screens are then all there, those that are printed already among them. */
  printed: number;
  /** No set of so many new screens prints more; equal to `printed` where that was proven best. */
  bound: number;
}

/** Groups times branches that are looked at; some seconds on a slow machine. */
const WORK = 60_000;
const MOST_BRANCHES = 3000;

/** A part of the question: screens settled as made or not, and what at most can come of it. */
interface Branch {
  settled: ReadonlyMap<number, boolean>;
  relaxed: Relaxed;
}

class Search {
  private readonly sets: ScreenSets;
  private readonly relaxation: Relaxation;
  private made: Set<number> = new Set();
  private weight = 0;

  constructor(sets: ScreenSets) {
    this.sets = sets;
    this.relaxation = new Relaxation(sets.groups, sets.names.length);
  }

  /** Best first: what is left open always holds the bound. */
  run(): { made: ReadonlySet<number>; weight: number; bound: number } {
    const open: Branch[] = [];
    this.branch(open, new Map());
    const most = Math.max(8, Math.min(MOST_BRANCHES, Math.floor(WORK / (1 + this.sets.groups.length))));
    for (let branches = 0; branches < most && open.length > 0; branches++) {
      open.sort((a, b) => a.relaxed.bound - b.relaxed.bound);
      const { settled, relaxed } = entryAt(open.splice(-1), 0);
      if (!this.promises(relaxed.bound)) return this.result([]);
      const screen = disputed(this.sets.groups, relaxed);
      if (screen < 0) continue;
      for (const made of [true, false]) this.branch(open, new Map(settled).set(screen, made));
    }
    return this.result(open);
  }

  private promises(bound: number): boolean {
    return bound > this.weight + 1e-9 * Math.max(1, this.weight);
  }

  private branch(open: Branch[], settled: ReadonlyMap<number, boolean>): void {
    const made = [...settled].filter(([, is]) => is).map(([screen]) => screen);
    const left = this.sets.most - made.length;
    if (left < 0) return;
    const relaxed = this.relaxation.solve(settled, left);
    this.offer([...made, ...relaxed.fits.screens]);
    if (this.promises(relaxed.bound)) open.push({ settled, relaxed });
  }

  /** Keeps a choice that prints more than any before, filled up with what else fits. */
  private offer(screens: readonly number[]): void {
    const made = new Set(screens);
    fillUp(this.sets.groups, made, this.sets.most);
    const weight = weightWith(this.sets.groups, made);
    if (weight <= this.weight) return;
    this.made = made;
    this.weight = weight;
  }

  private result(open: readonly Branch[]): { made: ReadonlySet<number>; weight: number; bound: number } {
    const bound = open.reduce((most, { relaxed }) => Math.max(most, relaxed.bound), this.weight);
    return { made: this.made, weight: this.weight, bound: this.promises(bound) ? bound : this.weight };
  }
}

/**
 * The set of new screens with which most of the prints, by weight, can be printed. A print counts only
 * when all its screens are there, so adding screens one by one can be far off: branches are searched best
 * first under the linear relaxation of the integer programme, to the proof where its work allows, else
 * with the relaxation as a true bound. Deterministic; screens that no print needs are never named.
 * @throws EngineError 'prepare.prints', 'prepare.have', 'prepare.most', 'prepare.print', 'prepare.weight'
 * Source: checked against all subsets and an integer programming solver, tests/engine/explore/prepare.
 */
export function screensToMake(asked: ScreensAsked): ScreensToMake {
  const sets = screenSets(asked);
  const { made, weight, bound } = new Search(sets).run();
  const needed = new Set(sets.groups.filter(({ lacks }) => lacks.every((screen) => made.has(screen))).flatMap(({ lacks }) => lacks));
  return {
    screens: [...needed].sort((a, b) => a - b).map((screen) => entryAt(sets.names, screen)),
    printed: sets.printedNow + weight,
    bound: sets.printedNow + bound,
  };
}
