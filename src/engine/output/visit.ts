import { createPlanner, UNITS_PER_MS } from '../pullorder/planner.ts';
import type { PullPlan } from '../pullorder/types.ts';
import { type SetUpCard, setUpCards } from './set-up-cards.ts';
import type { VisitFigures } from './visit-figures.ts';
import { type InkNeed, type StockNeed, type VisitTimes, visitInks, visitStocks, visitTimes } from './visit-needs.ts';
import { visitProblem, type VisitProblem, type VisitRunInput, type VisitSheet } from './visit-problem.ts';

export type { CardTime, InkNeed, StockNeed } from './visit-needs.ts';

/** What a visit is planned from. */
export interface VisitInput {
  runs: VisitRunInput[];
  /** Orders that differ by less may change places, ΔE00. */
  minDeltaE: number;
  press: VisitFigures;
  seed: string;
}

/** A pull order as the Press shows and prints it. */
export interface PressPlan extends VisitTimes {
  sheets: VisitSheet[];
  /** Titles of the recipes, by the index that sheets and cards use. */
  recipes: { id: string; title: string; sheets: number[] }[];
  cards: SetUpCard[];
  inks: InkNeed[];
  /** The same ink by stock ink, as it is weighed out. */
  stocks: StockNeed[];
  mounts: number;
  inkChanges: number;
  registerMoves: number;
  /** No order has fewer. */
  bound: { setUps: number; mounts: number };
  /** Overlapping pairs that may change places, over all recipes. */
  freeSwaps: number;
  /** How many more set-ups the order would need if no pair might change places; null while unknown. */
  savedSetUps: number | null;
  savedMounts: number | null;
  /** True when the search has ended: it found the best there is, or used its time up. */
  done: boolean;
}

/** Steps are short, so that a worker can be stopped between two of them. */
const STEP_UNITS = 20 * UNITS_PER_MS;

function describe(
  plan: PullPlan,
  visit: VisitProblem,
  inks: InkNeed[],
  press: VisitFigures,
): Omit<PressPlan, 'savedSetUps' | 'savedMounts' | 'done'> {
  return {
    ...visitTimes(plan, visit, press),
    sheets: visit.sheets,
    recipes: visit.recipes.map((recipe, r) => ({
      id: recipe.id,
      title: recipe.title,
      sheets: visit.sheets.filter((sheet) => sheet.recipe === r).map((sheet) => sheet.number),
    })),
    cards: setUpCards(plan, visit),
    inks,
    stocks: visitStocks(visit, inks),
    mounts: plan.mounts,
    inkChanges: plan.inkChanges,
    registerMoves: plan.registerMoves,
    bound: plan.bound,
    freeSwaps: visit.freeSwaps.reduce((sum, count) => sum + count, 0),
  };
}

function cost(plan: PullPlan): number[] {
  return [plan.mounts, plan.inkChanges, plan.registerMoves, plan.setUps.length];
}

function better(a: PullPlan, b: PullPlan): boolean {
  const costB = cost(b);
  for (const [i, value] of cost(a).entries()) if (value !== costB[i]) return value < costB[i]!;
  return false;
}

/**
 * Plans a visit in steps, best order first found, then better ones.
 * @param budgetMs work allowed for the order itself; a quarter of it goes to what free swaps save
 * @param now a clock, ms, for slow machines: planning also ends when twice the budget has gone by
 *   on it; the order then depends on the machine
 * @yields the best order so far, after each step
 * @throws EngineError as `visitProblem` and the planner do
 */
export function* planVisit(input: VisitInput, budgetMs: number, now: () => number = () => 0): Generator<PressPlan, void> {
  const late = now() + 2 * budgetMs;
  const visit = visitProblem(input.runs, input.minDeltaE);
  const inks = visitInks(visit, input.press);
  const allowed = budgetMs * UNITS_PER_MS;
  const search = createPlanner(visit.problem, { seed: input.seed, units: allowed });
  let best: PullPlan | null = null;
  let done = false;
  for (let units = allowed; units > 0 && !done && (best === null || now() <= late); units -= STEP_UNITS) {
    const step = search.step(Math.min(STEP_UNITS, units));
    best = step.best;
    done = step.done;
    yield { ...describe(best, visit, inks, input.press), savedSetUps: null, savedMounts: null, done: false };
  }
  if (best === null) return;
  let rigid: PullPlan | null = null;
  if (visit.freeSwaps.some((count) => count > 0)) {
    const search = createPlanner(visit.withoutFreeSwaps, { seed: input.seed, units: allowed / 4 });
    let ended = false;
    for (let units = allowed / 4; units > 0 && !ended && (rigid === null || now() <= late + budgetMs / 2); units -= STEP_UNITS) {
      const step = search.step(Math.min(STEP_UNITS, units));
      rigid = step.best;
      ended = step.done;
      yield { ...describe(best, visit, inks, input.press), savedSetUps: null, savedMounts: null, done: false };
    }
    // An order that obeys more is also an order of the freer problem.
    if (rigid !== null && better(rigid, best)) best = { ...rigid, bound: best.bound };
  }
  yield {
    ...describe(best, visit, inks, input.press),
    savedSetUps: rigid === null ? 0 : rigid.setUps.length - best.setUps.length,
    savedMounts: rigid === null ? 0 : rigid.mounts - best.mounts,
    done: true,
  };
}
