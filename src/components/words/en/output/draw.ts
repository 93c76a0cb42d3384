import { speak } from '../../../../engine/words/language.ts';

export const say = speak('output/draw', {
  continued: (title: string) => `${title}, continued`,
  bareNowThen: (title: string, noPulls: boolean) => `${title}${noPulls ? ', bare' : ''}: now, then`,
});
