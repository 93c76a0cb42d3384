import type { Recipe } from '../../../engine/recipe/types.ts';
import { studioOfRecipe } from '../../../engine/recipe/write.ts';
import type { Studio } from '../../../engine/studio/studio.ts';

const studios = new WeakMap<Recipe, Studio>();

/** What a recipe is printed from, the same object each time: a worker needs it once, and its pictures stay. */
export function recipeStudio(recipe: Recipe): Studio {
  let studio = studios.get(recipe);
  if (studio === undefined) {
    studio = studioOfRecipe(recipe);
    studios.set(recipe, studio);
  }
  return studio;
}
