import { defined } from '../../base/at.ts';
import { filmFactor } from '../../ink/film/film-factor.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import type { ExploreSettings } from '../types.ts';
import { isTranslucent } from './translucent.ts';

/**
 * The pulls that may lie last as a veil: each screen in each ink of the palette through which what
 * is below shows; in the ink that goes down last, where there is one.
 * @param resting a pull of each screen, in no ink
 */
export function veilPulls(resting: readonly Pull[], studio: Studio, settings: ExploreSettings): Pull[] {
  const last = studio.inks.some((ink) => ink.id === settings.inkLast) ? settings.inkLast : undefined;
  const inks = studio.inks.filter((ink) => settings.palette.includes(ink.id) && (last === undefined || ink.id === last));
  return resting.flatMap((pull) => {
    const mesh = defined(studio.screens.find((screen) => screen.id === pull.screen)).mesh;
    return inks.filter((ink) => isTranslucent(ink, filmFactor(ink, mesh))).map((ink) => ({ ...pull, id: `veil-${pull.id}`, ink: ink.id }));
  });
}
