import { entryAt } from '../../engine/base/at.ts';
import { sectionRecipes } from '../../engine/recipe/section-recipes.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { Job } from '../api/request.ts';
import type { SectionsRequest } from '../api/stencil-api.ts';
import type { Jobs } from './jobs.ts';

/** Hundreds of steps, of which a bar shows a hundred. */
const LEAST_PROGRESS = 0.01;

/**
 * Cuts a print into sections, a step at a time.
 * @param onProgress gets the share that is done, 0–1
 * @returns null when the job was cancelled
 * @throws EngineError as `sectionRecipes`
 */
export function runSections(
  jobs: Jobs,
  { job, recipe, cuts, ids }: Job<SectionsRequest>,
  onProgress: (share: number) => void,
): Promise<Recipe[] | null> {
  let told = 0;
  return jobs.find(
    job,
    sectionRecipes(recipe, cuts, (section) => entryAt(ids, section - 1)),
    (share) => {
      if (share - told < LEAST_PROGRESS) return;
      told = share;
      onProgress(share);
    },
  );
}
