import { defined, entryAt, num } from '../base/at.ts';
import type { PlanSheet, SetUp } from '../pullorder/types.ts';
import { setUpOf } from './problem/order-at-hand.ts';
import { leftOf, type VisitChange } from './visit-changes.ts';
import type { VisitProblem } from './visit-problem.ts';
import type { PressPlan, VisitInput } from './visit.ts';

/** A visit with something struck out, and where its sheets and pulls were before. */
export interface Smaller {
  visit: VisitProblem;
  /** By sheet of the whole visit: its index now, −1 when it is gone. */
  sheetAt: number[];
  /** By recipe and pull of the whole visit: its position now, −1 when it is gone. */
  pullAt: number[][];
}

/**
 * Strikes changes out of a problem. Overlaps stay as they are: over fewer grounds two films differ
 * no more than before, so an order of what is left is never wrong, at most too strict.
 */
export function smaller(whole: VisitProblem, input: VisitInput, changes: readonly VisitChange[]): Smaller {
  const used = input.runs.flatMap((run, at) => (run.sheets > 0 ? [at] : []));
  const left = used.map((run) => leftOf(changes, run));
  const pullAt = whole.recipes.map((recipe, r) => {
    let next = 0;
    return recipe.pulls.map((pull) => (entryAt(left, r).screens.has(pull.screen) ? -1 : next++));
  });
  const room = whole.recipes.map((_, r) => {
    const count = whole.sheets.filter((sheet) => sheet.recipe === r).length;
    return entryAt(left, r).gone ? 0 : count - entryAt(left, r).fewer;
  });
  const sheetAt: number[] = [];
  const sheets: VisitProblem['sheets'] = [];
  const planSheets: PlanSheet[] = [];
  const renamed = (pairs: readonly (readonly [number, number])[], r: number): [number, number][] =>
    pairs.map(([a, b]): [number, number] => [num(entryAt(pullAt, r), a), num(entryAt(pullAt, r), b)]).filter(([a, b]) => a >= 0 && b >= 0);
  const made = new Map<number, PlanSheet>();
  for (const [s, sheet] of whole.sheets.entries()) {
    const r = sheet.recipe;
    if (num(room, r) <= 0) {
      sheetAt.push(-1);
      continue;
    }
    room[r] = num(room, r) - 1;
    sheetAt.push(sheets.length);
    sheets.push(sheet);
    let plan = made.get(r);
    if (plan === undefined) {
      const before = entryAt(whole.problem.sheets, s);
      plan = { pulls: before.pulls.filter((_, p) => num(entryAt(pullAt, r), p) >= 0), overlaps: renamed(before.overlaps, r) };
      made.set(r, plan);
    }
    planSheets.push(plan);
  }
  const drying = whole.drying.map((pairs, r) => renamed(pairs, r));
  return { visit: { ...whole, problem: { sheets: planSheets }, sheets, drying }, sheetAt, pullAt };
}

/** The plan as it stands, on its beds, without what is struck: an order of the smaller visit that needs no search. */
export function struck(plan: PressPlan, { visit, sheetAt, pullAt }: Smaller): { setUps: SetUp[]; beds: number[] } {
  const place = new Map(plan.sheets.map((sheet, s) => [sheet.number, s]));
  const setUps: SetUp[] = [];
  const beds: number[] = [];
  for (const [i, card] of plan.cards.entries()) {
    const pulls = card.states.flatMap((state) =>
      state.sheets.flatMap((number) =>
        state.prints.map((p): [number, number] => [num(sheetAt, defined(place.get(number))), num(entryAt(pullAt, state.recipe), p)]),
      ),
    );
    const kept = pulls.filter(([sheet, pull]) => sheet >= 0 && pull >= 0);
    if (kept.length === 0) continue;
    setUps.push(setUpOf(visit.problem, kept));
    beds.push(entryAt(plan.times, i).bed);
  }
  return { setUps, beds };
}
