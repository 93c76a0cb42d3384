import type { say as english } from '../../en/visit/advice.ts';

export const say: typeof english = {
  offsetsAsOne: 'Versätze zusammengelegt',
  oneInkScreen: 'eine Farbe je Sieb',
  twoInksScreen: 'zwei Farben je Sieb',
  twoInksScreenSimplified: 'zwei Farben je Sieb, vereinfacht',
  oneOffsetScreen: 'ein Versatz je Sieb',
  oneStroke: 'ein Rakelzug',
  oneInkAndOne: 'eine Farbe und ein Versatz je Sieb',
  oneOffsetAndOne: 'ein Versatz und ein Rakelzug',
  screenInOneInk: (key) => `Sieb ${key} in einer Farbe`,
  screenAtOneOffset: (key) => `Sieb ${key} mit einem Versatz`,
};
