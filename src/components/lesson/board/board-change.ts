import type { InkChange } from '../../../engine/lesson/lesson-sheet.ts';
import type { Pull } from '../../../engine/stack/types.ts';

/** What was changed on the board. */
export interface BoardChange {
  pulls: Pull[];
  inks: InkChange[];
  /** Names the drag that it is a part of. */
  move?: string;
}

/** What may be done on the board. */
export interface BoardRights {
  order: boolean;
  place: boolean;
  ink: boolean;
}

/** On a board that is one's own. */
export const ALL_RIGHTS: BoardRights = { order: true, place: true, ink: true };
