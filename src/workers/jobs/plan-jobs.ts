import { EngineError } from '../../engine/base/error.ts';
import { planRest } from '../../engine/log/rest.ts';
import { adviseOn } from '../../engine/visit/advice/advice.ts';
import { planVisit, type PressPlan } from '../../engine/visit/visit.ts';
import { whatToDrop } from '../../engine/visit/what-to-drop.ts';
import type { PlanApi } from '../api/plan-api.ts';
import type { Jobs } from './jobs.ts';

/** Pull orders, which no first print needs, so that their search is loaded when it is asked for. */
export function planJobs(jobs: Jobs): PlanApi {
  return {
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
      const steps = 'rest' in input ? planRest(input, budgetMs) : planVisit(input, budgetMs);
      await jobs.run(job, steps, (plan) => {
        last = plan;
        onBest(plan);
      });
      if (last === null) throw new EngineError('plan.stopped', 'The planning was stopped before it found an order; start it again.');
      return last;
    },
  };
}
