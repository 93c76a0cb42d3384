import { entryAt } from '../base/at.ts';
import { usualExtras } from '../visit/paper-needs.ts';
import type { VisitRunInput } from '../visit/visit-problem.ts';
import type { VisitInput } from '../visit/visit.ts';
import type { Project } from './types.ts';

/** What a project's next visit is planned from: its kept recipes of which sheets are wanted, in their order. */
export function visitInputOf({ recipes, visit, press, explore }: Pick<Project, 'recipes' | 'visit' | 'press' | 'explore'>): VisitInput {
  const runs = recipes.flatMap((recipe) => {
    const run = visit.find((each) => each.recipe === recipe.id);
    if (run === undefined || run.sheets === 0) return [];
    const usual = usualExtras(run.sheets, press);
    return [{ recipe, sheets: run.sheets, overs: run.overs ?? usual.overs, proofs: run.proofs ?? usual.proofs }];
  });
  // Where one print stands for all there are of it, nothing of its own can be spoiled for a test.
  const testSheet = runs.some(({ sheets, overs, proofs }) => sheets + overs + proofs === 1);
  return { runs, press, minDeltaE: explore.minDeltaE, seed: explore.seed, ...(testSheet ? { testSheet } : {}) };
}

/** Whether two visits would be planned alike; recipes are compared as objects, which no command changes in place. */
export function sameVisitInput(one: VisitInput, other: VisitInput): boolean {
  return (
    one.minDeltaE === other.minDeltaE &&
    one.seed === other.seed &&
    one.testSheet === other.testSheet &&
    JSON.stringify(one.press) === JSON.stringify(other.press) &&
    one.runs.length === other.runs.length &&
    one.runs.every((run, i) => sameRun(run, entryAt(other.runs, i)))
  );
}

function sameRun(one: VisitRunInput, other: VisitRunInput): boolean {
  const counts = ({ sheets, overs = 0, proofs = 0 }: VisitRunInput): string => [sheets, overs, proofs].join();
  return one.recipe === other.recipe && counts(one) === counts(other);
}
