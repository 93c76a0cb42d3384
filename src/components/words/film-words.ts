import { isMirrored } from '../../engine/shapes/place/mirrored.ts';
import type { PlacedShape } from '../../engine/shapes/types.ts';

/** How the film of a mirrored screen is had; that another turned over serves is common practice, no source. */
export const TURNED_OVER_NOTE =
  'Mirrored: a film made here is drawn mirrored and lies as any other. The unmirrored film turned over serves too, its printed side away from the emulsion, so that edges lose a little.';

/** The same in a cell of a table. */
export const TURNED_OVER = 'mirrored: a film of its own, or the unmirrored one turned over';

/** What is said of a screen's film; '' where it lies as it was drawn. @param placed what is on the screen */
export function filmNote(placed: readonly PlacedShape[]): string {
  return isMirrored({ placed }) ? TURNED_OVER_NOTE : '';
}
