import { speak } from '../../../../engine/base/language.ts';

export const say = speak('inks/mesh', {
  mesh: 'Mesh',
  onYourScreens: 'On your screens',
  threadsPerCmThread: 'Threads per cm – thread in µm',
});
