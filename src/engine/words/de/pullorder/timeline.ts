import type { say as english } from '../../en/pullorder/timeline.ts';
import { plural } from '../../language.ts';

export const say: typeof english = {
  isGive: (name, value, allowed) => `Diese Angabe geht nicht: ${name} ${value}. Erlaubt ist: ${allowed}.`,
  numberOfPullsPer: 'Zahl der Druckgänge je Stunde',
  moreThan0: 'mehr als 0',
  timeOfFurtherStroke: 'Zeit eines weiteren Rakelzugs',
  mountTime: 'Zeit zum Einspannen',
  washUpTime: 'Zeit zum Auswaschen',
  registerTime: 'Zeit zum Einpassen',
  mixingTime: 'Zeit zum Mischen',
  lengthOfLunch: 'Länge der Mittagspause',
  dryingTimeOfInk: (ink) => `Trockenzeit der Farbe ${ink}`,
  n0MinutesOrMore: '0 Minuten oder mehr',
  numberOfDays: 'Zahl der Tage',
  wholeNumberFrom1: 'eine ganze Zahl ab 1',
  lengthOfDay: 'Länge eines Tages',
  moreThan0And: 'mehr als 0 und höchstens 24 Stunden',
  lengthOfDayWith: 'Länge eines Tages mit Mittagspause',
  atMost24Hours: 'höchstens 24 Stunden',
  numberOfRackPlaces: 'Zahl der Plätze in der Trockenhorde',
  numberOfPressBeds: 'Zahl der Drucktische',
  wholeNumberFrom1To: 'eine ganze Zahl von 1 bis 8',
  setUpTakesMinutes: (number, ceil, hoursPerDay) =>
    `Einrichtung ${number} dauert mit Auswaschen ${ceil} Minuten, mehr als einen Tag von ${hoursPerDay} h: weniger Bögen darin drucken oder den Tag verlängern.`,
  inkHasNoDrying: (ink) => `Farbe ${ink} hat keine Trockenzeit: eine angeben.`,
  setUps: (numbers, numbers2) => `${plural(numbers, { one: 'Einrichtung', other: 'Einrichtungen' })} ${numbers2}`,
  racksHoldWetSheets: (places, setUps, minutes) =>
    `Die Trockenhorde fasst ${places} ${plural(places, { one: 'nassen Bogen', other: 'nasse Bögen' })}, zu wenige für ${setUps}: die Presse wartet ${minutes} auf Bögen, die sich stapeln lassen; mehr Plätze schaffen oder weniger Bögen drucken.`,
  pullOrderNeedsDays: ({ daysNeeded, hoursPerDay, days, setUps, late }) =>
    `Die Druckfolge braucht ${daysNeeded} Tage von ${hoursPerDay} h, und der Besuch hat ${days}: ${setUps} ${plural(late, { one: 'passt', other: 'passen' })} nicht hinein; Rezepte oder Bögen weglassen oder den Besuch verlängern.`,
};
