import { fitsIn, type Trials, type Tried } from './trials.ts';
import { pressAfter, runsAfter, type VisitChange } from './visit-changes.ts';
import type { VisitFigures } from './visit-figures.ts';
import type { VisitRunInput } from './visit-problem.ts';
import { workMinutes } from './visit-times.ts';
import { planVisit, type PressPlan } from './visit.ts';

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

/** Work for the plan that proves that a choice fits, ms. */
const PROOF_MS = 300;

/**
 * Plans the changed visit as it will be printed.
 * @yields the share of all work that is done, as given
 */
export function* proven(trials: Trials, changes: readonly VisitChange[], share: number): Generator<number, FitChoice> {
  const { input, plan } = trials;
  const runs = runsAfter(input, changes);
  let last: PressPlan | null = null;
  // The order at hand is of another visit than this.
  const changed = { ...input, runs, press: { ...input.press, ...pressAfter(changes) }, atHand: undefined, longer: undefined };
  for (const step of planVisit(changed, PROOF_MS)) {
    last = step;
    yield share;
  }
  const made = last ?? plan;
  const tried: Tried = { setUps: made.cards.length, minutes: workMinutes(made), daysNeeded: made.daysNeeded, fits: fitsIn(made) };
  return choiceOf(trials, changes, tried, tried.fits ? made : null);
}

/**
 * What a list of changes brings, step by step.
 * @param tried what they bring together
 * @param plan the visit as it is then planned, when it fits
 */
export function choiceOf(trials: Trials, changes: readonly VisitChange[], tried: Tried, plan: PressPlan | null): FitChoice {
  const { input, base } = trials;
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
