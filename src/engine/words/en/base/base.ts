import { plural, speak } from '../../language.ts';

export const say = speak('engine/base/base', {
  and: (words: string, words2: string) => `${words} and ${words2}`,
  needsAreMissing: (takes: string, missing: string, missing2: number) =>
    `needs ${takes}; ${missing} ${plural(missing2, { one: 'is', other: 'are' })} missing`,
  cannotUseWhatIt: (takes: string) => `cannot use what it was given as ${takes}`,
  enginesDOORMdSays: (name: string, said: string) => `The engine's ${name} ${said}: DOOR.md says what to give it.`,
  noEntryInList: (index: number, list: number) => `no entry ${index} in a list of ${list}`,
  valueThatMustBe: 'a value that must be there is missing',
  hasListsOrObjects: (mostDeep: number) => `has lists or objects more than ${mostDeep} deep within each other`,
  hasMoreThanMillion: (mostParts: number) => `has more than ${mostParts} million values`,
  randomIntWantsWhole: (below: number) => `random int wants a whole number from 1 to 2^31, got ${below}`,
  nothingToPickFrom: 'nothing to pick from',
  giveNumber: 'Give a number.',
  isTooLongFor: (shown: string, decimal: string) => `“${shown}…” is too long for a number: write it in digits, as in 2${decimal}5.`,
  isFractionWrite: (shown: string, fraction: string) => `“${shown}” is a fraction: write ${fraction}.`,
  isNoNumberWrite: (shown: string, decimal: string) => `“${shown}” is no number: write it in digits, as in 2${decimal}5.`,
  numberInDigits: 'a number in digits',
  roundedIsValueNumber: (roundedIsValue: boolean, number: string) => `${roundedIsValue ? '' : 'about '}${number}`,
  min: (rest: number) => `${rest} min`,
  hMin: (hours: number, rest: number) => `${hours} h ${rest} min`,
});
