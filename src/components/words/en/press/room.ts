import { counted, speak } from '../../../../engine/words/language.ts';

export const say = speak('press/room', {
  sizeOfPaperCould: 'The size of the paper could not be kept in this browser; choose it again after a reload.',
  whatCouldNotBe: (sentence: string) =>
    `${sentence} What could not be read was put aside: under 'Several visits on this press' it can be saved as a file.`,
  visitsOnThisPress: 'The visits on this press could not be kept in this browser; print the week, or add their files again after a reload.',
  pullOrder: 'Pull order',
  lookingForOrder: 'Looking for an order…',
  byClock: 'By the clock',
  sheets: 'Sheets',
  whatNext: 'What next?',
  outOfDateRecipes: 'Out of date: recipes, sheets or figures have changed.',
  planAgain: 'Plan again',
  atPress: 'At the press',
  bringInAnotherDevices: 'Bring in another device’s log…',
  planRestAroundWhat: 'Plan the rest around what is done',
  ofSetUpsDone: (setUpsBefore: number, setUpsInAll: number) =>
    `${setUpsBefore} of ${counted(setUpsInAll, { one: 'set-up', other: 'set-ups' })} done`,
  newOrderStartsNew: 'A new order starts a new visit without your ticks; what you logged stays in the Chest.',
  planRest: 'Plan the rest',
  findAnew: 'Find anew',
  keepThisOrder: 'Keep this order',
  logOfVisitCould: (error: string) => `The log of the visit could not be read (${error}); reload the page before you tick anything.`,
  planAgain2: 'plan again',
  beginSetUpsEvening: 'begin set-ups the evening before',
  takeBetterOrder: 'take the better order',
});
