import type { Recipe } from '../recipe/types.ts';
import type { PressPlan } from '../visit/visit.ts';
import type { VisitHead } from './types.ts';

/**
 * Begins the log of a visit: its recipes and numbered sheets as the order has them.
 * @param recipes by the index that the order's sheets use
 * @param stamp what the order does not know of itself
 */
export function visitHeadOf(
  plan: Pick<PressPlan, 'sheets' | 'testNumber'>,
  recipes: Recipe[],
  stamp: Pick<VisitHead, 'id' | 'title' | 'begunMs' | 'minDeltaE'>,
): VisitHead {
  return {
    ...stamp,
    recipes,
    sheets: plan.sheets.map(({ number, recipe, use }) => ({ number, recipe, ...(use === undefined ? {} : { use }) })),
    ...(plan.testNumber === undefined ? {} : { test: plan.testNumber }),
  };
}
