import { openedOnce } from './storage-open.ts';

/** A database of its own: what the press works from can be planned anew, so it never stands in the project's way. */
const STORE = 'press';

const db = openedOnce('pullstack-press', 'the pull order', { [STORE]: {} });

/** The parts of the pull order that the press works from, as they were saved; empty when there are none. */
export async function readPress(): Promise<Record<string, unknown>> {
  const transaction = (await db()).transaction(STORE);
  const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
  return Object.fromEntries(keys.map((key, i) => [String(key), values[i]]));
}

/** Writes the named parts in one transaction. */
export async function writePress(parts: Record<string, unknown>): Promise<void> {
  const transaction = (await db()).transaction(STORE, 'readwrite', { durability: 'strict' });
  for (const [part, value] of Object.entries(parts)) void transaction.store.put(value, part);
  await transaction.done;
}
