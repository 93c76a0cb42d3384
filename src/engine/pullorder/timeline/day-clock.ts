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
  const lunchOf = (at: number): [number, number] => {
    if (!held) return [Infinity, Infinity];
    const from = Math.floor(at / DAY_MINUTES) * DAY_MINUTES + lunch.fromMinute;
    return [from, from + length];
  };
  const afterLunch = (at: number): number => {
    const [from, to] = lunchOf(at);
    return at >= from && at < to ? to : at;
  };
  return {
    afterLunch,
    workEnd(at, minutes) {
      const start = afterLunch(at);
      return start + minutes + (start < lunchOf(at)[0] && start + minutes > lunchOf(at)[0] ? length : 0);
    },
    pieceStart(at, minutes) {
      const start = afterLunch(at);
      const [from, to] = lunchOf(at);
      return start < from && start + minutes > from + 1e-9 ? to : start;
    },
    lunchBetween(from, to) {
      const [start, end] = lunchOf(from);
      return Math.max(0, Math.min(to, end) - Math.max(from, start));
    },
    closes: (day) => day * DAY_MINUTES + work + length,
  };
}
