import type { VisitHead } from '../../engine/log/types.ts';
import { openedOnce } from './storage-open.ts';

/** A database of its own: it is only ever added to, whatever becomes of the project. */
const VISITS = 'visits';
const EVENTS = 'events';

const db = openedOnce('pullstack-log', 'the log of visits', { [VISITS]: { keyPath: 'id' }, [EVENTS]: {} });

/** All events of a visit: an array sorts after every text, so this ends the visit's keys. */
function ofVisit(visit: string): IDBKeyRange {
  return IDBKeyRange.bound([visit], [visit, []]);
}

/** All visits of which something was logged, unchecked. */
export async function readVisits(): Promise<unknown[]> {
  return (await db()).getAll(VISITS);
}

/** What was logged of a visit, in no order, unchecked. */
export async function readEvents(visit: string): Promise<unknown[]> {
  return (await db()).getAll(EVENTS, ofVisit(visit));
}

/**
 * Adds events in one transaction that ends when they are on the disk; what is there stays as it is.
 * @param head kept with the first of them
 */
export async function addEvents(head: VisitHead, events: readonly unknown[]): Promise<void> {
  const transaction = (await db()).transaction([VISITS, EVENTS], 'readwrite', { durability: 'strict' });
  const [visits, log] = [transaction.objectStore(VISITS), transaction.objectStore(EVENTS)];
  const work = [
    visits.getKey(head.id).then((known) => (known === undefined ? visits.add(head) : undefined)),
    ...(events as { id: string }[]).map((event) => {
      const key = [head.id, event.id];
      return log.getKey(key).then((known) => (known === undefined ? log.add(event, key) : undefined));
    }),
  ];
  await Promise.all([...work, transaction.done]);
}
