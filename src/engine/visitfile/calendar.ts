import { entryAt } from '../base/at.ts';
import type { PressPlan } from '../visit/visit.ts';

/** A visit and the calendar day on which it begins. */
export interface DatedVisit {
  title: string;
  plan: Pick<PressPlan, 'times' | 'parts' | 'clock' | 'daysNeeded'>;
  /** Whole days since 1 January 1970, a Thursday. */
  firstDay: number;
}

/** A day of a visit at a bed. */
export interface CalendarEntry {
  /** Index of the visit. */
  visit: number;
  /** Whole days since 1 January 1970. */
  date: number;
  /** Of the visit, from 1. */
  day: number;
  bed: number;
  /** From the first mount to the last wash-up, minutes after midnight. */
  fromMinute: number;
  toMinute: number;
  setUps: number;
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
  const entries = visits.flatMap(({ plan, firstDay }, visit) => entriesOf(plan, firstDay, visit));
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

function entriesOf({ times, parts, clock }: DatedVisit['plan'], firstDay: number, visit: number): CalendarEntry[] {
  const found = new Map<string, CalendarEntry>();
  for (const { day, bed, fromMinute, toMinute } of parts) {
    const key = `${day} ${bed}`;
    const from = clock.startMinute + fromMinute;
    const to = clock.startMinute + toMinute;
    const entry = found.get(key);
    if (entry === undefined) {
      const setUps = times.filter((time) => time.day === day && time.bed === bed).length;
      found.set(key, { visit, date: dateOf(firstDay, day), day, bed, fromMinute: from, toMinute: to, setUps });
    } else {
      entry.fromMinute = Math.min(entry.fromMinute, from);
      entry.toMinute = Math.max(entry.toMinute, to);
    }
  }
  return [...found.values()];
}

/** First days at which each visit begins on the working day after the one before has ended; the first stays. */
export function oneAfterTheOther(visits: readonly DatedVisit[]): number[] {
  const firstDays: number[] = [];
  for (const [at, { plan, firstDay }] of visits.entries()) {
    const before = at === 0 ? null : entryAt(visits, at - 1);
    const begin = before === null ? firstDay : dateOf(entryAt(firstDays, at - 1), before.plan.daysNeeded + 1);
    firstDays.push(dateOf(begin, 1));
    if (plan.daysNeeded < 1) firstDays[at] = begin;
  }
  return firstDays;
}
