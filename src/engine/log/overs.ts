import { entryAt } from '../base/at.ts';
import type { Recipe } from '../recipe/types.ts';
import type { SheetAsPulled } from './as-pulled.ts';
import { samePulls } from './moved.ts';

/** In what order sheets are asked to stand in for a spoiled one; those with another use never are. */
const RANKS: Partial<Record<NonNullable<SheetAsPulled['use']>, number>> = { over: 0, proof: 1 };

/**
 * The overs and proofs that can take the place of a sheet: good, and not yet in the place of another; of
 * its recipe, or of another whose pulls so far are the same in the same order.
 * @param at of the recipe's pulls, further ones that the sheet would have by now
 * @param recipes of `recipesAsPulled`; absent = none of another recipe
 * @returns their numbers: of its recipe first, overs before proofs, then those that lack least of what the sheet has
 */
export function oversFor(
  sheet: SheetAsPulled,
  sheets: readonly SheetAsPulled[],
  at: readonly number[] = [],
  recipes: readonly Recipe[] = [],
): number[] {
  const wanted = [...sheet.done, ...at.filter((pull) => !sheet.done.includes(pull))];
  return sheets
    .flatMap((over) => {
      const rank = over.use === undefined ? undefined : RANKS[over.use];
      if (rank === undefined || over.spoiled || over.number === sheet.number) return [];
      if (over.recipe === sheet.recipe) {
        return [{ number: over.number, rank: [0, rank, wanted.filter((pull) => !over.done.includes(pull)).length] }];
      }
      return isSameSoFar(sheet, over, wanted, recipes) ? [{ number: over.number, rank: [1, rank, wanted.length - over.done.length] }] : [];
    })
    .sort((a, b) => compare(a.rank, b.rank) || a.number - b.number)
    .map(({ number }) => number);
}

function compare(a: readonly number[], b: readonly number[]): number {
  for (const [i, value] of a.entries()) if (value !== b[i]) return value - entryAt(b, i);
  return 0;
}

function isSameSoFar(sheet: SheetAsPulled, over: SheetAsPulled, wanted: readonly number[], recipes: readonly Recipe[]): boolean {
  const [one, other] = [recipes[over.recipe], recipes[sheet.recipe]];
  if (one === undefined || other === undefined || over.otherwise) return false;
  // It must have what the sheet had before this set-up, or what it would have after it: nothing between is ever pulled again.
  if (over.done.length !== sheet.done.length && over.done.length !== wanted.length) return false;
  const ids = over.done.map((at) => entryAt(one.pulls, at).id);
  const found = samePulls(one, ids, other);
  return found !== null && found.every((at, i) => at === wanted[i]);
}
