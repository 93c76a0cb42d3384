import type { say as english } from '../../en/ui/kit.ts';

export const say: typeof english = {
  close: 'Schließen',
  upAndDownIn: 'Auf und ab, in einem Zahlenfeld',
  oneStepMoreOr: 'ein Schritt mehr oder weniger',
  ctrlOrAndZ: 'Strg oder ⌘ und Z',
  undoWithShiftOr: 'rückgängig machen; mit Umschalt, oder Strg und Y, wiederholen',
  thisHelp: 'diese Hilfe',
  couldNotBeFetched: (what) =>
    `${what} konnte nicht von dort geholt werden, woher die App kam. Die Seite neu laden; was gemacht wurde, ist gespeichert.`,
  thisPartOfApp: 'Dieser Teil der App',
  wholeNumber: 'Eine ganze Zahl',
  aNumber: 'Eine Zahl',
  from: (number) => `${number} von `,
  giveTo: (number, min, max) => `${number}${min} bis ${max} eingeben.`,
  giveOrMore: (number, min) => `${number}${min} oder mehr eingeben.`,
  giveOrLess: (number, max) => `${number}${max} oder weniger eingeben.`,
  give: (number) => `${number} eingeben.`,
  lengthsAreInInches: (inInches) => `Längen sind in ${inInches ? 'Zoll: mm zeigen' : 'mm: Zoll zeigen'}`,
  stop: 'Anhalten',
};
