import { num } from '../base/at.ts';
import { createPlanner, UNITS_PER_MS } from '../pullorder/planner.ts';
import { type Arrangement, arrangeSetUps, changesOnBeds } from '../pullorder/timeline/beds.ts';
import { earliestEnd } from '../pullorder/timeline/earliest-end.ts';
import type { TimelineStart } from '../pullorder/timeline/start-state.ts';
import type { PullPlan } from '../pullorder/types.ts';
import { type InkNeed, type StockNeed, visitInks, visitStocks } from './ink-needs.ts';
import { type SetUpCard, setUpCards } from './set-up-cards.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';
import { visitProblem, type VisitProblem, type VisitRunInput, type VisitSheet } from './visit-problem.ts';
import { type Moment, momentOf, timelineInput, type VisitTimes, visitTimes } from './visit-times.ts';

export type { InkNeed } from './ink-needs.ts';
export type { CardTime, Moment } from './visit-times.ts';

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
  /** No order has fewer; on several beds a frame that stays counts once. */
  bound: { setUps: number; mounts: number };
  /** No order of these pulls is washed up sooner; null while unknown or when a set-up runs past its day, absent in orders kept from before. */
  endsAtLeast?: Moment | null;
  /** Overlapping pairs that may change places, over all recipes. */
  freeSwaps: number;
  /** How many more set-ups the order would need if no pair might change places; null while unknown. */
  savedSetUps: number | null;
  savedMounts: number | null;
  /** True when the search has ended: it found the best there is, or used its time up. */
  done: boolean;
}

/** Arrangements tried between two steps. */
const TRIED_A_STEP = 20;
/** Steps are short, so that a worker can be stopped between two of them. */
const STEP_UNITS = 20 * UNITS_PER_MS;

/** A visit that is planned, and how it stands when its plan begins. */
interface Planned {
  visit: VisitProblem;
  inks: InkNeed[];
  press: VisitFigures;
  start: TimelineStart | undefined;
}

function describe(
  plan: Pick<PullPlan, 'setUps' | 'bound'> & { beds?: number[] },
  { visit, inks, press, start }: Planned,
): Omit<PressPlan, 'savedSetUps' | 'savedMounts' | 'done'> {
  const times = visitTimes(plan, visit, press, start);
  const beds = plan.beds ?? times.times.map(({ bed }) => bed);
  const late = times.problems.some(({ code }) => code === 'visit.long-set-up');
  const input = timelineInput(visit, press, start);
  const arranged = plan.beds !== undefined;
  return {
    ...times,
    sheets: visit.sheets,
    recipes: visit.recipes.map((recipe, r) => ({
      id: recipe.id,
      title: recipe.title,
      sheets: visit.sheets.filter((sheet) => sheet.recipe === r).map((sheet) => sheet.number),
    })),
    cards: setUpCards(plan, visit, beds, start?.onPress),
    inks,
    stocks: visitStocks(visit, inks),
    ...changesOnBeds(plan.setUps, beds, start?.onPress),
    bound: { setUps: plan.bound.setUps, mounts: leastMounts(plan, visit, press, start) },
    endsAtLeast: arranged && !late ? momentOf(earliestEnd(input, plan.bound.mounts)) : null,
    freeSwaps: visit.freeSwaps.reduce((sum, count) => sum + count, 0),
  };
}

/** On one bed what the planner proves; on several each frame may stay where it is. */
function leastMounts({ bound }: Pick<PullPlan, 'bound'>, visit: VisitProblem, press: VisitFigures, start?: TimelineStart): number {
  const there = start?.onPress === undefined ? 0 : 1;
  const frames = new Set(visit.problem.sheets.flatMap((sheet) => sheet.pulls.map((pull) => pull.screen)));
  return Math.max(0, (wholeFigures(press).beds > 1 ? frames.size : bound.mounts) - there);
}

function cost(plan: PullPlan): number[] {
  return [plan.mounts, plan.inkChanges, plan.registerMoves, plan.setUps.length];
}

function better(a: PullPlan, b: PullPlan): boolean {
  const costB = cost(b);
  for (const [i, value] of cost(a).entries()) if (value !== costB[i]) return value < num(costB, i);
  return false;
}

/**
 * Plans a visit in steps, best order first found, then better ones.
 * @param budgetMs work allowed for the order itself; a quarter of it goes to what free swaps
 *   save, and a quarter to sharing it between the beds
 * @param now a clock, ms, for slow machines: planning also ends when twice the budget has gone by
 *   on it; the order then depends on the machine
 * @param startOf how the visit stands when its plan begins; absent = at rest
 * @yields the best order so far, after each step
 * @throws EngineError as `visitProblem` and the planner do
 */
export function* planVisit(
  input: VisitInput,
  budgetMs: number,
  now: () => number = () => 0,
  startOf?: (visit: VisitProblem) => TimelineStart,
): Generator<PressPlan, void> {
  const late = now() + 2 * budgetMs;
  const visit = visitProblem(input.runs, input.minDeltaE);
  const planned: Planned = { visit, inks: visitInks(visit, input.press), press: input.press, start: startOf?.(visit) };
  const allowed = budgetMs * UNITS_PER_MS;
  const search = createPlanner(visit.problem, { seed: input.seed, units: allowed });
  let best: PullPlan | null = null;
  let done = false;
  for (let units = allowed; units > 0 && !done && (best === null || now() <= late); units -= STEP_UNITS) {
    const step = search.step(Math.min(STEP_UNITS, units));
    best = step.best;
    done = step.done;
    yield { ...describe(best, planned), savedSetUps: null, savedMounts: null, done: false };
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
      yield { ...describe(best, planned), savedSetUps: null, savedMounts: null, done: false };
    }
    // An order that obeys more is also an order of the freer problem.
    if (rigid !== null && better(rigid, best)) best = { ...rigid, bound: best.bound };
  }
  const arranged = yield* arrange(best, planned, { seed: input.seed, budgetMs: budgetMs / 4, late: () => now() > late + budgetMs / 2 });
  yield {
    ...describe({ ...arranged, bound: best.bound }, planned),
    savedSetUps: rigid === null ? 0 : rigid.setUps.length - best.setUps.length,
    // On several beds a frame stays, and what the planner counts on one says little.
    savedMounts: rigid === null || wholeFigures(input.press).beds > 1 ? 0 : rigid.mounts - best.mounts,
    done: true,
  };
}

/** Puts an order on the beds, in steps. */
function* arrange(
  best: PullPlan,
  planned: Planned,
  options: { seed: string; budgetMs: number; late: () => boolean },
): Generator<PressPlan, Arrangement> {
  const input = timelineInput(planned.visit, planned.press, planned.start);
  const steps = arrangeSetUps(input, best.setUps, { ...options, enough: earliestEnd(input, best.bound.mounts) });
  const waiting = { ...describe(best, planned), savedSetUps: null, savedMounts: null, done: false };
  for (let tried = 1; ; tried++) {
    const next = steps.next();
    if (next.done === true) return next.value;
    if (tried % TRIED_A_STEP === 0) yield waiting;
  }
}
