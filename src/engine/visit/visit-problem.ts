import { defined, entryAt } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { MOST_SHEETS } from '../base/limits.ts';
import { dryingPairs, overlapsOf } from '../order/overlaps.ts';
import type { PlanProblem, PlanPull, PlanSheet } from '../pullorder/types.ts';
import type { Recipe } from '../recipe/types.ts';
import { studioOfRecipe } from '../recipe/write.ts';
import type { Pull } from '../stack/types.ts';
import { registerRecipes, type Registry } from './registry.ts';

/** Overlaps nowhere wider than this count as touching: finer than any table registers, mm. */
export const OVERLAP_TOLERANCE_MM = 0.05;

/** Most sheets that a visit may have. */

/** A numbered sheet of paper with the recipe it becomes. */
export interface VisitSheet {
  /** From 1, as pencilled on the back. */
  number: number;
  /** Index into the recipes. */
  recipe: number;
}

/** What is to be printed, as the planner sees it, with what leads back to the studio's words. */
export interface VisitProblem {
  problem: PlanProblem;
  /** The same with free swaps ignored: every overlap keeps its order. */
  withoutFreeSwaps: PlanProblem;
  sheets: VisitSheet[];
  recipes: Recipe[];
  registry: Registry;
  /** By recipe: pairs of pulls [a, b] that overlap, hence must dry one before the other. */
  drying: [number, number][][];
  /** By recipe: how many overlapping pairs may change places. */
  freeSwaps: number[];
}

/** One recipe and how many sheets of it. */
export interface VisitRunInput {
  recipe: Recipe;
  sheets: number;
  /** Their numbers when they have some already, one a sheet; absent = counted on from 1. */
  numbers?: readonly number[];
}

/** Names where and how a pull goes down: set-ups of one screen and ink at one offset, turn and number of strokes are one. */
export function offsetText(pull: Pick<Pull, 'dxMm' | 'dyMm' | 'turnDeg' | 'strokes'>): string {
  return JSON.stringify([pull.dxMm, pull.dyMm, pull.turnDeg, pull.strokes]);
}

/** What a text of `offsetText` names. */
export function offsetOfText(text: string): Pick<Pull, 'dxMm' | 'dyMm' | 'turnDeg' | 'strokes'> {
  const [dxMm, dyMm, turnDeg, strokes] = JSON.parse(text) as [number, number, number, number];
  return { dxMm, dyMm, turnDeg, strokes };
}

function sameKind(a: PlanPull, b: PlanPull): boolean {
  return a.screen === b.screen && a.ink === b.ink && a.offset === b.offset;
}

/**
 * Turns recipes and sheet counts into a pull-order problem.
 * @param runs at least one with at least one sheet
 * @param minDeltaE orders that differ by less may change places, ΔE00
 * @throws EngineError 'visit.empty', 'visit.sheets' in a sentence
 */
export function visitProblem(runs: readonly VisitRunInput[], minDeltaE: number): VisitProblem {
  const used = runs.filter((run) => run.sheets > 0);
  const count = used.reduce((sum, run) => sum + run.sheets, 0);
  if (count === 0) throw new EngineError('visit.empty', 'Nothing is to be printed yet; choose a recipe and how many sheets of it.');
  if (used.some((run) => !Number.isInteger(run.sheets))) {
    throw new EngineError('visit.sheets', 'A number of sheets is not whole; give whole sheets.');
  }
  if (count > MOST_SHEETS) {
    throw new EngineError(
      'visit.sheets',
      `${count} sheets are more than the ${MOST_SHEETS} that one visit can hold; split them over visits.`,
    );
  }
  const recipes = used.map((run) => run.recipe);
  const registry = registerRecipes(recipes);
  const drying: [number, number][][] = [];
  const freeSwaps: number[] = [];
  const ordered: PlanSheet[] = [];
  const rigid: PlanSheet[] = [];
  for (const [r, recipe] of recipes.entries()) {
    const studio = studioOfRecipe(recipe);
    const stack = { pulls: recipe.pulls };
    const pulls: PlanPull[] = recipe.pulls.map((pull) => ({
      screen: defined(entryAt(registry.screenKey, r).get(pull.screen)),
      ink: defined(entryAt(registry.inkKey, r).get(pull.ink)),
      offset: offsetText(pull),
    }));
    const touching = dryingPairs(stack, studio, { toleranceMm: OVERLAP_TOLERANCE_MM });
    const pairs = touching.map(({ a, b }): [number, number] => [a, b]);
    const mattering = overlapsOf(stack, studio, { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE }).map(({ a, b }): [number, number] => [
      a,
      b,
    ]);
    // The same pull twice over itself would otherwise print both at once, wet in wet.
    const repeats = pairs.filter(([a, b]) => sameKind(entryAt(pulls, a), entryAt(pulls, b)));
    const keep = new Map([...mattering, ...repeats].map((pair) => [pair.join(), pair]));
    drying.push(pairs);
    freeSwaps.push(pairs.length - keep.size);
    ordered.push({ pulls, overlaps: [...keep.values()] });
    rigid.push({ pulls, overlaps: pairs });
  }
  const sheets: VisitSheet[] = [];
  for (const [r, run] of used.entries()) {
    for (let i = 0; i < run.sheets; i++) sheets.push({ number: run.numbers?.[i] ?? sheets.length + 1, recipe: r });
  }
  return {
    problem: { sheets: sheets.map((sheet) => entryAt(ordered, sheet.recipe)) },
    withoutFreeSwaps: { sheets: sheets.map((sheet) => entryAt(rigid, sheet.recipe)) },
    sheets,
    recipes,
    registry,
    drying,
    freeSwaps,
  };
}
