import { fitTargetSteps } from '../../engine/ink/fit/fit-target.ts';
import { matchInkSteps } from '../../engine/ink/mix/match.ts';
import { driftedRecipes } from '../../engine/recipe/drifted.ts';
import type { InkApi } from '../api/ink-api.ts';
import type { Jobs } from './jobs.ts';

/** Work on inks that no first print needs, so that it is loaded when it is asked for. */
export function inkJobs(jobs: Jobs): Omit<InkApi, 'inkCurves'> {
  return {
    matchInk: ({ job, target, stocks, options }, onProgress) => jobs.find(job, matchInkSteps(target, stocks, options), onProgress),
    driftedRecipes: async (recipes, ink, surface) =>
      driftedRecipes(recipes, ink, surface).map(({ recipe, ...figures }) => ({ ...figures, recipe: recipe.id })),
    fitTarget: ({ job, ...input }, onProgress) => jobs.find(job, fitTargetSteps(input), onProgress),
  };
}
