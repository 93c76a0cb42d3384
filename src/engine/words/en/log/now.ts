import { speak } from '../../language.ts';

export const say = speak('engine/log/now', {
  andMore: (title: string, more: number) => `${title} and ${more} more`,
});
