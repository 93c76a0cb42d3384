import { speak } from '../../../../engine/words/language.ts';

export const say = speak('phone/room', {
  noSetUp: 'No set-up',
  ticksOnThisPage: 'Ticks on this page are for your own count and are gone when it is closed; log at the press.',
});
