import { EngineError } from '../../engine/base/error.ts';
import { measuredRecipes, planRest } from '../../engine/log/rest.ts';
import { compareRests } from '../../engine/log/what-if.ts';
import { adviseOn } from '../../engine/visit/advice/advice.ts';
import { PairMemory } from '../../engine/visit/problem/pair-memory.ts';
import { planVisit, type PressPlan } from '../../engine/visit/visit.ts';
import { whatToDrop } from '../../engine/visit/what-to-drop.ts';
import type { PlanApi, PlanRequest } from '../api/plan-api.ts';
import type { Jobs } from './jobs.ts';

/** Lasts as long as the worker. */
const memory = new PairMemory();

/** Pull orders, which no first print needs, so that their search is loaded when it is asked for. */
export function planJobs(jobs: Jobs): PlanApi {
  return {
    compareRests: ({ job, before, after }, onProgress) => jobs.find(job, compareRests(before, after, memory), onProgress),
    advise({ job, input, plan, edits }, onProgress) {
      let known = plan;
      return jobs.find(job, adviseOn(input, plan, edits), ({ standing, ...step }) => {
        // A plan of a long visit takes a while to cross: it goes once.
        onProgress({ ...step, standing: standing === known ? null : standing });
        known = standing;
      });
    },
    whatToDrop: ({ job, input, plan }, onProgress) => jobs.find(job, whatToDrop(input, plan), onProgress),
    async plan({ job, input, budgetMs }, onBest) {
      let last: PressPlan | null = null;
      await jobs.run(job, planSteps({ input, budgetMs }), (plan) => {
        if (plan === null) return;
        last = plan;
        onBest(plan);
      });
      if (last === null) throw new EngineError('plan.stopped', 'The planning was stopped before it found an order; start it again.');
      return last;
    },
  };
}

/** @yields null while pairs of pulls are measured, then the best order so far */
function* planSteps({ input, budgetMs }: PlanRequest): Generator<PressPlan | null, void> {
  for (const _ of memory.measure(measuredRecipes(input), input.minDeltaE)) yield null;
  yield* 'rest' in input ? planRest(input, budgetMs, memory) : planVisit(input, budgetMs, { memory });
}
