/** What is known of copies outside the browser: when the last was saved, what was changed since, when it was last said. */
export interface CopyState {
  /** ms since 1970; null when none was saved. */
  savedMs: number | null;
  /** When the first change since then was made, ms; null when there was none. */
  changedMs: number | null;
  changes: number;
  toldMs: number | null;
}

export const NO_COPY: CopyState = { savedMs: null, changedMs: null, changes: 0, toldMs: null };

const HOUR_MS = 3_600_000;
/** So much work is worth a copy. */
const WORTH_CHANGES = 60;
/** What was changed so long ago is no longer fresh in mind, ms. */
const WORTH_MS = 8 * HOUR_MS;
/** It is said no more often, ms. */
const SAID_EVERY_MS = 24 * HOUR_MS;

/**
 * Whether it is time to speak of a copy outside the browser: enough was changed, some hours have gone, and it was
 * not said within a day.
 * @param now ms since 1970, by the clock of the device
 */
export function copyIsDue({ changedMs, changes, toldMs }: CopyState, now: number): boolean {
  // A clock that was set back must not silence it for ever.
  const since = (ms: number): number => Math.abs(now - ms);
  if (changedMs === null || changes < WORTH_CHANGES || since(changedMs) < WORTH_MS) return false;
  return toldMs === null || since(toldMs) >= SAID_EVERY_MS;
}
