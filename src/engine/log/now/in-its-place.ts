import type { PressPlan } from '../../visit/visit.ts';
import type { SheetAsPulled } from '../as-pulled.ts';

/**
 * An order in which overs of another recipe go the way of the spoiled sheets whose places they took,
 * and those theirs.
 * @param sheets all sheets of the visit as they are
 * @returns the order itself where there is none
 */
export function inTheirPlaces(plan: PressPlan, sheets: readonly SheetAsPulled[]): PressPlan {
  const recipeOf = new Map(plan.sheets.map(({ number, recipe }) => [number, recipe]));
  return sheets.reduce((order, { number, recipe, inPlaceOf }) => {
    const planned = recipeOf.get(number);
    // An order that was made since has it where it belongs.
    if (inPlaceOf === undefined || planned === undefined || planned === recipe || !recipeOf.has(inPlaceOf)) return order;
    return swapped(order, number, inPlaceOf);
  }, plan);
}

function swapped(plan: PressPlan, one: number, other: number): PressPlan {
  const now = (number: number): number => (number === one ? other : number === other ? one : number);
  const all = (numbers: readonly number[]): number[] => numbers.map(now).sort((a, b) => a - b);
  return {
    ...plan,
    sheets: plan.sheets.map((sheet) => ({ ...sheet, number: now(sheet.number) })),
    recipes: plan.recipes.map((recipe) => ({ ...recipe, sheets: all(recipe.sheets) })),
    cards: plan.cards.map((card) => ({
      ...card,
      sheets: all(card.sheets),
      ...(card.instructions === undefined
        ? {}
        : { instructions: card.instructions.map((each) => ({ ...each, sheets: all(each.sheets) })) }),
      states: card.states.map((state) => ({ ...state, sheets: all(state.sheets) })),
      ...(card.test === undefined ? {} : { test: { ...card.test, sheet: now(card.test.sheet) } }),
    })),
  };
}
