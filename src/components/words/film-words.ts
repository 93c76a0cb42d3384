import { isMirrored } from '../../engine/shapes/place/mirrored.ts';
import type { PlacedShape } from '../../engine/shapes/types.ts';

/** How the film of a mirrored screen is had; common practice, no source. */
export const TURNED_OVER_NOTE =
  'Mirrored: its film is the unmirrored one turned over, emulsion side away from the mesh, so that edges lose a little; for fine work have a film of its own.';

/** The same in a cell of a table. */
export const TURNED_OVER = 'film turned over, emulsion side away from the mesh';

/** What is said of a screen's film; '' where it lies as it was drawn. @param placed what is on the screen */
export function filmNote(placed: readonly PlacedShape[]): string {
  return isMirrored({ placed }) ? TURNED_OVER_NOTE : '';
}
