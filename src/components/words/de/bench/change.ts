import { counted, plural } from '../../../../engine/words/language.ts';
import type { say as english } from '../../en/bench/change.ts';

export const say: typeof english = {
  areOffStackPulls: (named, removed, pulls) =>
    `${named} ${plural(removed, { one: 'ist', other: 'sind' })} vom Stapel genommen; ${counted(pulls, { one: 'Druckgang', other: 'Druckgänge' })} übrig`,
  pulls: (pulls) => counted(pulls, { one: 'Druckgang', other: 'Druckgänge' }),
  pull: (number, at) => `${number} (Druckgang ${at})`,
  // Not inflected, so that the same words stand where a sentence asks for another case.
  screens: (_names, names2) => `Sieb ${names2}`,
  areOnStackPulls: (named, pulls) => `${named} sind auf dem Stapel; jetzt ${counted(pulls, { one: 'Druckgang', other: 'Druckgänge' })}`,
  isPullOfIn: (named, at, pulls, inkNameOf) => `${named} ist Druckgang ${at} von ${pulls}, in ${inkNameOf}`,
  are: (pairs) => plural(pairs, { one: 'ist', other: 'sind' }),
  inOtherInks: (subject, verb) => `${subject} ${verb} in anderen Farben`,
  inPlaceOf: (value) => ` statt in ${value}`,
  in: (subject, verb, value, was) => `${subject} ${verb} in ${value}${was}`,
  lieElsewhereOnSheet: (named) => `${named} liegen anderswo auf dem Bogen`,
  whereItWasDrawn: 'dort, wo es gezeichnet ist',
  lies: (named, words) => `${named} liegt ${words}`,
  have: (pulls) => plural(pulls, { one: 'hat', other: 'haben' }),
  otherStrokes: (named, verb) => `${named} ${verb} andere Rakelzüge`,
  strokesEach: (named, verb, strokes, pulls) =>
    `${named} ${verb} ${plural(pulls, { one: '', other: 'je ' })}${counted(strokes, { one: 'Rakelzug', other: 'Rakelzüge' })}`,
  isPullOf: (named, at, pulls) => `${named} ist Druckgang ${at} von ${pulls}`,
  areAtOtherPlaces: (named) => `${named} sind an anderen Plätzen`,
  printStaysSameWithin: (place, minDeltaE) => `${place}; der Druck bleibt innerhalb von ΔE ${minDeltaE} gleich`,
  ofThemNowLie: (place, seen) => `${place}; ${seen} davon liegen jetzt anders über oder unter dem, was sie überlappen`,
  over: (passedNames) => `über ${passedNames}`,
  under: (passedNames) => `unter ${passedNames}`,
  and: ' und ',
  nowLies: (named, sides) => `${named} liegt jetzt ${sides}`,
  andMore: (some, pulls) => `${some} und ${pulls} weiteren`,
};
