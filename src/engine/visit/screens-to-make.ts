import { entryAt } from '../base/at.ts';
import type { Recipe } from '../recipe/types.ts';
import type { VisitScreen } from './registry.ts';
import type { PressPlan } from './visit.ts';

/** A frame to have at hand. */
export interface ScreenToMake {
  screen: VisitScreen;
  /** Number of the first set-up that it is in. */
  first: number;
  mounts: number;
  /** Film for its stencil, mm: covers every sheet that it prints on, laid corner on corner. */
  filmWidthMm: number;
  filmHeightMm: number;
  areaM2: number;
}

/**
 * Lists the frames of a visit and the film that their stencils take.
 * @param recipes by the index that the cards' states use; each has its own paper
 * @param isMade whether a screen, by its key, is made already
 * @returns screens in the order in which they are first mounted; filmM2 of those that are not made, m²
 */
export function screensToMake(
  plan: Pick<PressPlan, 'cards'>,
  recipes: readonly Pick<Recipe, 'paper'>[],
  isMade: (key: string) => boolean = () => false,
): { screens: ScreenToMake[]; filmM2: number } {
  const found = new Map<string, ScreenToMake>();
  for (const { screen, number, mount, states } of plan.cards) {
    const known = found.get(screen.key);
    const entry = known ?? { screen, first: number, mounts: 1, filmWidthMm: 0, filmHeightMm: 0, areaM2: 0 };
    if (known === undefined) found.set(screen.key, entry);
    else if (mount) entry.mounts++;
    for (const { recipe } of states) {
      const { widthMm, heightMm } = entryAt(recipes, recipe).paper;
      entry.filmWidthMm = Math.max(entry.filmWidthMm, widthMm);
      entry.filmHeightMm = Math.max(entry.filmHeightMm, heightMm);
    }
    entry.areaM2 = (entry.filmWidthMm * entry.filmHeightMm) / 1e6;
  }
  const screens = [...found.values()];
  return { screens, filmM2: screens.reduce((sum, { screen, areaM2 }) => sum + (isMade(screen.key) ? 0 : areaM2), 0) };
}
