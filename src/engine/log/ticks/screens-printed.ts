import { entryAt } from '../../base/at.ts';
import type { Recipe } from '../../recipe/types.ts';
import type { SheetAsPulled } from '../as-pulled.ts';

/**
 * The screens that something was pulled with, by number and name: they are made, whatever else is said of them.
 * @param recipes of `recipesAsPulled`
 */
export function screensPrinted(
  sheets: readonly Pick<SheetAsPulled, 'recipe' | 'done'>[],
  recipes: readonly Pick<Recipe, 'pulls' | 'screens'>[],
): { number: number; name: string }[] {
  const found = new Map<string, { number: number; name: string }>();
  for (const { recipe, done } of sheets) {
    const { pulls, screens } = entryAt(recipes, recipe);
    for (const at of done) {
      const screen = screens.find(({ id }) => id === entryAt(pulls, at).screen);
      if (screen !== undefined) found.set(JSON.stringify([screen.number, screen.name]), { number: screen.number, name: screen.name });
    }
  }
  return [...found.values()];
}
