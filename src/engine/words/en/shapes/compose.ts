import { speak } from '../../language.ts';

export const say = speak('engine/shapes/compose', {
  chooseAtLeastOne: 'Choose at least one shape to put on screens.',
  shapesGoOn1: (screens: number) => `Shapes go on 1 to 100 screens, not ${screens}.`,
  piecesOfToMm: (leastMm: number, mostMm: number) => `Pieces of ${leastMm} to ${mostMm} mm cannot be; give a smallest size above 0 and a largest that is no smaller.`,
  howMuchIsCovered: 'How much is covered is above 0 to 100 %, how much overlaps 0 to 100 %.',
});
