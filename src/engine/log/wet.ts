import { entryAt } from '../base/at.ts';
import type { Recipe } from '../recipe/types.ts';
import type { SheetAsPulled } from './as-pulled.ts';
import { filmsOn } from './films.ts';

/** The film of a sheet that takes longest to dry, and until when; ms since 1970 UTC. */
export interface WetSheet {
  number: number;
  ink: string;
  /** From then on it can be printed over. */
  dryMs: number;
  /** From then on it can leave the rack. */
  stackMs: number;
}

/**
 * Sheets whose films are not yet dry enough to stack, by the times at which they were logged and
 * the drying times of the inks that were really pulled.
 * @param recipes of `recipesAsPulled`
 * @param nowMs ms since 1970 UTC
 * @returns in the order of the sheets given; dry ones are left out
 */
export function wetSheets(sheets: readonly SheetAsPulled[], recipes: readonly Recipe[], nowMs: number): WetSheet[] {
  return sheets.flatMap((sheet): WetSheet[] => {
    let last: WetSheet | null = null;
    let stackMs = 0;
    for (const film of filmsOn(sheet, entryAt(recipes, sheet.recipe))) {
      stackMs = Math.max(stackMs, film.stackMs);
      if (last === null || film.dryMs >= last.dryMs) last = { number: sheet.number, ink: film.ink, dryMs: film.dryMs, stackMs };
    }
    return last === null || stackMs <= nowMs ? [] : [{ ...last, stackMs }];
  });
}
