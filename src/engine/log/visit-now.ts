import type { VisitNow } from './rest-input.ts';
import type { LogEvent } from './types.ts';

/** A moment on the clock at the press. */
export interface LocalTime {
  /** Names the day, another for each. */
  day: string;
  /** Minutes after midnight. */
  minuteOfDay: number;
}

/**
 * Which day of a visit a moment is, by the days on which something was logged, and its time of day.
 * @param atMs the moment, ms since 1970 UTC
 * @param localTime reads the clock at the press, from ms since 1970 UTC
 */
export function visitNow(events: readonly LogEvent[], atMs: number, localTime: (ms: number) => LocalTime): VisitNow {
  const { day, minuteOfDay } = localTime(atMs);
  const days = new Set(events.filter((event) => event.atMs <= atMs).map((event) => localTime(event.atMs).day));
  days.add(day);
  return { atMs, day: days.size, minuteOfDay };
}
