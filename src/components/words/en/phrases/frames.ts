import { speak } from '../../../../engine/words/language.ts';

export const say = speak('phrases/frames', {
  drawn: 'drawn',
  toMake: 'to make',
  filmMade: 'film made',
  made: 'made',
  reclaimed: 'reclaimed',
});
