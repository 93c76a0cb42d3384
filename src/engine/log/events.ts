import type { LogEvent } from './types.ts';

function byTime(a: LogEvent, b: LogEvent): number {
  if (a.atMs !== b.atMs) return a.atMs - b.atMs;
  if (a.device !== b.device) return a.device < b.device ? -1 : 1;
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
}

/** Events as they happened: by clock, then device, then id, so that every device sorts them alike. */
export function inOrder(events: readonly LogEvent[]): LogEvent[] {
  return [...events].sort(byTime);
}

/**
 * What still counts: without events that were undone, and without the undoing itself.
 * @returns in the order in which it happened
 */
export function standing(events: readonly LogEvent[]): Exclude<LogEvent, { kind: 'undone' }>[] {
  const undone = new Set(events.flatMap((event) => (event.kind === 'undone' ? [event.event] : [])));
  return inOrder(events).filter(
    (event): event is Exclude<LogEvent, { kind: 'undone' }> => event.kind !== 'undone' && !undone.has(event.id),
  );
}
