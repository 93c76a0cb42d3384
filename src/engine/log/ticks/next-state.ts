import { entryAt } from '../../base/at.ts';
import type { Recipe } from '../../recipe/types.ts';
import type { Pull } from '../../stack/types.ts';
import type { PressPlan } from '../../visit/visit.ts';
import type { SheetAsPulled } from '../as-pulled.ts';
import { printsOn } from './ticking.ts';

/** How a sheet looks once it was pulled the next time. */
export interface NextState {
  /** Number of the set-up that pulls it. */
  setUp: number;
  /** What is then on the sheet, first down first. */
  pulls: Pull[];
}

/**
 * Finds what is pulled on a sheet next, by the order as it is planned.
 * @param from index of the set-up at which it is looked for first
 * @returns null for a sheet that is spoiled or has nothing left to be pulled from there on
 */
export function nextState(plan: Pick<PressPlan, 'cards'>, sheet: SheetAsPulled, recipe: Recipe, from: number): NextState | null {
  if (sheet.spoiled) return null;
  for (const card of plan.cards.slice(from)) {
    const left = printsOn(card, sheet).filter((at) => !sheet.done.includes(at));
    if (left.length > 0) return { setUp: card.number, pulls: [...sheet.pulls, ...left.map((at) => entryAt(recipe.pulls, at))] };
  }
  return null;
}
