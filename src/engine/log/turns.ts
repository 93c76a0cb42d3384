import { overlapsOf } from '../order/index.ts';
import { OVERLAP_TOLERANCE_MM } from '../output/visit-problem.ts';
import { drawerOfRecipe } from '../recipe/write.ts';
import type { Recipe } from '../recipe/types.ts';
import type { Pull } from '../stack/types.ts';

/** What two orders may differ by unseen where the visit does not say, ΔE00; the app's own default. */
export const MIN_DELTA_E = 1;

// A log is read at each tick and each look at its sheets; measuring outlines takes far longer than
// the rest. By the pulls: a recipe with borrowed inks is another object with the same list.
const measured = new WeakMap<readonly Pull[], { minDeltaE: number; pairs: ReadonlySet<string> }>();

function orderPairs(recipe: Recipe, minDeltaE: number): ReadonlySet<string> {
  const known = measured.get(recipe.pulls);
  if (known?.minDeltaE === minDeltaE) return known.pairs;
  const overlaps = overlapsOf({ pulls: recipe.pulls }, drawerOfRecipe(recipe), { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE });
  const pairs = new Set(overlaps.map(({ a, b }) => `${a} ${b}`));
  measured.set(recipe.pulls, { minDeltaE, pairs });
  return pairs;
}

/**
 * The pulls of a sheet that were printed over what should lie on them, where that shows.
 * @param order positions of the recipe's pulls as they were printed, each once
 * @returns for each such pull its position and the first one that it should lie under
 * Cost: the recipe's overlaps are measured when something is out of turn, once.
 */
export function outOfTurn(recipe: Recipe, order: readonly number[], minDeltaE: number): { at: number; over: number }[] {
  if (order.every((at, i) => i === 0 || order[i - 1]! < at)) return [];
  const matters = orderPairs(recipe, minDeltaE);
  return order.flatMap((at, i) => {
    const over = order.slice(0, i).find((before) => before > at && matters.has(`${at} ${before}`));
    return over === undefined ? [] : [{ at, over }];
  });
}
