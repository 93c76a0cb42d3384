import { describe, expect, it } from 'vitest';
import type { PressPlan } from '../../../src/engine/visit/visit.ts';
import { calendarOf, type DatedVisit, isWeekend, oneAfterTheOther, visitDays } from '../../../src/engine/visitfile/calendar.ts';

const serial = (iso: string): number => Date.parse(`${iso}T00:00:00Z`) / 86_400_000;

/** A visit of some days, each from 9:30 for so many minutes. */
function visit(title: string, firstDay: string, days: number, { minutes = 300, startMinute = 570 } = {}): DatedVisit {
  const parts = Array.from({ length: days }, (_, i) => [
    { kind: 'mount' as const, setUp: i, day: i + 1, bed: 0, fromMinute: 0, toMinute: 15 },
    { kind: 'print' as const, setUp: i, day: i + 1, bed: 0, fromMinute: 15, toMinute: minutes },
  ]).flat();
  const times = parts.filter(({ kind }) => kind === 'print').map(({ day, bed }) => ({ day, bed }) as PressPlan['times'][number]);
  return {
    title,
    firstDay: serial(firstDay),
    days: visitDays({ times, parts, clock: { startMinute, workMinutes: 420, lunch: null } }),
  };
}

describe('the calendar of a press', () => {
  it('should know Saturdays and Sundays as the calendar does', () => {
    // By the platform's own calendar, two weeks over the end of a year.
    for (let date = serial('2026-12-24'); date < serial('2027-01-10'); date++) {
      const day = new Date(date * 86_400_000).getUTCDay();
      expect(isWeekend(date)).toBe(day === 0 || day === 6);
    }
  });

  it('should leave week-ends out between the days of a visit', () => {
    // By hand: Thursday 26 November 2026, three days: Thursday, Friday, Monday.
    const { entries, clashes } = calendarOf([visit('A', '2026-11-26', 3)]);
    expect(entries.map(({ date, day, fromMinute, toMinute, setUps }) => [date, day, fromMinute, toMinute, setUps])).toEqual([
      [serial('2026-11-26'), 1, 570, 870, 1],
      [serial('2026-11-27'), 2, 570, 870, 1],
      [serial('2026-11-30'), 3, 570, 870, 1],
    ]);
    expect(clashes).toEqual([]);
  });

  it('should name two visits that want the bed at one time, and put one after the other', () => {
    const visits = [visit('A', '2026-11-26', 2), visit('B', '2026-11-27', 2), visit('C', '2026-11-27', 1)];
    const { clashes } = calendarOf(visits);
    expect(clashes.map((pair) => pair.map(({ visit: at }) => at))).toEqual([
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
    const firstDays = oneAfterTheOther(visits);
    expect(firstDays).toEqual(['2026-11-26', '2026-11-30', '2026-12-02'].map(serial));
    expect(calendarOf(visits.map((each, i) => ({ ...each, firstDay: firstDays[i]! }))).clashes).toEqual([]);
  });

  it('should let two share a day where one has ended before the other begins', () => {
    const short = visit('A', '2026-11-26', 1, { minutes: 60 });
    const after = (startMinute: number): DatedVisit => visit('B', '2026-11-26', 1, { minutes: 60, startMinute });
    expect(calendarOf([short, after(630)]).clashes).toEqual([]);
    expect(calendarOf([short, after(629)]).clashes).toHaveLength(1);
  });
});
