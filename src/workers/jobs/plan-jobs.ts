import { EngineError } from '../../engine/base/error.ts';
import { compareRests } from '../../engine/log/now/what-if.ts';
import { measuredRecipes, planRest } from '../../engine/log/rest.ts';
import { adviseOn } from '../../engine/visit/advice/advice.ts';
import { PairMemory } from '../../engine/visit/problem/pair-memory.ts';
import { planVisit, type PressPlan } from '../../engine/visit/visit.ts';
import { whatToDrop } from '../../engine/visit/what-to-drop.ts';
import type { PlanApi, PlanRequest } from '../api/plan-api.ts';
import { say } from '../words/en/jobs.ts';
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
    async plan({ job, input, budgetMs }, onProgress) {
      let last: PressPlan | null = null;
      let known = '';
      let measured = -1;
      await jobs.run(job, planSteps({ input, budgetMs }), (plan) => {
        if (typeof plan === 'number') {
          const percent = Math.floor(100 * plan);
          if (percent > measured) onProgress({ plan: null, worked: 0, measured: percent / 100 });
          measured = percent;
          return;
        }
        last = plan;
        const told = gistOf(plan);
        onProgress({ plan: told === known ? null : plan, worked: plan.worked ?? 0, measured: 1 });
        known = told;
      });
      if (last === null) throw new EngineError('plan.stopped', say.planningWasStopped);
      return last;
    },
  };
}

/** What a reader of a plan that is looked for would see change. */
function gistOf({ cards, mounts, inkChanges, registerMoves, ends, bound, savedSetUps }: PressPlan): string {
  return [cards.length, mounts, inkChanges, registerMoves, ends.day, ends.minute, bound.setUps, bound.mounts, savedSetUps].join();
}

/** @yields the share of the pulls that are measured, 0–1, then the best order so far */
function* planSteps({ input, budgetMs }: PlanRequest): Generator<PressPlan | number, void> {
  yield* memory.measure(measuredRecipes(input), input.minDeltaE);
  yield* 'rest' in input ? planRest(input, budgetMs, memory) : planVisit(input, budgetMs, { memory });
}
