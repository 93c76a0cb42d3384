import { speak } from '../../language.ts';

export const say = speak('engine/visit/advice', {
  offsetsAsOne: 'offsets as one',
  oneInkScreen: 'one ink a screen',
  twoInksScreen: 'two inks a screen',
  twoInksScreenSimplified: 'two inks a screen, simplified',
  oneOffsetScreen: 'one offset a screen',
  oneStroke: 'one stroke',
  oneInkAndOne: 'one ink and one offset a screen',
  oneOffsetAndOne: 'one offset and one stroke',
  screenInOneInk: (key: string) => `screen ${key} in one ink`,
  screenAtOneOffset: (key: string) => `screen ${key} at one offset`,
});
