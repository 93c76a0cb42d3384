import { EngineError } from '../../src/engine/base/error.ts';
import { explore } from '../../src/engine/explore/search/explorer.ts';
import { checkExplore } from '../../src/engine/explore/settings/check.ts';
import { checkLog, editionFacts, mergeLogs, recipesAsPulled, sheetsAsPulled } from '../../src/engine/index.ts';
import { lessonStudio } from '../../src/engine/lesson/lesson-sheet.ts';
import type { GivenLesson } from '../../src/engine/lesson/packed-lesson.ts';
import type { VisitLog } from '../../src/engine/log/types.ts';
import { overlapsOf } from '../../src/engine/order/overlaps.ts';
import type { Project } from '../../src/engine/project/types.ts';
import { visitInputOf } from '../../src/engine/project/visit-input.ts';
import { readRecipe } from '../../src/engine/recipe/read.ts';
import type { Recipe } from '../../src/engine/recipe/types.ts';
import { studioOfRecipe, writeRecipe } from '../../src/engine/recipe/write.ts';
import type { Pull } from '../../src/engine/stack/types.ts';
import type { Studio } from '../../src/engine/studio/studio.ts';
import { planVisit } from '../../src/engine/visit/visit.ts';
import { StudioPictures } from '../../src/workers/jobs/pictures.ts';

/** The smallest picture that a room asks for, px high. */
const HEIGHT_PX = 60;

/** Does something with a document; a sentence instead of it is as good. */
function orSaid(work: () => string | null): string | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof EngineError && /^\S[^\n]{10,400}\.$/u.test(error.message)) return null;
    return `threw ${String(error).slice(0, 300)}`;
  }
}

function useStudio(studio: Studio, pulls: readonly Pull[]): string | null {
  return (
    orSaid(() => {
      new StudioPictures(studio).thumbnail({ pulls, heightPx: HEIGHT_PX, relative: true });
      return null;
    }) ??
    orSaid(() => {
      const pairs = overlapsOf({ pulls }, studio, { toleranceMm: 0.1, minDeltaE: 2 });
      return pairs.every(({ areaMm2, deltaE }) => Number.isFinite(areaMm2 + deltaE)) ? null : 'an overlap that is no number';
    })
  );
}

/** What is wrong with a recipe that a reader took, once it is printed; null when nothing is. */
export function useRecipe(recipe: Recipe): string | null {
  return (
    useStudio(studioOfRecipe(recipe), recipe.pulls) ??
    orSaid(() => {
      editionFacts(recipe);
      return readRecipe(writeRecipe(recipe), 'tried.json').value === null ? 'a recipe that cannot be read back' : null;
    })
  );
}

/** What is wrong with a lesson that a reader took, once it is printed and its changed inks are made; null when nothing is. */
export function useLesson({ sheet }: GivenLesson): string | null {
  return orSaid(() => useStudio(lessonStudio(sheet.studio, sheet.inks), sheet.pulls));
}

/** What is wrong with a project that a reader took, once its rooms open; null when nothing is. */
export function useProject(project: Project): string | null {
  return (
    useStudio(project.drawer, project.bench) ??
    orSaid(() => {
      const told = checkExplore(project.explore, project.drawer, project.bench);
      if (told.length === 0) explore(project, { seed: 'tried', count: 1 }).next();
      return null;
    }) ??
    orSaid(() => {
      const input = visitInputOf(project);
      if (input.runs.length > 0) planVisit(input, 10).next();
      return null;
    })
  );
}

/** What is wrong with a log that a reader took, once it is shown; null when nothing is. */
export function useLog(log: VisitLog): string | null {
  return orSaid(() => {
    sheetsAsPulled(log.head, log.events);
    recipesAsPulled(log.head, log.events);
    const free = (): null => null;
    checkLog(log.head, log.events, free);
    mergeLogs(log, log, free);
    return null;
  });
}
