import { entryAt } from '../base/at.ts';
import { stackMinutesOf } from '../ink/film/drying.ts';
import type { Recipe } from '../recipe/types.ts';
import type { SheetAsPulled } from './as-pulled.ts';

const MINUTE_MS = 60_000;

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
    const recipe = entryAt(recipes, sheet.recipe);
    let last: WetSheet | null = null;
    let stackMs = 0;
    for (const [i, at] of sheet.done.entries()) {
      const id = entryAt(recipe.pulls, at).id;
      const event = sheet.events.find((each) => 'pulls' in each && each.pulls.includes(id));
      const ink = recipe.inks.find((each) => each.id === entryAt(sheet.pulls, i).ink);
      if (event === undefined || ink === undefined) continue;
      const dryMs = event.atMs + ink.dryMinutes * MINUTE_MS;
      stackMs = Math.max(stackMs, event.atMs + stackMinutesOf(ink) * MINUTE_MS);
      if (last === null || dryMs >= last.dryMs) last = { number: sheet.number, ink: ink.name, dryMs, stackMs };
    }
    return last === null || stackMs <= nowMs ? [] : [{ ...last, stackMs }];
  });
}
