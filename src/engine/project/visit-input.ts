import { entryAt } from '../base/at.ts';
import type { VisitInput } from '../visit/visit.ts';
import type { Project } from './types.ts';

/** What a project's next visit is planned from: its kept recipes of which sheets are wanted, in their order. */
export function visitInputOf({ recipes, visit, press, explore }: Pick<Project, 'recipes' | 'visit' | 'press' | 'explore'>): VisitInput {
  const runs = recipes.flatMap((recipe) => {
    const sheets = visit.find((run) => run.recipe === recipe.id)?.sheets ?? 0;
    return sheets > 0 ? [{ recipe, sheets }] : [];
  });
  return { runs, press, minDeltaE: explore.minDeltaE, seed: explore.seed };
}

/** Whether two visits would be planned alike; recipes are compared as objects, which no command changes in place. */
export function sameVisitInput(one: VisitInput, other: VisitInput): boolean {
  return (
    one.minDeltaE === other.minDeltaE &&
    one.seed === other.seed &&
    JSON.stringify(one.press) === JSON.stringify(other.press) &&
    one.runs.length === other.runs.length &&
    one.runs.every((run, i) => run.recipe === entryAt(other.runs, i).recipe && run.sheets === entryAt(other.runs, i).sheets)
  );
}
