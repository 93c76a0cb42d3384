import { counted, plural, speak } from '../../../../engine/words/language.ts';

export const say = speak('bench/change', {
  areOffStackPulls: (named: string, removed: number, pulls: number) =>
    `${named} ${plural(removed, { one: 'is', other: 'are' })} off the stack; ${counted(pulls, { one: 'pull', other: 'pulls' })} left`,
  pulls: (pulls: number) => counted(pulls, { one: 'pull', other: 'pulls' }),
  pull: (number: string | number, at: number) => `${number} (pull ${at})`,
  screens: (names: number, names2: string) => `${plural(names, { one: 'screen', other: 'screens' })} ${names2}`,
  areOnStackPulls: (named: string, pulls: number) => `${named} are on the stack; ${counted(pulls, { one: 'pull', other: 'pulls' })} now`,
  isPullOfIn: (named: string, at: number, pulls: number, inkNameOf: string) => `${named} is pull ${at} of ${pulls}, in ${inkNameOf}`,
  are: (pairs: number) => plural(pairs, { one: 'is', other: 'are' }),
  inOtherInks: (subject: string, verb: string) => `${subject} ${verb} in other inks`,
  inPlaceOf: (value: string) => ` in place of ${value}`,
  in: (subject: string, verb: string, value: string, was: string) => `${subject} ${verb} in ${value}${was}`,
  lieElsewhereOnSheet: (named: string) => `${named} lie elsewhere on the sheet`,
  whereItWasDrawn: 'where it was drawn',
  lies: (named: string, words: string) => `${named} lies ${words}`,
  have: (pulls: number) => plural(pulls, { one: 'has', other: 'have' }),
  otherStrokes: (named: string, verb: string) => `${named} ${verb} other strokes`,
  strokesEach: (named: string, verb: string, strokes: number, pulls: number) =>
    `${named} ${verb} ${counted(strokes, { one: 'stroke', other: 'strokes' })}${plural(pulls, { one: '', other: ' each' })}`,
  isPullOf: (named: string, at: number, pulls: number) => `${named} is pull ${at} of ${pulls}`,
  areAtOtherPlaces: (named: string) => `${named} are at other places`,
  printStaysSameWithin: (place: string, minDeltaE: number) => `${place}; the print stays the same within ΔE ${minDeltaE}`,
  ofThemNowLie: (place: string, seen: number) => `${place}; ${seen} of them now lie otherwise over or under what they overlap`,
  over: (passedNames: string) => `over ${passedNames}`,
  under: (passedNames: string) => `under ${passedNames}`,
  and: ' and ',
  nowLies: (named: string, sides: string) => `${named} now lies ${sides}`,
  andMore: (some: string, pulls: number) => `${some} and ${pulls} more`,
});
