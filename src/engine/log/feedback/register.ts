import { settingsNoted } from '../settings.ts';
import type { LogEvent } from '../types.ts';
import { type FoundFigure, foundFigure } from './found-figure.ts';

/**
 * How near to its place prints came to lie, mm, by what was noted of set-ups: the last word of each.
 * @returns null where nobody noted it
 */
export function registerFound(events: readonly LogEvent[]): FoundFigure | null {
  return foundFigure(settingsNoted(events).flatMap(({ how }) => how.registerMm ?? []));
}
