import { printInks } from '../../ink/mix/mix.ts';
import type { Ink } from '../../ink/types.ts';
import type { Recipe } from '../../recipe/types.ts';
import { inkText } from '../registry.ts';

/** An ink that could be in a screen in place of the one that was planned. */
export interface InkAtHand {
  ink: Ink;
  /** What it is weighed from, where it is the drawer's; absent = a recipe of the visit prints it. */
  stocks?: Ink[];
}

/**
 * Every ink that could be in a screen beside the one that was planned: those that recipes print first, also when their
 * set-ups are done, then those of the drawer.
 * @param drawer its inks, the stocks of mixes among them
 */
export function inksAtHand(recipes: readonly Pick<Recipe, 'inks' | 'pulls'>[], drawer: readonly Ink[], beside: Ink): InkAtHand[] {
  const inks = new Map<string, InkAtHand>();
  for (const recipe of recipes) {
    const printed = new Set(recipe.pulls.map((pull) => pull.ink));
    for (const ink of recipe.inks) if (printed.has(ink.id)) inks.set(inkText(ink), { ink });
  }
  for (const ink of printInks(drawer)) {
    const text = inkText(ink);
    if (inks.has(text)) continue;
    const parts = new Set((ink.mix ?? []).map((part) => part.ink));
    inks.set(text, { ink, stocks: drawer.filter(({ id }) => parts.has(id)) });
  }
  inks.delete(inkText(beside));
  return [...inks.values()];
}
