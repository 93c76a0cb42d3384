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
  const counts = standingOf(takenBackBy);
  return sorted.filter((event): event is Exclude<LogEvent, { kind: 'undone' }> => event.kind !== 'undone' && counts(event.id));
}

/** An event that is looked at, and how many of those that take it back were looked at. */
interface Looked {
  id: string;
  next: number;
}

/** Whether an event counts; undoings of undoings may go on for ever, so they are followed in a loop. */
function standingOf(takenBackBy: ReadonlyMap<string, readonly string[]>): (id: string) => boolean {
  const known = new Map<string, boolean>();
  return (asked) => {
    const way: Looked[] = [];
    const look = (id: string): void => {
      // Undoings that name each other in a circle: the one that is met again counts not.
      known.set(id, false);
      way.push({ id, next: 0 });
    };
    if (!known.has(asked)) look(asked);
    for (let top = way.at(-1); top !== undefined; top = way.at(-1)) {
      const undoing = takenBackBy.get(top.id)?.[top.next];
      if (undoing === undefined) {
        known.set(top.id, true);
        way.pop();
        continue;
      }
      const answer = known.get(undoing);
      if (answer === undefined) {
        look(undoing);
        continue;
      }
      top.next++;
      if (answer) way.pop();
    }
    return known.get(asked) === true;
  };
}
