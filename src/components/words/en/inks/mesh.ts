import { speak } from '../../../../engine/words/language.ts';

export const say = speak('inks/mesh', {
  mesh: 'Mesh',
  onYourScreens: 'On your screens',
  threadsPerCmThread: 'Threads per cm – thread in µm',
});
