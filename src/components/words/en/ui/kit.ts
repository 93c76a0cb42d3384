import { speak } from '../../../../engine/words/language.ts';

export const say = speak('ui/kit', {
  close: 'Close',
  upAndDownIn: 'Up and down, in a field of numbers',
  oneStepMoreOr: 'one step more or less',
  ctrlOrAndZ: 'Ctrl or ⌘ and Z',
  undoWithShiftOr: 'undo; with Shift, or Ctrl and Y, redo',
  thisHelp: 'this help',
  couldNotBeFetched: (what: string) =>
    `${what} could not be fetched from where the app came from. Load the page again; what you made is saved.`,
  thisPartOfApp: 'This part of the app',
  wholeNumber: 'a whole number',
  aNumber: 'a number',
  from: (number: string) => `${number} from `,
  giveTo: (number: string, min: string, max: string) => `Give ${number}${min} to ${max}.`,
  giveOrMore: (number: string, min: string) => `Give ${number}${min} or more.`,
  giveOrLess: (number: string, max: string) => `Give ${number}${max} or less.`,
  give: (number: string) => `Give ${number}.`,
  lengthsAreInInches: (inInches: boolean) => `Lengths are in ${inInches ? 'inches: show mm' : 'mm: show inches'}`,
  stop: 'Stop',
});
