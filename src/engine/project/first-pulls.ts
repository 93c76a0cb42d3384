import { entryAt } from '../base/at.ts';
import type { Ink } from '../ink/types.ts';
import type { Screen } from '../shapes/types.ts';
import type { Pull } from '../stack/types.ts';

/**
 * A first pull of each screen: one stroke, no offset, the inks in turn, so that what is laid down
 * together can be told apart.
 * @param screens in the order in which they go down
 * @param inks one or more; the drawer's
 * @param from how many pulls the stack has already; the turn of the inks goes on from there
 * @param newId gives an id that no other pull has
 */
export function firstPulls(
  screens: readonly Pick<Screen, 'id'>[],
  inks: readonly Pick<Ink, 'id'>[],
  from: number,
  newId: () => string,
): Pull[] {
  return screens.map((screen, i) => ({
    id: newId(),
    screen: screen.id,
    ink: entryAt(inks, (from + i) % inks.length).id,
    dxMm: 0,
    dyMm: 0,
    turnDeg: 0,
    strokes: 1,
  }));
}
