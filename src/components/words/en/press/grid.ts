import { counted, speak } from '../../../../engine/words/language.ts';

export const say = speak('press/grid', {
  done: 'done,',
  bed: (bed: number) => `bed ${bed}`,
  mount: 'mount',
  strokes: (strokes: number) => counted(strokes, { one: 'stroke', other: 'strokes' }),
  day: (day: number) => `Day ${day}`,
  setUpGrid: 'Set-up grid',
  setUpsInTime: 'Set-ups in time, and the sheets each is pulled on',
  setUpsAtPress: (cards: number, minutes: string, some: boolean) =>
    `${counted(cards, { one: 'set-up', other: 'set-ups' })}, ${minutes} at the press${some ? '. P proof, O over.' : ''}`,
  testSheetOfRun: 'Test sheet of the run: each set-up is tried on it first',
  test: 'test',
  sheet: 'sheet',
  strokesCounts: (counts: string) => `${counts} strokes`,
});
