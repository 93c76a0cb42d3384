import { defined, entryAt, i32 } from '../../base/at.ts';
import type { PlanProblem, SetUp } from '../../pullorder/types.ts';
import type { PressPlan } from '../press-plan.ts';
import type { VisitProblem } from '../visit-problem.ts';
import { filled, kindOf } from './fill-order.ts';

/** An order that exists, in the planner's words, with the bed of each set-up. */
export interface OrderAtHand {
  setUps: SetUp[];
  beds: number[];
  /** Whether it prints every pull once and in turn; one that does not can only be begun with. */
  sound: boolean;
}

/** Finds the sheet and pull of a problem that a sheet's number and a position in its recipe mean; null when it is no longer to be printed. */
export type PullFinder = (number: number, recipe: number, at: number) => [number, number] | null;

/**
 * The order of an earlier plan with what is finished struck out, and what it lacks put where it fits.
 * @param find absent = the plan is of the same visit
 */
export function orderAtHand(plan: PressPlan, visit: VisitProblem, find: PullFinder = sameVisit(visit)): OrderAtHand {
  const setUps: SetUp[] = [];
  const beds: number[] = [];
  for (const [i, card] of plan.cards.entries()) {
    const pulls = card.states.flatMap(({ recipe, sheets, prints }) =>
      sheets.flatMap((number) => prints.flatMap((at) => [find(number, recipe, at)].filter((found) => found !== null))),
    );
    for (const alike of byKind(visit.problem, pulls)) {
      setUps.push(setUpOf(visit.problem, alike));
      beds.push(entryAt(plan.times, i).bed);
    }
  }
  const order = filled(visit.problem, { setUps, beds });
  return { ...order, sound: isSound(visit.problem, order.setUps) };
}

/** Offsets that were one lay may be two by now: then a set-up is several in a row. */
function byKind(problem: PlanProblem, pulls: readonly [number, number][]): [number, number][][] {
  const kinds = new Map<string, [number, number][]>();
  for (const pull of pulls) {
    const key = kindOf(setUpOf(problem, [pull]));
    const known = kinds.get(key);
    if (known === undefined) kinds.set(key, [pull]);
    else known.push(pull);
  }
  return [...kinds.values()];
}

function sameVisit({ sheets, recipes }: VisitProblem): PullFinder {
  const place = new Map(sheets.map((sheet, s) => [sheet.number, s]));
  return (number, recipe, at) => {
    const s = place.get(number);
    if (s === undefined || entryAt(sheets, s).recipe !== recipe || at >= entryAt(recipes, recipe).pulls.length) return null;
    return [s, at];
  };
}

/** A set-up that prints some pulls, all of one kind. */
export function setUpOf(problem: PlanProblem, pulls: [number, number][]): SetUp {
  const [s, p] = entryAt(pulls, 0);
  const { screen, ink, offset = '' } = entryAt(entryAt(problem.sheets, s).pulls, p);
  return { screen, ink, offset, pulls };
}

/** Whether set-ups print each pull of a problem once, by its kind and after all that must lie under it. */
function isSound(problem: PlanProblem, setUps: readonly SetUp[]): boolean {
  const at = problem.sheets.map((sheet) => new Int32Array(sheet.pulls.length).fill(-1));
  for (const [i, setUp] of setUps.entries()) {
    for (const [s, p] of setUp.pulls) {
      const pull = entryAt(entryAt(problem.sheets, s).pulls, p);
      const ofKind = pull.screen === setUp.screen && pull.ink === setUp.ink && (pull.offset ?? '') === setUp.offset;
      if (!ofKind || i32(entryAt(at, s), p) >= 0) return false;
      entryAt(at, s)[p] = i;
    }
  }
  return problem.sheets.every(({ overlaps }, s) => {
    const own = defined(at[s]);
    return own.every((i) => i >= 0) && overlaps.every(([a, b]) => i32(own, a) < i32(own, b));
  });
}
