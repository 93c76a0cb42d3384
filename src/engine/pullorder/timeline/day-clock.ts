import type { VisitDays } from '../types.ts';

/** Minutes from one day's start to the next. */
export const DAY_MINUTES = 24 * 60;

/** Work over days with lunch. Minutes count from the first day's start. */
export interface DayClock {
  /** The first minute at or after `at` that is not lunch. */
  afterLunch(at: number): number;
  /** When work of so many minutes that begins at `at` ends; lunch interrupts it. */
  workEnd(at: number, minutes: number): number;
  /** When a piece that lunch must not interrupt begins, at `at` or later. */
  pieceStart(at: number, minutes: number): number;
  /** Minutes of lunch between two moments of one day. */
  lunchBetween(from: number, to: number): number;
  /** When a day, from 0, closes. */
  closes(day: number): number;
}

/** The clock of a visit's days; a lunch that begins when the day's work is over falls away. */
export function dayClock({ hoursPerDay, lunch }: Pick<VisitDays, 'hoursPerDay' | 'lunch'>): DayClock {
  const work = hoursPerDay * 60;
  const held = lunch !== undefined && lunch.minutes > 0 && lunch.fromMinute > 0 && lunch.fromMinute < work;
  const length = held ? lunch.minutes : 0;
  const begins = held ? lunch.fromMinute : Infinity;
  /** Numbers alone and no pairs of them: a search for an order asks millions of times. */
  const lunchFrom = (at: number): number => Math.floor(at / DAY_MINUTES) * DAY_MINUTES + begins;
  const afterLunch = (at: number): number => {
    const from = lunchFrom(at);
    return at >= from && at < from + length ? from + length : at;
  };
  return {
    afterLunch,
    workEnd(at, minutes) {
      const start = afterLunch(at);
      const from = lunchFrom(start);
      return start + minutes + (start < from && start + minutes > from ? length : 0);
    },
    pieceStart(at, minutes) {
      const start = afterLunch(at);
      const from = lunchFrom(start);
      return start < from && start + minutes > from + 1e-9 ? from + length : start;
    },
    lunchBetween(from, to) {
      const lunchAt = lunchFrom(from);
      return Math.max(0, Math.min(to, lunchAt + length) - Math.max(from, lunchAt));
    },
    closes: (day) => day * DAY_MINUTES + work + length,
  };
}
