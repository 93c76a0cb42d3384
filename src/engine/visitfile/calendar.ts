import { entryAt } from '../base/at.ts';
import type { PressPlan } from '../visit/visit.ts';

/** A day of a visit at a bed. */
export interface VisitDay {
  /** Of the visit, from 1. */
  day: number;
  bed: number;
  /** From the first mount to the last wash-up, minutes after midnight. */
  fromMinute: number;
  toMinute: number;
  setUps: number;
}

/** A visit and the calendar day on which it begins. */
export interface DatedVisit {
  title: string;
  days: readonly VisitDay[];
  /** Whole days since 1 January 1970, a Thursday. */
  firstDay: number;
}

/** A day of a visit at a bed, in the calendar. */
export interface CalendarEntry extends VisitDay {
  /** Index of the visit. */
  visit: number;
  /** Whole days since 1 January 1970. */
  date: number;
}

/** Whether work rests on a day: Saturdays and Sundays. Source: ISO 8601 counts Monday as the first day of a week; day 0 was a Thursday. */
export function isWeekend(date: number): boolean {
  return (((date + 3) % 7) + 7) % 7 >= 5;
}

/** The date of a visit's day: its days follow each other, Saturdays and Sundays left out. */
function dateOf(firstDay: number, day: number): number {
  let date = firstDay;
  while (isWeekend(date)) date++;
  for (let left = day - 1; left > 0; left--)
    do date++;
    while (isWeekend(date));
  return date;
}

/**
 * Puts visits of several projects on one press into the calendar.
 * @returns their days by date, bed and time, and which two of them want one bed at one time
 */
export function calendarOf(visits: readonly DatedVisit[]): { entries: CalendarEntry[]; clashes: [CalendarEntry, CalendarEntry][] } {
  const entries = visits.flatMap(({ days, firstDay }, visit) =>
    days.map((each): CalendarEntry => ({ ...each, visit, date: dateOf(firstDay, each.day) })),
  );
  entries.sort((a, b) => a.date - b.date || a.bed - b.bed || a.fromMinute - b.fromMinute || a.visit - b.visit);
  const clashes = entries.flatMap((entry, i) =>
    entries
      .slice(i + 1)
      .filter(
        (other) => other.visit !== entry.visit && other.date === entry.date && other.bed === entry.bed && other.fromMinute < entry.toMinute,
      )
      .map((other): [CalendarEntry, CalendarEntry] => [entry, other]),
  );
  return { entries, clashes };
}

/** The days of an order at each bed: all that a calendar needs of it. */
export function visitDays({ times, parts, clock }: Pick<PressPlan, 'times' | 'parts' | 'clock'>): VisitDay[] {
  const found = new Map<string, VisitDay>();
  for (const { day, bed, fromMinute, toMinute } of parts) {
    const key = `${day} ${bed}`;
    const from = clock.startMinute + fromMinute;
    const to = clock.startMinute + toMinute;
    const entry = found.get(key);
    if (entry === undefined) {
      const setUps = times.filter((time) => time.day === day && time.bed === bed).length;
      found.set(key, { day, bed, fromMinute: from, toMinute: to, setUps });
    } else {
      entry.fromMinute = Math.min(entry.fromMinute, from);
      entry.toMinute = Math.max(entry.toMinute, to);
    }
  }
  return [...found.values()];
}

/** How many days a visit takes. */
export function daysOf({ days }: Pick<DatedVisit, 'days'>): number {
  return days.reduce((most, { day }) => Math.max(most, day), 0);
}

/** First days at which each visit begins on the working day after the one before has ended; the first stays. */
export function oneAfterTheOther(visits: readonly DatedVisit[]): number[] {
  const firstDays: number[] = [];
  for (const [at, visit] of visits.entries()) {
    const before = at === 0 ? null : entryAt(visits, at - 1);
    const begin = before === null ? visit.firstDay : dateOf(entryAt(firstDays, at - 1), daysOf(before) + 1);
    firstDays.push(daysOf(visit) < 1 ? begin : dateOf(begin, 1));
  }
  return firstDays;
}
