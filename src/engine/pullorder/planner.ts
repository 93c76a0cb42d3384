import { EngineError } from '../base/error.ts';
import { randomFrom } from '../base/random.ts';
import { automataOf, beam, type Meter } from './beam.ts';
import { checkProblem } from './check-problem.ts';
import { printWord } from './cost-of-plan.ts';
import { compile, type Compiled } from './model.ts';
import { forcedCounts } from './multiplicity.ts';
import type { PlanProblem, PullPlan } from './types.ts';

/** Units of work that stand for a millisecond: measured on one 2020s laptop-class core, then held fixed. */
export const UNITS_PER_MS = 8000;

export interface PlanOptions {
  /** Work allowed, in milliseconds of a common machine. Same problem, seed and budget, same plan. */
  budgetMs: number;
  seed: string | number;
  /** A clock, ms. Stops at the budget on slow machines too; the plan then depends on the machine. */
  now?: () => number;
  onProgress?: (plan: PullPlan) => void;
  /** Asked between slices of work; true ends with the best plan so far. */
  shouldStop?: () => boolean;
}

export interface Planner {
  /** Works for about so many units. */
  step(units: number): { best: PullPlan; done: boolean };
}

/**
 * Plans in slices, for a worker that shows the plan as it improves and can be stopped.
 * @throws EngineError as `planPulls`
 */
export function createPlanner(problem: PlanProblem, options: { seed: string | number }): Planner {
  checkProblem(problem);
  const compiled = compile(problem);
  const meter: Meter = { units: 0 };
  const search = run(problem, compiled, String(options.seed), meter);
  let best: PullPlan | null = null;
  let done = false;
  return {
    step(units) {
      const until = meter.units + units;
      do {
        const next = search.next();
        if (next.done) done = true;
        else best = next.value;
      } while (!done && meter.units < until);
      return { best: best!, done };
    },
  };
}

function* run(problem: PlanProblem, compiled: Compiled, seed: string, meter: Meter): Generator<PullPlan, void> {
  const random = randomFrom(`pullorder ${seed}`);
  const { kindModel, screenModel } = compiled;
  const screenCounts = forcedCounts(screenModel.orders, (l) => l, screenModel.letterCount, true);
  const kindCounts = forcedCounts(kindModel.orders, (l) => l, kindModel.letterCount, false);
  const sum = (counts: number[]): number => counts.reduce((a, b) => a + b, 0);
  const mounts = sum(screenCounts);
  const bound = { mounts, setUps: Math.max(mounts, sum(kindCounts)) };
  let below = Infinity;
  let plan: PullPlan | null = null;
  for (let width = 1; width <= 4096; width *= 2) {
    const found = beam(kindModel, automataOf(kindModel), {
      width, below, before: -1, after: -1, reachTenths: 20, noise: 0, random, meter,
    });
    if (found) {
      below = found.cost;
      const { complete: _, ...printed } = printWord(problem, compiled, found.word);
      plan = { ...printed, bound };
    }
    if (!plan) throw new EngineError('pullorder.too-large', 'The pull order needs more set-ups than can be planned: plan fewer recipes at a time.');
    yield plan;
  }
}

/**
 * Plans the order of set-ups for many sheets: fewest mounts, then ink changes, then register moves,
 * then set-ups. A set-up prints, on each sheet, every pull of its kind whose turn has come when it
 * begins.
 * @throws EngineError 'pullorder.input', 'pullorder.overlap', 'pullorder.budget', 'pullorder.too-large'
 */
export function planPulls(problem: PlanProblem, options: PlanOptions): PullPlan {
  const { budgetMs, seed, now, onProgress, shouldStop } = options;
  if (!(budgetMs >= 0)) {
    throw new EngineError('pullorder.budget', `The time to plan in is ${budgetMs} ms: give 0 or more.`, { path: ['budgetMs'] });
  }
  const started = now?.() ?? 0;
  const planner = createPlanner(problem, { seed });
  const slice = 50 * UNITS_PER_MS;
  let left = budgetMs * UNITS_PER_MS;
  let best: PullPlan | null = null;
  for (;;) {
    const result = planner.step(Math.min(slice, left));
    if (result.best !== best) onProgress?.(result.best);
    best = result.best;
    left -= slice;
    if (result.done || left <= 0 || shouldStop?.() || (now && now() - started >= budgetMs)) return best;
  }
}
