import { num } from '../base/at.ts';
import { type Arrangement, arrangeSetUps } from '../pullorder/beds/arrange.ts';
import { createPlanner, UNITS_PER_MS } from '../pullorder/planner.ts';
import { earliestEnd } from '../pullorder/timeline/earliest-end.ts';
import type { TimelineStart } from '../pullorder/timeline/start-state.ts';
import type { PlanPull, PlanProblem, PullPlan } from '../pullorder/types.ts';
import { Offer } from './offer.ts';
import type { Ordered, Planned, PressPlan } from './press-plan.ts';
import { orderAtHand, type PullFinder } from './problem/order-at-hand.ts';
import type { PairMemory } from './problem/pair-memory.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';
import { visitProblem, type VisitProblem, type VisitRunInput } from './visit-problem.ts';
import { timelineInput } from './visit-times.ts';

export type { InkNeed } from './ink-needs.ts';
export type { PressPlan } from './press-plan.ts';
export type { CardTime, Moment } from './visit-times.ts';

/** What a visit is planned from. */
export interface VisitInput {
  runs: VisitRunInput[];
  /** Orders that differ by less may change places, ΔE00. */
  minDeltaE: number;
  press: VisitFigures;
  seed: string;
  /** Whether each set-up is first pulled on one test sheet of the visit, or the number that it has; absent = no. */
  testSheet?: boolean | number | undefined;
  /** The order at hand, to be bettered; absent = none yet. */
  atHand?: PressPlan | undefined;
  /** How often the search for it was made longer; absent = 0. */
  longer?: number | undefined;
}

/** How a visit is planned that is under way. */
export interface PlanVisitOptions {
  /** How the visit stands when its plan begins; absent = at rest. */
  startOf?: (visit: VisitProblem) => TimelineStart;
  /** Finds what is left of the order at hand; absent = all of it. */
  find?: (visit: VisitProblem) => PullFinder;
  /** Pairs of pulls that were measured before; absent = none. */
  memory?: PairMemory | undefined;
}

/** Work on an order, on what free swaps are worth and on putting it on the beds, by the work that is allowed for an order. */
const ONE_BED = { search: 1, rigid: 0.25, beds: 0.25 };
/** On several beds the order of one is no more than a beginning. */
const MORE_BEDS = { search: 0.3, rigid: 0, beds: 1.2 };
/** Reports of the search over beds between two steps. */
const REPORTS_A_STEP = 4;
/** Steps are short, so that a worker can be stopped between two of them. */
const STEP_UNITS = 20 * UNITS_PER_MS;

function better(a: PullPlan, b: PullPlan): boolean {
  const cost = (plan: PullPlan): number[] => [plan.mounts, plan.inkChanges, plan.registerMoves, plan.setUps.length];
  const costB = cost(b);
  for (const [i, value] of cost(a).entries()) if (value !== costB[i]) return value < num(costB, i);
  return false;
}

/**
 * Plans a visit in steps, best order first found, then better ones. The plan depends on the input
 * and the work alone, so every machine makes the same. Where there is an order at hand, the search
 * begins with it, and what is given is never worse.
 * @param budgetMs work allowed for the order itself, ms of a common machine; half as much goes to what free
 *   swaps are worth and to putting it on the beds. On several beds most of all goes to the latter
 * @yields the best order so far, after each step
 * @throws EngineError as `visitProblem` and the planner do
 */
export function* planVisit(
  input: VisitInput,
  budgetMs: number,
  { startOf, find, memory }: PlanVisitOptions = {},
): Generator<PressPlan, void> {
  const { press, minDeltaE, testSheet, atHand: earlier, longer = 0 } = input;
  const visit = visitProblem(input.runs, { minDeltaE, registrationMm: press.registrationMm, testSheet, memory });
  const planned: Planned = { visit, press, start: startOf?.(visit) };
  const atHand = earlier === undefined ? null : orderAtHand(earlier, visit, find?.(visit));
  const offer = new Offer(planned, atHand, longer > 0 && earlier !== undefined ? earlier.bound : { setUps: 0, mounts: 0 });
  const seed = longer > 0 ? `${input.seed} longer ${longer}` : input.seed;
  const going = { savedSetUps: null, savedMounts: null, done: false };
  const beds = wholeFigures(press).beds;
  const work = beds > 1 ? MORE_BEDS : ONE_BED;
  const all = work.search + work.rigid + work.beds;
  let best: PullPlan | null = null;
  for (const { found, share } of searched(visit.problem, work.search * budgetMs, seed, atHand?.setUps)) {
    best = found;
    yield { ...offer.of(best, best.bound), ...going, worked: (work.search / all) * share };
  }
  if (best === null) return;
  let rigid: PullPlan | null = null;
  if (work.rigid > 0 && visit.freeSwaps.some((count) => count > 0)) {
    for (const { found, share } of searched(visit.withoutFreeSwaps, work.rigid * budgetMs, seed)) {
      rigid = found;
      yield { ...offer.of(best, best.bound), ...going, worked: (work.search + work.rigid * share) / all };
    }
    // An order that obeys more is also an order of the freer problem.
    if (rigid !== null && better(rigid, best)) best = { ...rigid, bound: best.bound };
  }
  const arranging = { seed, budgetMs: work.beds * budgetMs, bound: best.bound, from: (work.search + work.rigid) / all };
  offer.of(best, best.bound);
  // On several beds the search is led by other things than what is offered.
  const first = beds === 1 ? offer.best(best) : best;
  let plan = offer.of(yield* arrange(first, planned, offer, arranging), best.bound);
  // On several beds the order at hand is among those that were begun with.
  if (beds === 1 && plan.kept === true && offer.held !== null)
    plan = offer.of(yield* arrange(offer.held, planned, offer, arranging), best.bound);
  yield {
    ...plan,
    // Only what is proven: two searches that ended early say nothing of what free swaps are worth.
    savedSetUps: Math.max(0, (rigid?.bound.setUps ?? 0) - plan.cards.length),
    // On several beds a frame stays, and what the planner counts on one says little.
    savedMounts: beds > 1 ? 0 : Math.max(0, (rigid?.bound.mounts ?? 0) - plan.mounts),
    worked: 1,
    done: true,
  };
}

/** A search of so much work, step by step; at least one. */
function* searched(
  problem: PlanProblem,
  budgetMs: number,
  seed: string,
  from?: readonly PlanPull[],
): Generator<{ found: PullPlan; share: number }, void> {
  const allowed = budgetMs * UNITS_PER_MS;
  const search = createPlanner(problem, { seed, units: allowed, from });
  for (let units = allowed, done = false; units > 0 && !done; units -= STEP_UNITS) {
    const step = search.step(Math.min(STEP_UNITS, units));
    done = step.done;
    yield { found: step.best, share: done ? 1 : Math.min(1, 1 - (units - STEP_UNITS) / allowed) };
  }
}

/** Puts an order on the beds, in steps. @param from the share of all work that is done before */
function* arrange(
  order: Ordered,
  planned: Planned,
  offer: Offer,
  { bound, from, ...options }: { seed: string; budgetMs: number; bound: PullPlan['bound']; from: number },
): Generator<PressPlan, Arrangement> {
  const input = timelineInput(planned.visit, planned.press, planned.start);
  const enough = earliestEnd(input, bound.mounts).minute;
  const steps = arrangeSetUps(input, order.setUps, { ...options, beds: order.beds, enough, other: offer.held });
  const waiting = { savedSetUps: null, savedMounts: null, done: false };
  for (let reports = 1; ; reports++) {
    const next = steps.next();
    if (next.done === true) return next.value;
    if (reports % REPORTS_A_STEP === 0) yield { ...offer.of(order, bound), ...waiting, worked: from + (1 - from) * next.value };
  }
}
