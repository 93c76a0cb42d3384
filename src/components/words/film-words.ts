import { isMirrored } from '../../engine/shapes/place/mirrored.ts';
import type { PlacedShape } from '../../engine/shapes/types.ts';
import { say } from './en/phrases/inks.ts';

/** How the film of a mirrored screen is had; that another turned over serves is common practice, no source. */
export const TURNED_OVER_NOTE = say.mirroredFilmMadeHere;

/** The same in a cell of a table. */
export const TURNED_OVER = say.mirroredFilmOfIts;

/** What is said of a screen's film; '' where it lies as it was drawn. @param placed what is on the screen */
export function filmNote(placed: readonly PlacedShape[]): string {
  return isMirrored({ placed }) ? TURNED_OVER_NOTE : '';
}
