import { counted, plural, speak } from '../../../../engine/words/language.ts';

export const say = speak('press/week', {
  dateVisits: 'date the visits',
  rename: (title: string) => `rename ${title}`,
  takeOutOfWeek: (title: string) => `take ${title} out of the week`,
  wasTakenOutOf: (title: string) => `${title} was taken out of the week.`,
  putBack: 'Put back',
  putBackTitle: (title: string) => `put ${title} back`,
  noPullOrderIs: (name: string) => `${name}: no pull order is in it; find one there and save the file again.`,
  isVisitThatIs: (name: string) => `${name} is the visit that is open; it is in the week already.`,
  weekHasVisitsTake: (name: string, mostVisits: number) => `${name}: the week has ${mostVisits} visits; take one out first.`,
  wasInWeekBefore: (title: string, name: string) => `${title} was in the week before; its days are now those of ${name}.`,
  addToWeek: (added: string) => `add ${added} to the week`,
  throwAwayWhatCould: 'throw away what could not be read',
  nameOfInWeek: (title: string) => `Name of ${title} in the week`,
  days: (daysOf: number) => counted(daysOf, { one: 'day', other: 'days' }),
  from: 'from',
  firstDayOf: (title: string) => `First day of ${title}`,
  takeOutOfWeekTitle: (title: string) => `Take ${title} out of the week`,
  takeOut: 'Take out',
  calendar: 'Calendar',
  partsOfKeptWeek: (aside: number) =>
    `${counted(aside, { one: 'part', other: 'parts' })} of a kept week could not be read and ${plural(aside, { one: 'lies', other: 'lie' })} aside.`,
  saveAsFile: 'Save as a file…',
  throwAway: 'Throw away',
  severalVisitsOnThis: 'Several visits on this press',
  addFilesOfOthers:
    'Add the files of others who print here, saved with their pull orders: their days are kept in this browser, nothing else of theirs.',
  addFiles: 'Add files…',
  oneAfterOther: 'One after the other',
  printWeek: 'Print the week',
});
