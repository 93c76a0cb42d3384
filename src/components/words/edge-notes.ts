import type { Recipe } from '../../engine/recipe/types.ts';
import { beyondSheet } from '../../engine/shapes/place/beyond-sheet.ts';
import { pullRings } from '../../engine/shapes/place/placed.ts';
import type { SetUpCard } from '../../engine/visit/set-up-cards.ts';
import { say } from './en/phrases/plan.ts';

/** Common practice, no source. */
const BESIDE = say.partOfImageLies;

const known = new WeakMap<SetUpCard, string[]>();

/**
 * What to do where a set-up prints over the sheet's edge; each card is looked at once.
 * @param recipes by the index that the card's states use
 * @returns one sentence, or none
 */
export function edgeNotes(card: SetUpCard, recipes: readonly Recipe[]): string[] {
  let notes = known.get(card);
  if (notes === undefined) known.set(card, (notes = reachesOut(card, recipes) ? [BESIDE] : []));
  return notes;
}

function reachesOut({ states }: SetUpCard, recipes: readonly Recipe[]): boolean {
  return states.some(({ recipe: at, prints }) => {
    const recipe = recipes[at];
    return prints.some((print) => {
      const pull = recipe?.pulls[print];
      const screen = recipe?.screens.find(({ id }) => id === pull?.screen);
      if (recipe === undefined || pull === undefined || screen === undefined) return false;
      return beyondSheet(pullRings(screen, recipe.shapes, pull, recipe.paper), recipe.paper);
    });
  });
}
