import type { Variant } from '../../explore/types.ts';
import type { Recipe } from '../types.ts';

/**
 * The prints of a wall that are kept: those whose pulls are a recipe's, pull by pull. A seed and a
 * number alone do not name a print, since the stack and the settings may have changed since.
 * @returns places on the wall
 */
export function keptPrints(variants: readonly Variant[], recipes: readonly Recipe[]): Set<number> {
  const found = new Set<number>();
  // A wall of thousands grows many times a second: no text is made for each of its prints.
  const byIndex = new Map<number, Recipe[]>();
  for (const recipe of recipes) byIndex.set(recipe.index, [...(byIndex.get(recipe.index) ?? []), recipe]);
  variants.forEach((variant, place) => {
    const recipe = byIndex.get(variant.index)?.findLast(({ seed }) => seed === variant.seed);
    if (recipe !== undefined && JSON.stringify(variant.pulls) === JSON.stringify(recipe.pulls)) found.add(place);
  });
  return found;
}

/** Finds the prints that are kept again only when the wall or the recipes changed. */
export class KeptPrints {
  private last: { variants: readonly Variant[]; length: number; recipes: readonly Recipe[] } | null = null;
  private kept: ReadonlySet<number> = new Set();

  /** @returns places on the wall; the same set as long as it holds the same */
  of(variants: readonly Variant[], recipes: readonly Recipe[]): ReadonlySet<number> {
    const { last, kept } = this;
    if (last?.variants === variants && last.length === variants.length && last.recipes === recipes) return kept;
    this.last = { variants, length: variants.length, recipes };
    const found = keptPrints(variants, recipes);
    if (found.size !== kept.size || [...found].some((place) => !kept.has(place))) this.kept = found;
    return this.kept;
  }
}
