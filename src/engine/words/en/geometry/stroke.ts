import { speak } from '../../language.ts';

export const say = speak('engine/geometry/stroke', {
  linesHaveMoreThan: (most: number) => `Lines have more than ${most} dashes; make the dashes longer.`,
});
