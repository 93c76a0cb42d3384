import { defined, entryAt } from '../base/at.ts';
import { cutText } from '../base/bounds.ts';
import { EngineError, type Problem } from '../base/error.ts';
import { say } from '../words/en/log/log.ts';
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
    throw new EngineError('log.visit', say.thisLogIsOf(cutText(other.head.title)));
  }
  const { events, conflicts } = together([...one.events, ...other.events]);
  const inTime = inOrder(events);
  return { log: { ...one, events: inTime }, conflicts: [...conflicts, ...checkLog(one.head, inTime, pairs)] };
}

/** An event and what it says besides its id. */
interface Said {
  event: LogEvent;
  text: string;
}

/**
 * Every event once. Of different events under one id the least keeps it, and the others go on to the
 * next name, where it may be the same again after an earlier merge.
 */
function together(all: readonly LogEvent[]): { events: LogEvent[]; conflicts: Problem[] } {
  const byId = new Map<string, Map<string, LogEvent>>();
  for (const event of all) {
    const text = JSON.stringify(sorted({ ...event, id: '' }));
    const there = byId.get(event.id);
    if (there === undefined) byId.set(event.id, new Map([[text, event]]));
    else if (!there.has(text)) there.set(text, event);
  }
  const conflicts: Problem[] = [];
  for (const id of [...byId.keys()].sort()) {
    if (defined(byId.get(id)).size === 1) continue;
    const waiting: Said[] = [];
    for (let name = id, head = 0; ; name = nextName(name)) {
      for (const [text, event] of byId.get(name) ?? []) insert(waiting, head, { event, text });
      const least = entryAt(waiting, head++);
      for (const event of byId.get(name)?.values() ?? []) if (event !== least.event) conflicts.push(conflict(event));
      byId.set(name, new Map([[least.text, { ...least.event, id: name }]]));
      if (head === waiting.length) break;
    }
  }
  return { events: [...byId.values()].flatMap((same) => [...same.values()]), conflicts };
}

/** Puts an event where it belongs by what it says, unless another says the same. */
function insert(waiting: Said[], head: number, said: Said): void {
  let [from, to] = [head, waiting.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (entryAt(waiting, middle).text < said.text) from = middle + 1;
    else to = middle;
  }
  if (waiting[from]?.text !== said.text) waiting.splice(from, 0, said);
}

function conflict(event: LogEvent): Problem {
  return {
    code: 'log.double',
    message: say.sheetTwoEntriesHave(event.sheet),
    where: `event ${event.id}`,
  };
}

/** 'x b' of 'x', 'x b b' of 'x b'; numbered from the tenth on, so that no name grows without end. */
function nextName(id: string): string {
  const numbered = /^(.*) b(\d+)$/su.exec(id);
  if (numbered !== null) return `${entryAt(numbered, 1)} b${Number(entryAt(numbered, 2)) + 1}`;
  return id.endsWith(' b'.repeat(8)) ? `${id.slice(0, -16)} b9` : `${id} b`;
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
