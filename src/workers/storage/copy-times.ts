const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** A copy is made when the last is older, ms. */
export const COPY_EVERY_MS = 5 * MINUTE;

/** Ages at which one span ends and the next begins, ms: of each span one copy stays, besides the newest. */
const SPANS_MS = [HOUR, DAY, 7 * DAY];

/**
 * Which copies stay: the newest, and the oldest of each span of time, so that each grows old into the next.
 * @param times when copies were made, ms; in any order
 * @param now ms
 * @returns at most five of the times: of minutes, of the last hour, of the last day, of the last week, and one before
 */
export function copiesToKeep(times: readonly number[], now: number): number[] {
  const kept = new Map<number, number>();
  const newestFirst = [...times].sort((a, b) => b - a);
  // A clock that was set back must not make every copy the newest.
  const span = (time: number): number => SPANS_MS.filter((end) => now - time > end).length;
  for (const time of newestFirst) kept.set(span(time), time);
  return [...new Set([...newestFirst.slice(0, 1), ...kept.values()])];
}
