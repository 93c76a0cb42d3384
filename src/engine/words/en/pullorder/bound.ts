import { speak } from '../../language.ts';

export const say = speak('engine/pullorder/bound', {
  someSheetCannotBe: 'Some sheet cannot be finished: its order goes round in a circle.',
});
