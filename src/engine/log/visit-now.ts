import type { VisitNow } from './rest-input.ts';
import type { LogEvent, VisitHead } from './types.ts';

/** A moment on the clock at the press. */
export interface LocalTime {
  /** Names the day, another for each. */
  day: string;
  /** Minutes after midnight. */
  minuteOfDay: number;
}

/**
 * Which day of a visit a moment is, by the days on which something was logged, and its time of day. Entries from
 * before the visit began were stamped by a clock that was set wrong and make no day of it.
 * @param atMs the moment, ms since 1970 UTC
 * @param localTime reads the clock at the press, from ms since 1970 UTC
 */
export function visitNow(
  { head, events }: { head: Pick<VisitHead, 'begunMs'> | null; events: readonly LogEvent[] },
  atMs: number,
  localTime: (ms: number) => LocalTime,
): VisitNow {
  const { day, minuteOfDay } = localTime(atMs);
  const begunMs = head?.begunMs ?? 0;
  const firstDay = localTime(begunMs).day;
  const days = new Set<string>();
  for (const event of events) {
    const on = localTime(event.atMs).day;
    if (event.atMs <= atMs && (event.atMs >= begunMs || on === firstDay)) days.add(on);
  }
  days.add(day);
  return { atMs, day: days.size, minuteOfDay };
}
