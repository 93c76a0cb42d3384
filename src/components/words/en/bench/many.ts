import { speak } from '../../../../engine/words/language.ts';

export const say = speak('bench/many', {
  moveOnSheet: 'Move on the sheet',
  furtherRight: 'Further right',
  furtherDown: 'Further down',
  moveThem: 'Move them',
  pullsOf: (places: string, pulls: number) => `Pulls ${places} of ${pulls}`,
  pullsSelected: (ids: number) => `${ids} pulls selected`,
  onlyOne: 'Only one',
  strokesNowDifferent: 'Strokes, now different',
  strokes: 'Strokes',
  earlier: 'Earlier',
  later: 'Later',
  firstOfThemTo: 'First of them to place',
  remove: (ids: number) => `Remove ${ids}`,
});
