import { plural, speak } from '../../language.ts';

export const say = speak('engine/pullorder/timeline', {
  isGive: (name: string, value: number, allowed: string) => `The ${name} is ${value}: give ${allowed}.`,
  numberOfPullsPer: 'number of pulls per hour',
  moreThan0: 'more than 0',
  timeOfFurtherStroke: 'time of a further stroke',
  mountTime: 'mount time',
  washUpTime: 'wash-up time',
  registerTime: 'register time',
  mixingTime: 'mixing time',
  lengthOfLunch: 'length of lunch',
  dryingTimeOfInk: (ink: string) => `drying time of ink ${ink}`,
  n0MinutesOrMore: '0 minutes or more',
  numberOfDays: 'number of days',
  wholeNumberFrom1: 'a whole number from 1',
  lengthOfDay: 'length of a day',
  moreThan0And: 'more than 0 and at most 24 hours',
  lengthOfDayWith: 'length of a day with lunch',
  atMost24Hours: 'at most 24 hours',
  numberOfRackPlaces: 'number of rack places',
  numberOfPressBeds: 'number of press beds',
  wholeNumberFrom1To: 'a whole number from 1 to 8',
  setUpTakesMinutes: (number: number, ceil: number, hoursPerDay: number) =>
    `Set-up ${number} takes ${ceil} minutes with washing up, more than a day of ${hoursPerDay} h: print fewer sheets in it or make the day longer.`,
  inkHasNoDrying: (ink: string) => `Ink ${ink} has no drying time: give it one.`,
  setUps: (numbers: number, numbers2: string) => `${plural(numbers, { one: 'set-up', other: 'set-ups' })} ${numbers2}`,
  racksHoldWetSheets: (places: number, setUps: string, minutes: string) =>
    `The racks hold ${places} wet ${plural(places, { one: 'sheet', other: 'sheets' })}, too few for ${setUps}: the press waits ${minutes} for sheets that can be stacked; find more places or print fewer sheets.`,
  pullOrderNeedsDays: ({
    daysNeeded,
    hoursPerDay,
    days,
    setUps,
    late,
  }: {
    daysNeeded: number;
    hoursPerDay: number;
    days: number;
    setUps: string;
    late: number;
  }) =>
    `The pull order needs ${daysNeeded} days of ${hoursPerDay} h and the visit has ${days}: ${setUps} ${plural(late, { one: 'does', other: 'do' })} not fit; leave out recipes or sheets, or lengthen the visit.`,
});
