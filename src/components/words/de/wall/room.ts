import type { say as english } from '../../en/wall/room.ts';

export const say: typeof english = {
  whatMustStay: 'Was bleiben muss',
  whatWallIsFound: 'Woraus die Wand gefunden wird',
  wall: 'Wand',
  toDrawer: 'Zur Schublade',
};
