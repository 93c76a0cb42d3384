import { entryAt } from '../base/at.ts';
import { stackMinutesOf } from '../ink/film/drying.ts';
import type { Ink } from '../ink/types.ts';
import type { Recipe } from '../recipe/types.ts';
import type { SheetAsPulled } from './as-pulled.ts';

const MINUTE_MS = 60_000;

/** A film that was logged on a sheet, and until when it dries; ms since 1970 UTC. */
export interface LoggedFilm {
  /** Position of its pull in the recipe. */
  at: number;
  ink: string;
  pulledMs: number;
  /** From then on it can be printed over. */
  dryMs: number;
  /** From then on its sheet can leave the rack. */
  stackMs: number;
}

/**
 * The films on a sheet by the times at which they were logged and the drying times of the inks that
 * were really pulled.
 * @param recipe of `recipesAsPulled`
 * @returns first down first
 */
export function filmsOn(sheet: Pick<SheetAsPulled, 'done' | 'pulls' | 'events'>, recipe: Recipe): LoggedFilm[] {
  return sheet.done.flatMap((at, i): LoggedFilm[] => {
    const { id } = entryAt(recipe.pulls, at);
    const event = sheet.events.find((each) => 'pulls' in each && each.pulls.includes(id));
    const ink = recipe.inks.find((each) => each.id === entryAt(sheet.pulls, i).ink);
    if (event === undefined || ink === undefined) return [];
    return [filmOf(ink, at, event.atMs)];
  });
}

/** A film of an ink that was pulled at a moment, ms since 1970 UTC. @param at position of its pull */
export function filmOf(ink: Ink, at: number, pulledMs: number): LoggedFilm {
  const dryMs = pulledMs + ink.dryMinutes * MINUTE_MS;
  return { at, ink: ink.name, pulledMs, dryMs, stackMs: pulledMs + stackMinutesOf(ink) * MINUTE_MS };
}
