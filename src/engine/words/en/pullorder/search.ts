import { speak } from '../../language.ts';

export const say = speak('engine/pullorder/search', {
  pullOrderNeedsMore: (maxSetUps: number) => `The pull order needs more than ${maxSetUps} set-ups: plan fewer recipes at a time.`,
});
