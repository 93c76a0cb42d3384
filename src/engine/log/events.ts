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
 * What still counts: without events that were undone, and without the undoing itself. An undoing that
 * was itself undone did not happen, so what it named counts again.
 * @returns in the order in which it happened
 */
export function standing(events: readonly LogEvent[]): Exclude<LogEvent, { kind: 'undone' }>[] {
  const sorted = inOrder(events);
  const takenBackBy = new Map<string, string[]>();
  for (const event of sorted) {
    if (event.kind !== 'undone') continue;
    const list = takenBackBy.get(event.event);
    if (list === undefined) takenBackBy.set(event.event, [event.id]);
    else list.push(event.id);
  }
  const known = new Map<string, boolean>();
  const counts = (id: string): boolean => {
    const answer = known.get(id);
    if (answer !== undefined) return answer;
    // Undoings that name each other in a circle: the one that is met again counts not.
    known.set(id, false);
    const stands = !(takenBackBy.get(id) ?? []).some(counts);
    known.set(id, stands);
    return stands;
  };
  return sorted.filter((event): event is Exclude<LogEvent, { kind: 'undone' }> => event.kind !== 'undone' && counts(event.id));
}
