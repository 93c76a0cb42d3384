import type { VisitNow } from '../../../engine/log/rest-input.ts';
import type { LogEvent } from '../../../engine/log/types.ts';

function dateOf(ms: number): string {
  const date = new Date(ms);
  return [date.getFullYear(), date.getMonth(), date.getDate()].join('-');
}

/** Which day of a visit a moment is, by the days on which something was logged, and its time on this device's clock. */
export function visitNow(events: readonly LogEvent[], atMs: number): VisitNow {
  const date = new Date(atMs);
  const days = new Set(events.filter((event) => event.atMs <= atMs).map((event) => dateOf(event.atMs)));
  days.add(dateOf(atMs));
  return { atMs, day: days.size, minuteOfDay: date.getHours() * 60 + date.getMinutes() };
}
