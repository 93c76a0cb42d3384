import type { Project } from '../../engine/project/types.ts';
import type { Room } from '../rooms.ts';

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
    text: 'Walk along the prints with the arrow keys or a tap, and press *Keep* at one that you like.',
    done: (began, now) => now.recipes.length > began.recipes.length,
  },
  {
    room: 'bench',
    text: 'Here is one print, pull by pull: drag a state of the strip before another, and see what changes.',
    done: (began, now) => orderOf(now) !== orderOf(began) && now.bench.length === began.bench.length,
  },
  {
    room: 'press',
    text: 'Give the print that you kept some sheets, then press *Find the pull order*.',
    done: () => false,
  },
  {
    room: 'lesson',
    text: 'Put four pulls into another order, and see which orders print the same.',
    done: () => false,
  },
  {
    room: 'drawer',
    text: 'Bring in drawings of your own with *Choose SVG files…*; the button with the project’s name begins an empty project.',
    done: (began, now) => now.drawer.shapes.length > began.drawer.shapes.length,
  },
];

function orderOf({ bench }: Project): string {
  return bench.map(({ id }) => id).join(' ');
}
