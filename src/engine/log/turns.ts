import { atOnce } from '../base/at-once.ts';
import { num } from '../base/at.ts';
import { type MeetingPair, OVERLAP_TOLERANCE_MM, pairSteps } from '../order/overlaps.ts';
import type { Recipe } from '../recipe/types.ts';
import { studioOfRecipe } from '../recipe/write.ts';
import type { Pull } from '../stack/types.ts';
import type { VisitHead } from './types.ts';

/** What two orders may differ by unseen where the visit does not say, ΔE00; the app's own default. */
const MIN_DELTA_E = 1;

/**
 * Knows the pulls of a recipe whose order shows, each pair as 'a b' by position, a < b; null when it
 * is not known yet: then they count as in turn.
 */
export type OrderPairs = (recipe: Recipe) => ReadonlySet<string> | null;

/** What `OrderPairs` gives for the overlaps of a recipe's pulls. */
export function pairsOf(overlaps: readonly MeetingPair[]): ReadonlySet<string> {
  return new Set(overlaps.map(({ a, b }) => `${a} ${b}`));
}

/** Pulls whose order differs by less may change places in a visit, ΔE00. */
export function minDeltaEOf(head: Pick<VisitHead, 'minDeltaE'>): number {
  return head.minDeltaE ?? MIN_DELTA_E;
}

// By the pulls: a recipe with borrowed inks is another object with the same list.
const measured = new WeakMap<readonly Pull[], { minDeltaE: number; pairs: ReadonlySet<string> }>();

/**
 * Measures outlines where a pair is asked for, each recipe once.
 * Cost: as `pairSteps` of all its pulls, a second for some dozens of detailed ones; where somebody
 * waits, know the pairs beforehand.
 */
export function measuredPairs(minDeltaE = MIN_DELTA_E): OrderPairs {
  return (recipe) => {
    const known = measured.get(recipe.pulls);
    if (known?.minDeltaE === minDeltaE) return known.pairs;
    const steps = pairSteps({ pulls: recipe.pulls }, studioOfRecipe(recipe), { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE });
    const pairs = pairsOf(atOnce(steps).mattering);
    measured.set(recipe.pulls, { minDeltaE, pairs });
    return pairs;
  };
}

/**
 * The pulls of a sheet that were printed over what should lie on them, where that shows.
 * @param order positions of the recipe's pulls as they were printed, each once
 * @param pairs asked only when something is out of turn
 * @returns for each such pull its position and the first one that it should lie under
 */
export function outOfTurn(recipe: Recipe, order: readonly number[], pairs: OrderPairs): { at: number; over: number }[] {
  if (order.every((at, i) => i === 0 || num(order, i - 1) < at)) return [];
  const matters = pairs(recipe);
  if (matters === null) return [];
  return order.flatMap((at, i) => {
    const over = order.slice(0, i).find((before) => before > at && matters.has(`${at} ${before}`));
    return over === undefined ? [] : [{ at, over }];
  });
}
