import { createPlanner, UNITS_PER_MS } from '../pullorder/planner.ts';
import type { PlanSheet, SetUp } from '../pullorder/types.ts';
import type { Recipe } from '../recipe/types.ts';
import { changeOfLeavingOut, recipeWithout } from './leave-out.ts';
import type { PressPlan, VisitInput } from './visit.ts';
import type { VisitFigures } from './visit-figures.ts';
import { visitTimes, type VisitTimes } from './visit-needs.ts';
import { layText, visitProblem, type VisitProblem, type VisitRunInput } from './visit-problem.ts';

/** A change to a visit that does not fit. */
export type VisitChange =
  | { kind: 'screen'; run: number; screen: string }
  | { kind: 'recipe'; run: number }
  | { kind: 'sheets'; run: number; fewer: number }
  | { kind: 'days'; days: number }
  | { kind: 'hours'; hoursPerDay: number };

/** What a change to a visit would bring. */
export interface FitChoice {
  change: VisitChange;
  /** What the visit then prints; for a screen, with the recipe made for it. */
  runs: VisitRunInput[];
  press: Partial<VisitFigures>;
  /** Numbers of the sheets that it touches; empty when only time is added. */
  sheets: number[];
  savedSetUps: number;
  savedMinutes: number;
  daysNeeded: number;
  fits: boolean;
  /** Mean ΔE00 over the sheets that it touches; 0 when only time is added. */
  deltaE: number;
}

/** Work for the order of one candidate, ms. */
const BUDGET_MS = 60;
/** Choices given at most that take something away. */
const MOST = 5;

/** Minutes that beds are busy or waiting, lunch left out. */
export function workMinutes({ parts, clock }: Pick<VisitTimes, 'parts' | 'clock'>): number {
  const from = clock.lunch?.fromMinute ?? 0;
  const to = from + (clock.lunch?.minutes ?? 0);
  return parts.reduce((sum, { fromMinute, toMinute }) => {
    const lunch = Math.max(0, Math.min(toMinute, to) - Math.max(fromMinute, from));
    return sum + toMinute - fromMinute - lunch;
  }, 0);
}

function fitsIn(times: VisitTimes): boolean {
  return times.times.every((time) => time.fits);
}

function changesOf(input: VisitInput, plan: PressPlan): VisitChange[] {
  const changes: VisitChange[] = [];
  const runs = input.runs.map((run, at) => ({ ...run, at })).filter((run) => run.sheets > 0);
  for (const { recipe, sheets, at } of runs) {
    const screens = new Set(recipe.pulls.map((pull) => pull.screen));
    if (screens.size > 1) for (const screen of screens) changes.push({ kind: 'screen', run: at, screen });
    if (runs.length > 1) changes.push({ kind: 'recipe', run: at });
    for (const share of [0.25, 0.5]) {
      const fewer = Math.round(sheets * share);
      if (fewer > 0 && fewer < sheets && !changes.some((c) => c.kind === 'sheets' && c.run === at && c.fewer === fewer)) {
        changes.push({ kind: 'sheets', run: at, fewer });
      }
    }
  }
  if (plan.daysNeeded > input.press.days) changes.push({ kind: 'days', days: plan.daysNeeded });
  for (const more of [1, 2, 4]) {
    if (input.press.hoursPerDay + more <= 16) changes.push({ kind: 'hours', hoursPerDay: input.press.hoursPerDay + more });
  }
  return changes;
}

function runsAfter(input: VisitInput, change: VisitChange): VisitRunInput[] {
  return input.runs.flatMap((run, at): VisitRunInput[] => {
    if (!('run' in change) || change.run !== at) return [run];
    if (change.kind === 'recipe') return [];
    if (change.kind === 'sheets') return [{ ...run, sheets: run.sheets - change.fewer }];
    return [{ ...run, recipe: recipeWithout(run.recipe, change.screen, `${run.recipe.id}-without-${change.screen}`) }];
  });
}

/** A visit with something struck out, and where its sheets and pulls were before. */
interface Smaller {
  visit: VisitProblem;
  /** By sheet of the whole visit: its index now, −1 when it is gone. */
  sheetAt: number[];
  /** By recipe and pull of the whole visit: its position now, −1 when it is gone. */
  pullAt: number[][];
}

/**
 * Strikes a change out of a problem. Overlaps stay as they are: over fewer grounds two films differ
 * no more than before, so an order of what is left is never wrong, at most too strict.
 */
function smaller(whole: VisitProblem, input: VisitInput, change: VisitChange): Smaller {
  const used = input.runs.flatMap((run, at) => (run.sheets > 0 ? [at] : []));
  const touched = 'run' in change ? used.indexOf(change.run) : -1;
  const pullAt = whole.recipes.map((recipe, r) => {
    let next = 0;
    return recipe.pulls.map((pull) => (r === touched && change.kind === 'screen' && pull.screen === change.screen ? -1 : next++));
  });
  const counts = whole.recipes.map((_, r) => whole.sheets.filter((sheet) => sheet.recipe === r).length);
  const left = counts.map((count, r) => (r !== touched ? count : change.kind === 'recipe' ? 0 : change.kind === 'sheets' ? count - change.fewer : count));
  const taken = counts.map(() => 0);
  const sheetAt: number[] = [];
  const sheets: VisitProblem['sheets'] = [];
  const planSheets: PlanSheet[] = [];
  const renamed = (pairs: readonly (readonly [number, number])[], r: number): [number, number][] =>
    pairs.map(([a, b]): [number, number] => [pullAt[r]![a]!, pullAt[r]![b]!]).filter(([a, b]) => a >= 0 && b >= 0);
  const made = new Map<number, PlanSheet>();
  for (const [s, sheet] of whole.sheets.entries()) {
    const r = sheet.recipe;
    if (taken[r]! >= left[r]!) {
      sheetAt.push(-1);
      continue;
    }
    taken[r]!++;
    sheetAt.push(sheets.length);
    sheets.push(sheet);
    let plan = made.get(r);
    if (plan === undefined) {
      const before = whole.problem.sheets[s]!;
      plan = { pulls: before.pulls.filter((_, p) => pullAt[r]![p]! >= 0), overlaps: renamed(before.overlaps, r) };
      made.set(r, plan);
    }
    planSheets.push(plan);
  }
  const drying = whole.drying.map((pairs, r) => renamed(pairs, r));
  return { visit: { ...whole, problem: { sheets: planSheets }, sheets, drying }, sheetAt, pullAt };
}

/** The plan as it stands, without what is struck: an order of the smaller visit that needs no search. */
function struck(plan: PressPlan, { sheetAt, pullAt }: Smaller): SetUp[] {
  const place = new Map(plan.sheets.map((sheet, s) => [sheet.number, s]));
  return plan.cards.flatMap((card): SetUp[] => {
    const pulls = card.states.flatMap((state) =>
      state.sheets.flatMap((number) =>
        state.prints.map((p): [number, number] => [sheetAt[place.get(number)!]!, pullAt[state.recipe]![p]!]),
      ),
    );
    const kept = pulls.filter(([sheet, pull]) => sheet >= 0 && pull >= 0);
    return kept.length === 0 ? [] : [{ screen: card.screen.key, ink: card.ink.key, offset: layText(card), pulls: kept }];
  });
}

/**
 * What to leave out, or how much longer to stay, so that a visit fits: screens of a recipe, whole
 * recipes, a quarter or half of its sheets, more days, longer days. Each is tried on the order at
 * hand with the rest struck and on a short search of its own, and the shorter counts.
 * @param plan an order of `input` that does not fit
 * @yields the share that is done, 0–1
 * @returns first what fits; what takes something away by minutes saved per harm (mean ΔE00 × area
 *   × sheets), at most five; then the least more time that fits. Changes that save nothing are left out
 */
export function* whatToDrop(input: VisitInput, plan: PressPlan): Generator<number, FitChoice[]> {
  const base = workMinutes(plan);
  const whole = visitProblem(input.runs, input.minDeltaE);
  const changes = changesOf(input, plan);
  const found: { choice: FitChoice; worth: number }[] = [];
  const harms = new Map<number, Map<string, number>>();
  for (const [i, change] of changes.entries()) {
    const press: Partial<VisitFigures> =
      change.kind === 'days' ? { days: change.days } : change.kind === 'hours' ? { hoursPerDay: change.hoursPerDay } : {};
    const runs = runsAfter(input, change);
    const less = smaller(whole, input, change);
    const after = less.visit;
    const figures = { ...input.press, ...press };
    let setUps = struck(plan, less);
    let times = visitTimes({ setUps }, after, figures);
    if ('run' in change) {
      const { best } = createPlanner(after.problem, { seed: input.seed, units: BUDGET_MS * UNITS_PER_MS }).step(BUDGET_MS * UNITS_PER_MS);
      const other = visitTimes(best, after, figures);
      if (workMinutes(other) < workMinutes(times)) {
        times = other;
        setUps = best.setUps;
      }
    }
    const saved = base - workMinutes(times);
    const fits = fitsIn(times);
    if (fits || ('run' in change && saved >= 1)) {
      const recipe = 'run' in change ? input.runs[change.run]!.recipe : null;
      const sheets = 'run' in change ? sheetsOf(plan, input, change) : [];
      const deltaE = recipe === null || !('run' in change) ? 0 : harmOf(harms, change, recipe);
      const areaM2 = recipe === null ? 0 : (recipe.paper.widthMm * recipe.paper.heightMm) / 1e6;
      found.push({
        choice: {
          change,
          runs,
          press,
          sheets,
          savedSetUps: plan.cards.length - setUps.length,
          savedMinutes: Math.round(saved),
          daysNeeded: times.daysNeeded,
          fits,
          deltaE: Math.round(deltaE * 10) / 10,
        },
        worth: saved / Math.max(1e-6, deltaE * areaM2 * sheets.length),
      });
    }
    yield (i + 1) / changes.length;
  }
  const taking = found
    .filter(({ choice }) => 'run' in choice.change)
    .sort((a, b) => Number(b.choice.fits) - Number(a.choice.fits) || b.worth - a.worth)
    .slice(0, MOST);
  const longer = found.filter(({ choice }) => choice.change.kind === 'days');
  const hours = found.filter(({ choice }) => choice.change.kind === 'hours').slice(0, 1);
  return [...taking, ...hours, ...longer].map(({ choice }) => choice);
}

function sheetsOf(plan: PressPlan, input: VisitInput, change: Extract<VisitChange, { run: number }>): number[] {
  const r = input.runs.slice(0, change.run).filter((run) => run.sheets > 0).length;
  const own = plan.sheets.filter((sheet) => sheet.recipe === r).map((sheet) => sheet.number);
  return change.kind === 'sheets' ? own.slice(-change.fewer) : own;
}

function harmOf(known: Map<number, Map<string, number>>, change: Extract<VisitChange, { run: number }>, recipe: Recipe): number {
  let ofRun = known.get(change.run);
  if (ofRun === undefined) {
    const screens = [...new Set(recipe.pulls.map((pull) => pull.screen))];
    const kept = [...screens.map((screen) => recipe.pulls.filter((pull) => pull.screen !== screen)), []];
    const deltas = changeOfLeavingOut(recipe, kept);
    ofRun = new Map([...screens, ''].map((screen, i) => [screen, deltas[i]!]));
    known.set(change.run, ofRun);
  }
  return ofRun.get(change.kind === 'screen' ? change.screen : '')!;
}
