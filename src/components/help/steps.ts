import type { Project } from '../../engine/project/types.ts';
import type { Room } from '../rooms.ts';
import { say } from '../words/en/help/room.ts';

/** One of the first steps of a newcomer. */
export interface FirstStep {
  readonly room: Room;
  /** What to do; labels of the app stand between asterisks. */
  readonly text: string;
  /** Whether it was done, between the project as it was when the step began and now; what cannot be seen in a project is said by its reader. */
  done(began: Project, now: Project): boolean;
}

/** The way through the rooms, once: found, changed, planned, understood, one's own. */
export const FIRST_STEPS: readonly FirstStep[] = [
  {
    room: 'wall',
    text: say.walkAlongPrintsWith,
    done: (began, now) => now.recipes.length > began.recipes.length,
  },
  {
    room: 'bench',
    text: say.hereIsOnePrint,
    done: (began, now) => orderOf(now) !== orderOf(began) && now.bench.length === began.bench.length,
  },
  {
    room: 'press',
    text: say.givePrintThatYou,
    done: () => false,
  },
  {
    room: 'lesson',
    text: say.putFourPullsInto,
    done: () => false,
  },
  {
    room: 'drawer',
    text: say.bringInDrawingsOf,
    done: (began, now) => now.drawer.shapes.length > began.drawer.shapes.length,
  },
];

function orderOf({ bench }: Project): string {
  return bench.map(({ id }) => id).join(' ');
}
