import { EngineError, type Problem } from '../base/error.ts';
import { checkLog } from './check.ts';
import { inOrder } from './events.ts';
import type { OrderPairs } from './turns.ts';
import type { LogEvent, VisitLog } from './types.ts';

/**
 * Puts the logs of two devices together. Every event of both is kept; two different events under
 * one id stand side by side.
 * @param pairs as `checkLog` takes it
 * @returns the log, the same whichever is named first, and what contradicts itself in it
 * @throws EngineError 'log.visit' when the logs are of two visits
 */
export function mergeLogs(one: VisitLog, other: VisitLog, pairs?: OrderPairs): { log: VisitLog; conflicts: Problem[] } {
  if (one.head.id !== other.head.id) {
    throw new EngineError('log.visit', `This log is of another visit, ${other.head.title}; open that visit to bring it in.`);
  }
  const conflicts: Problem[] = [];
  const kept = new Map<string, { event: LogEvent; text: string }>();
  const put = (event: LogEvent): void => {
    const text = JSON.stringify(sorted(event));
    const there = kept.get(event.id);
    if (there === undefined) kept.set(event.id, { event, text });
    else if (there.text !== text) {
      conflicts.push({
        code: 'log.double',
        message: `Sheet ${event.sheet}: two entries have one name but say different things; both are kept, so undo the one that is wrong.`,
        where: `event ${event.id}`,
      });
      const [first, second] = there.text < text ? [there.event, event] : [event, there.event];
      kept.set(event.id, { event: first, text: JSON.stringify(sorted(first)) });
      // The next name may be taken as well, by what an earlier merge put there.
      put({ ...second, id: `${event.id} b` });
    }
  };
  for (const event of [...one.events, ...other.events]) put(event);
  const events = inOrder([...kept.values()].map(({ event }) => event));
  return { log: { ...one, events }, conflicts: [...conflicts, ...checkLog(one.head, events, pairs)] };
}

/** The same fields in the same order, however they were written. */
function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, entry]) => [key, sorted(entry)]),
  );
}
