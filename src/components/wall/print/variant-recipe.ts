import type { Variant } from '../../../engine/explore/types.ts';
import { printTitle } from '../../../engine/recipe/lineage.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { recipeOf } from '../../../engine/recipe/write.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { newId } from '../../ui/new-id.ts';
import { lineageOf } from '../run/wall-origins.ts';

/**
 * A print of the wall as a recipe.
 * @throws EngineError as `recipeOf`
 */
export function variantRecipe(variant: Variant, studio: Studio): Recipe {
  const lineage = lineageOf(variant);
  return recipeOf(variant.pulls, studio, { id: newId(), title: printTitle(lineage), seed: variant.seed, index: variant.index, lineage });
}
