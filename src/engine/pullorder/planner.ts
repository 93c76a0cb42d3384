import { defined } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/pullorder/pullorder.ts';
import { checkProblem } from './check-problem.ts';
import { compile, type Meter } from './model.ts';
import { printerOf } from './print-word.ts';
import { lettersOf } from './search/from-order.ts';
import type { SearchState } from './search/search.ts';
import { inStages } from './search/stages.ts';
import type { PlanProblem, PlanPull, PullPlan } from './types.ts';

/** Units of work that stand for a millisecond: measured on one 2020s laptop-class core, then held fixed. */
export const UNITS_PER_MS = 10_000;

/** How long and with what luck a pull order is looked for. */
export interface PlanOptions {
  /** Work allowed, in milliseconds of a common machine. Same problem, seed and budget, same plan; from 2000 on, never a worse one for more. */
  budgetMs: number;
  seed: string | number;
  /** A clock, ms. Stops at the budget on slow machines too; the plan then depends on the machine. */
  now?: () => number;
  onProgress?: (plan: PullPlan) => void;
  /** Asked between slices of work; true ends with the best plan so far. */
  shouldStop?: () => boolean;
}

/** A search for a pull order that goes on in steps. */
export interface Planner {
  /** Works for about so many units; `done` when the plan is shown to be a cheapest one. */
  step(units: number): { best: PullPlan; done: boolean };
  /** Units of work done so far; a step may do a little more than it was given. */
  readonly spent: number;
}

/** What a search that goes on in steps begins with. */
interface PlannerOptions {
  seed: string | number;
  /** The work that will be given in all, when known; up to 2 s it shapes the search. */
  units?: number;
  /** The set-ups of an order at hand, in sequence: the search begins with it and gives none that costs more. */
  from?: readonly PlanPull[] | undefined;
}

/**
 * Plans in slices, for a worker that shows the plan as it improves and can be stopped.
 * @throws EngineError as `planPulls`
 */
export function createPlanner(problem: PlanProblem, options: PlannerOptions): Planner {
  checkProblem(problem);
  const compiled = compile(problem);
  const print = printerOf(problem, compiled);
  const meter: Meter = { units: 0 };
  const from = lettersOf(options.from ?? [], compiled.names);
  const stages = inStages(compiled, { seed: options.seed, meter, from, units: options.units });
  let soFar: SearchState | null = null;
  let printed: { word: number[]; plan: Omit<PullPlan, 'bound'> } | null = null;
  let best: PullPlan | null = null;
  let done = false;
  return {
    get spent() {
      return meter.units;
    },
    step(units) {
      const until = meter.units + units;
      do {
        const next = stages.next();
        if (next.done) done = true;
        else soFar = next.value;
      } while (!done && meter.units < until);
      const { word, bound } = defined(soFar);
      if (printed?.word !== word) {
        printed = { word, plan: print(word) };
        best = null;
      }
      if (best?.bound.mounts !== bound.mounts || best.bound.setUps !== bound.setUps) {
        best = { ...printed.plan, bound };
      }
      return { best: defined(best), done };
    },
  };
}

/**
 * Plans the order of set-ups for many sheets: fewest mounts, then ink changes, then changes of offset,
 * then set-ups. A set-up prints, on each sheet, every pull of its kind whose turn has come when it
 * begins.
 * @throws EngineError 'pullorder.input', 'pullorder.overlap', 'pullorder.budget', 'pullorder.too-large'
 */
export function planPulls(problem: PlanProblem, options: PlanOptions): PullPlan {
  const { budgetMs, seed, now, onProgress, shouldStop } = (options ?? {}) as PlanOptions;
  if (!(typeof budgetMs === 'number' && budgetMs >= 0 && budgetMs < Infinity)) {
    throw new EngineError('pullorder.budget', say.timeToPlanIn(String(budgetMs)), {
      path: ['budgetMs'],
    });
  }
  if (typeof seed !== 'string' && typeof seed !== 'number') {
    throw new EngineError('pullorder.seed', say.seedIsGiveNumber(String(seed)), { path: ['seed'] });
  }
  const started = now?.() ?? 0;
  const planner = createPlanner(problem, { seed, units: budgetMs * UNITS_PER_MS });
  const slice = 50 * UNITS_PER_MS;
  const budget = budgetMs * UNITS_PER_MS;
  let best: PullPlan | null = null;
  for (;;) {
    const result = planner.step(Math.min(slice, budget - planner.spent));
    if (result.best !== best) onProgress?.(result.best);
    best = result.best;
    if (result.done || planner.spent >= budget || shouldStop?.() || (now && now() - started >= budgetMs)) return best;
  }
}
