import type { IDBPDatabase } from 'idb';
import type { StoredProject } from '../api/storage-api.ts';
import { keepCopy } from './storage-kept.ts';
import { openedOnce } from './storage-open.ts';

const SECTIONS = 'sections';
const ASIDE = 'aside';

const db = openedOnce('pullstack', 'the project', { [SECTIONS]: {}, [ASIDE]: { autoIncrement: true } });

/** The saved project at one moment, or, where the disk has lost a section, all the others one by one. */
export async function openProject(): Promise<StoredProject> {
  const database = await db();
  try {
    const transaction = database.transaction(SECTIONS);
    const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll(), transaction.done]);
    return { project: keys.length === 0 ? null : Object.fromEntries(keys.map((key, i) => [String(key), values[i]])), unread: [] };
  } catch {
    return openBySections(database);
  }
}

async function openBySections(database: IDBPDatabase): Promise<StoredProject> {
  const keys = (await database.getAllKeys(SECTIONS)).map(String);
  if (keys.length === 0) return { project: null, unread: [] };
  const project: Record<string, unknown> = {};
  const unread: string[] = [];
  for (const key of keys) {
    try {
      project[key] = await database.get(SECTIONS, key);
    } catch {
      unread.push(key);
    }
  }
  return { project, unread };
}

/** Writes the named sections in one transaction; what was there is copied before, when the last copy is some minutes old. */
export async function saveSections(changed: Record<string, unknown>): Promise<void> {
  await keepCopy(openProject);
  const transaction = (await db()).transaction(SECTIONS, 'readwrite', { durability: 'strict' });
  put(transaction.store, changed);
  await transaction.done;
}

/** Writes these sections in place of all others, in one transaction. */
export async function replaceSections(sections: Record<string, unknown>): Promise<void> {
  const transaction = (await db()).transaction(SECTIONS, 'readwrite', { durability: 'strict' });
  void transaction.store.clear();
  put(transaction.store, sections);
  await transaction.done;
}

function put(store: { put(value: unknown, key: string): unknown }, sections: Record<string, unknown>): void {
  for (const [section, value] of Object.entries(sections)) void store.put(value, section);
}

/** Takes out what was put aside by builds that kept it here, one at a time, once it is kept elsewhere. */
export async function moveOldAside(keep: (reason: string, saved: Record<string, unknown>) => Promise<void>): Promise<void> {
  const database: IDBPDatabase = await db();
  for (const key of await database.getAllKeys(ASIDE)) {
    const old = (await database.get(ASIDE, key)) as { reason?: unknown; saved?: unknown } | undefined;
    if (typeof old?.saved === 'object' && old.saved !== null) await keep(String(old.reason), old.saved as Record<string, unknown>);
    await database.delete(ASIDE, key);
  }
}
