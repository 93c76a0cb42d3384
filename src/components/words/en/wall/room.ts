import { speak } from '../../../../engine/words/language.ts';

export const say = speak('wall/room', {
  whatMustStay: 'What must stay',
  whatWallIsFound: 'What the wall is found from',
  wall: 'Wall',
  toDrawer: 'To the Drawer',
});
