import { speak } from '../../../../engine/words/language.ts';

export const say = speak('output/films', {
  noScreenIsChosen: 'No screen is chosen; choose those that films are to be made of.',
});
