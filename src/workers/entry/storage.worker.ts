import * as Comlink from 'comlink';
import { type IDBPDatabase, openDB } from 'idb';
import { keepErrorFields } from '../api/errors.ts';
import type { StorageApi, StoredProject } from '../api/storage-api.ts';
import { addEvents, readEvents, readVisits } from '../jobs/storage-log.ts';
import { readPress, writePress } from '../jobs/storage-press.ts';

const DATABASE = 'pullstack';
const SECTIONS = 'sections';
const ASIDE = 'aside';
const LOCK = 'pullstack-project';

let database: Promise<IDBPDatabase> | undefined;

function db(): Promise<IDBPDatabase> {
  database ??= openDB(DATABASE, 1, {
    upgrade(fresh) {
      fresh.createObjectStore(SECTIONS);
      fresh.createObjectStore(ASIDE, { autoIncrement: true });
    },
  });
  return database;
}

/** Held until the tab closes, so that two tabs never write over each other. */
function takeLock(): Promise<boolean> {
  return new Promise((resolve) => {
    void navigator.locks.request(LOCK, { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      return lock === null ? undefined : new Promise(() => {});
    });
  });
}

async function sections(): Promise<Record<string, unknown> | null> {
  const transaction = (await db()).transaction(SECTIONS);
  const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()]);
  if (keys.length === 0) return null;
  return Object.fromEntries(keys.map((key, i) => [String(key), values[i]]));
}

const storage: StorageApi = {
  async open(): Promise<StoredProject> {
    const [project, writable] = await Promise.all([sections(), takeLock()]);
    return { project, writable };
  },
  async save(changed) {
    const transaction = (await db()).transaction(SECTIONS, 'readwrite', { durability: 'strict' });
    for (const [section, value] of Object.entries(changed)) void transaction.store.put(value, section);
    await transaction.done;
  },
  async setAside(reason) {
    const saved = await sections();
    const transaction = (await db()).transaction([SECTIONS, ASIDE], 'readwrite');
    void transaction.objectStore(ASIDE).add({ reason, saved });
    void transaction.objectStore(SECTIONS).clear();
    await transaction.done;
  },
  openPress: readPress,
  savePress: writePress,
  readVisits,
  readEvents,
  addEvents,
};

keepErrorFields();
Comlink.expose(storage);
