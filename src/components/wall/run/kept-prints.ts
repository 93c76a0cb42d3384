import type { Variant } from '../../../engine/explore/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';

let last: { variants: readonly Variant[]; length: number; recipes: readonly Recipe[]; kept: ReadonlySet<number> } | null = null;

/**
 * The prints of a wall that are in the Chest: those whose pulls are a recipe's, pull by pull. A seed
 * and a number alone do not name a print, since the stack and the settings may have changed since.
 * @returns places on the wall; the same set as long as nothing changed
 */
export function keptPrints(variants: readonly Variant[], recipes: readonly Recipe[]): ReadonlySet<number> {
  if (last !== null && last.variants === variants && last.length === variants.length && last.recipes === recipes) return last.kept;
  const found = new Set<number>();
  // A wall of thousands grows many times a second: no text is made for each of its prints.
  const byIndex = new Map<number, Recipe[]>();
  for (const recipe of recipes) byIndex.set(recipe.index, [...(byIndex.get(recipe.index) ?? []), recipe]);
  variants.forEach((variant, place) => {
    const recipe = byIndex.get(variant.index)?.findLast(({ seed }) => seed === variant.seed);
    if (recipe !== undefined && JSON.stringify(variant.pulls) === JSON.stringify(recipe.pulls)) found.add(place);
  });
  const before = last?.kept;
  const same = before !== undefined && before.size === found.size && [...found].every((index) => before.has(index));
  last = { variants, length: variants.length, recipes, kept: same ? before : found };
  return last.kept;
}
