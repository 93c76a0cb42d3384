import { speak } from '../../language.ts';

export const say = speak('engine/shapes/trace', {
  pictureHasOnlyOne: 'the picture has only one grey; choose one with something drawn in it.',
  nothingIsLeftOf: 'nothing is left of it as ink; move the threshold, or leave out smaller specks only.',
  itsOutlinesHaveCorners: (corners: string, mostCorners: string) => `its outlines have ${corners} corners, more than ${mostCorners}; leave out larger specks, or let outlines stray further.`,
});
