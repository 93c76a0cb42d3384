import { defined, entryAt, num } from '../base/at.ts';
import { createPlanner, UNITS_PER_MS } from '../pullorder/planner.ts';
import { changeOfLeavingOut } from './leave-out.ts';
import { type Smaller, smaller, struck } from './smaller.ts';
import { canAlso, leftOf, pressAfter, runsAfter, takes, type Taking, takingsOf, timesOf, type VisitChange } from './visit-changes.ts';
import type { VisitFigures } from './visit-figures.ts';
import { visitTimes, type VisitTimes } from './visit-needs.ts';
import { visitProblem, type VisitProblem, type VisitRunInput } from './visit-problem.ts';
import { planVisit, type PressPlan, type VisitInput } from './visit.ts';

export type { VisitChange } from './visit-changes.ts';

/** One change of a choice, and what it saves after those before it. */
export interface FitStep {
  change: VisitChange;
  /** Numbers of the sheets that it touches; empty when only time is added. */
  sheets: number[];
  savedSetUps: number;
  savedMinutes: number;
  /** Mean ΔE00 that it alone makes on those sheets; 0 when only time is added. */
  deltaE: number;
}

/** One or more changes to a visit, and what they bring together. */
export interface FitChoice {
  steps: FitStep[];
  /** What the visit then prints, with the recipes made for it. */
  runs: VisitRunInput[];
  press: Partial<VisitFigures>;
  savedSetUps: number;
  savedMinutes: number;
  daysNeeded: number;
  fits: boolean;
  /** The visit as it is then planned, when it fits; null for a choice that only helps. */
  plan: PressPlan | null;
}

/** Work for the orders of all single changes, for one of them at most, and for the plan that proves that a choice fits, ms. */
const SINGLES_MS = 1500;
const SINGLE_MS = 60;
const PROOF_MS = 300;
/** Choices given at most: single ones that take something away, combinations, changes in a combination. */
const MOST = 5;
const MOST_COMBINATIONS = 3;
const MOST_CHANGES = 4;

/** Minutes that beds are busy or waiting, lunch left out. */
export function workMinutes({ parts, clock }: Pick<VisitTimes, 'parts' | 'clock'>): number {
  const from = clock.lunch?.fromMinute ?? 0;
  const to = from + (clock.lunch?.minutes ?? 0);
  return parts.reduce((sum, { fromMinute, toMinute }) => {
    const lunch = Math.max(0, Math.min(toMinute, to) - Math.max(fromMinute, from));
    return sum + toMinute - fromMinute - lunch;
  }, 0);
}

function fitsIn({ times }: Pick<VisitTimes, 'times'>): boolean {
  return times.every((time) => time.fits);
}

/** What a list of changes brings, by an order that exists. */
interface Tried {
  setUps: number;
  minutes: number;
  daysNeeded: number;
  fits: boolean;
}

/** Tries changes on one plan; what was tried is not tried again. */
class Trials {
  private readonly input: VisitInput;
  private readonly plan: PressPlan;
  private readonly whole: VisitProblem;
  private readonly known = new Map<string, Tried>();
  private readonly harms = new Map<number, Map<string, number>>();

  constructor(input: VisitInput, plan: PressPlan) {
    this.input = input;
    this.plan = plan;
    this.whole = visitProblem(input.runs, input.minDeltaE);
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
    const less = smaller(this.whole, this.input, changes);
    const kept = this.onOrder(less, changes);
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
    return this.measured(order.setUps.length, visitTimes(order, less.visit, this.figures(changes)));
  }

  /** Numbers of the sheets that a change touches. */
  sheets(change: VisitChange): number[] {
    if (!takes(change)) return [];
    const r = this.input.runs.slice(0, change.run).filter((run) => run.sheets > 0).length;
    const own = this.plan.sheets.filter((sheet) => sheet.recipe === r).map((sheet) => sheet.number);
    return change.kind === 'sheets' ? own.slice(-change.fewer) : own;
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
}

/**
 * What to leave out, or how much longer to stay, so that a visit fits: screens of a recipe, whole
 * recipes, a quarter or half of its sheets, more days, longer days. Each is tried on the order at
 * hand with the rest struck and on a short search of its own, and the shorter counts. Where hardly
 * one of them makes the visit fit, combinations of up to four are built, each time the change that
 * saves most for its harm or most in all, also with a longer day or a day more, and what turns out
 * not to be needed is put back. What is said to fit was planned anew, as it will be printed.
 * @param plan an order of `input` that does not fit
 * @yields the share that is done, 0–1
 * @returns first combinations and single changes that fit; what takes something away by minutes
 *   saved per harm (mean ΔE00 × area × sheets), at most five; then the least more time that fits.
 *   Changes that save nothing are left out
 */
export function* whatToDrop(input: VisitInput, plan: PressPlan): Generator<number, FitChoice[]> {
  const trials = new Trials(input, plan);
  const base: Tried = { setUps: plan.cards.length, minutes: workMinutes(plan), daysNeeded: plan.daysNeeded, fits: false };
  const takings = takingsOf(input);
  const singles: { changes: VisitChange[]; tried: Tried; worth: number }[] = [];
  for (const [i, change] of takings.entries()) {
    const tried = trials.searched([change]);
    const saved = base.minutes - tried.minutes;
    if (tried.fits || saved >= 1) singles.push({ changes: [change], tried, worth: saved / trials.harm(change) });
    yield (0.5 * (i + 1)) / takings.length;
  }
  singles.sort((a, b) => Number(b.tried.fits) - Number(a.tried.fits) || b.worth - a.worth);
  const combined: VisitChange[][] = [];
  if (singles.filter(({ tried }) => tried.fits).length < 2) {
    const starts = startsOf(input, plan);
    for (const [i, start] of starts.entries()) {
      for (const byHarm of [true, false]) {
        const found = yield* combination(input, trials, takings, start, byHarm, 0.5 + (0.3 * i) / starts.length);
        if (found !== null && found.length > 1) combined.push(found);
      }
    }
  }
  const longer = timesOf(input, plan).map((change) => ({ changes: [change], tried: trials.quick([change]) }));
  const hours = longer.filter(({ changes: [change], tried }) => defined(change).kind === 'hours' && tried.fits).slice(0, 1);
  const days = longer.filter(({ changes: [change] }) => defined(change).kind === 'days');

  const out: FitChoice[] = [];
  for (const changes of withoutDoubles(combined).slice(0, MOST_COMBINATIONS)) {
    const choice = yield* proven(input, plan, trials, changes, base, 0.8);
    if (choice.fits) out.push(choice);
  }
  for (const { changes, tried } of singles.slice(0, MOST)) {
    out.push(tried.fits ? yield* proven(input, plan, trials, changes, base, 0.9) : choiceOf(input, trials, changes, base, tried, null));
  }
  const taking = out.sort((a, b) => Number(b.fits) - Number(a.fits));
  for (const { changes, tried } of [...hours, ...days]) {
    if (!tried.fits) continue;
    const press = { ...input.press, ...pressAfter(changes) };
    const order = struck(plan, smaller(visitProblem(input.runs, input.minDeltaE), input, []));
    const longerPlan = { ...plan, ...visitTimes(order, visitProblem(input.runs, input.minDeltaE), press) };
    taking.push(choiceOf(input, trials, changes, base, tried, fitsIn(longerPlan) ? longerPlan : null));
  }
  return taking;
}

/** What combinations begin with: nothing, an hour or two more a day, a day more. */
function startsOf(input: VisitInput, plan: PressPlan): VisitChange[][] {
  const more = timesOf(input, plan)
    .filter((change) => change.kind === 'hours')
    .slice(0, 2);
  const day: VisitChange[] = plan.daysNeeded > input.press.days + 1 ? [{ kind: 'days', days: input.press.days + 1 }] : [];
  return [[], ...more.map((change) => [change]), ...(day.length > 0 ? [day] : [])];
}

/** Adds changes until the visit fits, then puts back what was not needed; null when four do not do. */
function* combination(
  input: VisitInput,
  trials: Trials,
  takings: readonly Taking[],
  start: readonly VisitChange[],
  byHarm: boolean,
  share: number,
): Generator<number, VisitChange[] | null> {
  let changes = [...start];
  let now = trials.quick(changes);
  while (!now.fits) {
    if (changes.length >= MOST_CHANGES) return null;
    let best: { change: Taking; tried: Tried; score: number } | null = null;
    for (const change of takings) {
      if (!canAlso(input, changes, change)) continue;
      const tried = trials.quick([...changes, change]);
      const saved = now.minutes - tried.minutes;
      // Of changes that reach the end the least harmful is taken.
      const score = tried.fits ? 1 / trials.harm(change) : byHarm ? saved / trials.harm(change) : saved;
      if (saved <= 0 && !tried.fits) continue;
      if (best === null || Number(tried.fits) > Number(best.tried.fits) || (tried.fits === best.tried.fits && score > best.score))
        best = { change, tried, score };
      yield share;
    }
    if (best === null) return null;
    changes = [...changes, best.change];
    now = best.tried.fits ? best.tried : trials.searched(changes);
    yield share;
  }
  for (const change of [...changes]) {
    const without = changes.filter((other) => other !== change);
    if (without.length > 0 && trials.quick(without).fits) changes = without;
    yield share;
  }
  return changes.filter((change) => change.kind !== 'sheets' || change.fewer === leftOf(changes, change.run).fewer);
}

/** Of combinations that take the same away only the one that gives least more time, which is the first; shortest first. */
function withoutDoubles(combinations: readonly VisitChange[][]): VisitChange[][] {
  const known = new Map<string, VisitChange[]>();
  for (const changes of combinations) {
    const taken = changes
      .filter(takes)
      .map((change) => JSON.stringify(change))
      .sort();
    const days = changes.some((change) => change.kind === 'days');
    const key = [days, ...taken].join();
    if (!known.has(key)) known.set(key, changes);
  }
  return [...known.values()].sort((a, b) => a.length - b.length);
}

/** Plans the changed visit as it will be printed. */
function* proven(
  input: VisitInput,
  plan: PressPlan,
  trials: Trials,
  changes: readonly VisitChange[],
  base: Tried,
  share: number,
): Generator<number, FitChoice> {
  const runs = runsAfter(input, changes);
  let last: PressPlan | null = null;
  for (const step of planVisit({ ...input, runs, press: { ...input.press, ...pressAfter(changes) } }, PROOF_MS)) {
    last = step;
    yield share;
  }
  const made = last ?? plan;
  const tried: Tried = { setUps: made.cards.length, minutes: workMinutes(made), daysNeeded: made.daysNeeded, fits: fitsIn(made) };
  return choiceOf(input, trials, changes, base, tried, tried.fits ? made : null);
}

function choiceOf(
  input: VisitInput,
  trials: Trials,
  changes: readonly VisitChange[],
  base: Tried,
  tried: Tried,
  plan: PressPlan | null,
): FitChoice {
  let before = base;
  const steps = changes.map((change, i): FitStep => {
    // The last step takes up what planning anew saves beyond striking.
    const after = i === changes.length - 1 ? tried : trials.quick(changes.slice(0, i + 1));
    const step: FitStep = {
      change,
      sheets: trials.sheets(change),
      savedSetUps: before.setUps - after.setUps,
      savedMinutes: Math.round(before.minutes) - Math.round(after.minutes),
      deltaE: Math.round(10 * trials.deltaE(change)) / 10,
    };
    before = after;
    return step;
  });
  return {
    steps,
    runs: runsAfter(input, changes),
    press: pressAfter(changes),
    savedSetUps: base.setUps - tried.setUps,
    savedMinutes: Math.round(base.minutes) - Math.round(tried.minutes),
    daysNeeded: tried.daysNeeded,
    fits: tried.fits,
    plan,
  };
}
