import { defined, entryAt, num } from '../base/at.ts';
import { createPlanner, UNITS_PER_MS } from '../pullorder/planner.ts';
import { changeOfLeavingOut } from './leave-out.ts';
import { type Smaller, smaller, struck } from './smaller.ts';
import { pressAfter, takes, type Taking, takingsOf, type VisitChange } from './visit-changes.ts';
import type { VisitFigures } from './visit-figures.ts';
import { visitProblem, type VisitProblem } from './visit-problem.ts';
import { visitTimes, type VisitTimes, workMinutes } from './visit-times.ts';
import type { PressPlan, VisitInput } from './visit.ts';

/** Work for the orders of all single changes, and for one of them at most, ms. */
const SINGLES_MS = 1500;
const SINGLE_MS = 60;

/** Whether all set-ups of a plan end within the visit. */
export function fitsIn({ times }: Pick<VisitTimes, 'times'>): boolean {
  return times.every((time) => time.fits);
}

/** What a list of changes brings, by an order that exists. */
export interface Tried {
  setUps: number;
  minutes: number;
  daysNeeded: number;
  fits: boolean;
}

/** Tries changes on one plan; what was tried is not tried again. */
export class Trials {
  readonly input: VisitInput;
  /** The order at hand, which does not fit, and what it takes. */
  readonly plan: PressPlan;
  readonly base: Tried;
  private readonly whole: VisitProblem;
  private readonly known = new Map<string, Tried>();
  private readonly harms = new Map<number, Map<string, number>>();
  private laidOut = 0;

  constructor(input: VisitInput, plan: PressPlan) {
    this.input = input;
    this.plan = plan;
    this.base = { setUps: plan.cards.length, minutes: workMinutes(plan), daysNeeded: plan.daysNeeded, fits: false };
    const { minDeltaE, testSheet, press } = input;
    this.whole = visitProblem(input.runs, { minDeltaE, testSheet, registrationMm: press.registrationMm });
  }

  /** Set-ups laid out so far, over all tries: the work that was done. */
  get laid(): number {
    return this.laidOut;
  }

  /** Pulls on all sheets: what a search for an order has to look at. */
  get pulls(): number {
    return this.whole.problem.sheets.reduce((sum, sheet) => sum + sheet.pulls.length, 0);
  }

  private measured(setUps: number, times: VisitTimes): Tried {
    return { setUps, minutes: workMinutes(times), daysNeeded: times.daysNeeded, fits: fitsIn(times) };
  }

  /** On the order at hand with what goes struck. */
  quick(changes: readonly VisitChange[]): Tried {
    const key = changes
      .map((change) => JSON.stringify(change))
      .sort()
      .join();
    let tried = this.known.get(key);
    if (tried === undefined) {
      const less = smaller(this.whole, this.input, changes);
      tried = this.onOrder(less, changes);
      this.known.set(key, tried);
    }
    return tried;
  }

  /** The same, and on a short search of its own; the shorter counts. */
  searched(changes: readonly VisitChange[]): Tried {
    const kept = this.quick(changes);
    const less = smaller(this.whole, this.input, changes);
    const units = Math.ceil(Math.min(SINGLE_MS, SINGLES_MS / takingsOf(this.input).length) * UNITS_PER_MS);
    const { best } = createPlanner(less.visit.problem, { seed: this.input.seed, units }).step(units);
    const other = this.measured(best.setUps.length, visitTimes(best, less.visit, this.figures(changes)));
    return (other.fits && !kept.fits) || (other.fits === kept.fits && other.minutes < kept.minutes) ? other : kept;
  }

  private figures(changes: readonly VisitChange[]): VisitFigures {
    return { ...this.input.press, ...pressAfter(changes) };
  }

  private onOrder(less: Smaller, changes: readonly VisitChange[]): Tried {
    const order = struck(this.plan, less);
    this.laidOut += order.setUps.length;
    return this.measured(order.setUps.length, visitTimes(order, less.visit, this.figures(changes)));
  }

  /** Numbers of the sheets that a change touches. */
  sheets(change: VisitChange): number[] {
    if (!takes(change)) return [];
    const r = this.input.runs.slice(0, change.run).filter((run) => run.sheets > 0).length;
    const own = this.plan.sheets.filter((sheet) => sheet.recipe === r);
    const numbers = (of: typeof own): number[] => of.map((sheet) => sheet.number);
    return change.kind === 'sheets' ? numbers(own.filter(({ use }) => use === undefined)).slice(-change.fewer) : numbers(own);
  }

  /** Mean ΔE00 over the sheets that a change touches. */
  deltaE(change: VisitChange): number {
    if (!takes(change)) return 0;
    const { recipe } = entryAt(this.input.runs, change.run);
    let ofRun = this.harms.get(change.run);
    if (ofRun === undefined) {
      const screens = [...new Set(recipe.pulls.map((pull) => pull.screen))];
      const kept = [...screens.map((screen) => recipe.pulls.filter((pull) => pull.screen !== screen)), []];
      const deltas = changeOfLeavingOut(recipe, kept);
      ofRun = new Map([...screens, ''].map((screen, i) => [screen, num(deltas, i)]));
      this.harms.set(change.run, ofRun);
    }
    return defined(ofRun.get(change.kind === 'screen' ? change.screen : ''));
  }

  /** Mean ΔE00 × area × sheets, more than 0. */
  harm(change: Taking): number {
    const { widthMm, heightMm } = entryAt(this.input.runs, change.run).recipe.paper;
    return Math.max(1e-6, (this.deltaE(change) * this.sheets(change).length * widthMm * heightMm) / 1e6);
  }

  /** The order at hand in the time that changes give, nothing taken away. */
  longer(changes: readonly VisitChange[]): PressPlan {
    const order = struck(this.plan, smaller(this.whole, this.input, []));
    return { ...this.plan, ...visitTimes(order, this.whole, this.figures(changes)) };
  }
}
