import type { say as english } from '../../en/base/base.ts';
import { plural } from '../../language.ts';

export const say: typeof english = {
  and: (words, words2) => `${words} und ${words2}`,
  needsAreMissing: (takes, missing, missing2) => `braucht ${takes}; ${missing} ${plural(missing2, { one: 'fehlt', other: 'fehlen' })}`,
  cannotUseWhatIt: (takes) => `kann nicht nutzen, was als ${takes} gegeben ist`,
  enginesDOORMdSays: (name, said) => `${name} der Engine ${said}: DOOR.md sagt, was zu geben ist.`,
  noEntryInList: (index, list) => `kein Eintrag ${index} in einer Liste von ${list}`,
  valueThatMustBe: 'ein Wert fehlt, der da sein muss',
  hasListsOrObjects: (mostDeep) => `hat Listen oder Objekte, die tiefer als ${mostDeep} ineinander liegen`,
  hasMoreThanMillion: (mostParts) => `hat mehr als ${mostParts} Millionen Werte`,
  randomIntWantsWhole: (below) => `random int verlangt eine ganze Zahl von 1 bis 2^31, bekam ${below}`,
  nothingToPickFrom: 'nichts, woraus zu wählen ist',
  giveNumber: 'Eine Zahl angeben.',
  isTooLongFor: (shown, decimal) => `„${shown}…“ ist zu lang für eine Zahl: sie in Ziffern schreiben, wie in 2${decimal}5.`,
  isFractionWrite: (shown, fraction) => `„${shown}“ ist ein Bruch: ${fraction} schreiben.`,
  isNoNumberWrite: (shown, decimal) => `„${shown}“ ist keine Zahl: sie in Ziffern schreiben, wie in 2${decimal}5.`,
  numberInDigits: 'eine Zahl in Ziffern',
  roundedIsValueNumber: (roundedIsValue, number) => `${roundedIsValue ? '' : 'etwa '}${number}`,
  min: (rest) => `${rest} min`,
  hMin: (hours, rest) => `${hours} h ${rest} min`,
};
