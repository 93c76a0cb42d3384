import { type IDBPDatabase, openDB } from 'idb';

/** Versions from here on are of a later program; below, each repair takes one. */
const LATER_FROM = 1000;

/** What a database holds: its stores, with their keys. */
type Stores = Record<string, IDBObjectStoreParameters>;

interface Place {
  open(): Promise<IDBPDatabase>;
  /** What is kept there, for a sentence: 'the log of visits'. */
  words: string;
  lost: boolean;
}

const places: Place[] = [];

function missingOf(database: IDBPDatabase, stores: Stores): string[] {
  return Object.keys(stores).filter((store) => !database.objectStoreNames.contains(store));
}

async function openWhole(name: string, stores: Stores, forget: () => void): Promise<{ database: IDBPDatabase; lost: boolean }> {
  const hooks = {
    upgrade(fresh: IDBPDatabase) {
      for (const store of missingOf(fresh, stores)) fresh.createObjectStore(store, stores[store]);
    },
    terminated: forget,
    // Another tab has to repair it: this one opens it again when it is next asked for.
    blocking(_current: number, _next: number | null, event: IDBVersionChangeEvent) {
      (event.target as unknown as IDBDatabase).close();
      forget();
    },
  };
  const database = await openDB(name, undefined, hooks);
  const { version } = database;
  if (version < LATER_FROM && missingOf(database, stores).length === 0) return { database, lost: false };
  database.close();
  if (version >= LATER_FROM) throw new Error('it was made by a later version of this program');
  return { database: await openDB(name, version + 1, hooks), lost: true };
}

/**
 * A database that is opened when first asked for, and anew when opening failed or the browser closed it.
 * Stores that it has lost are made again, empty.
 * @param words what is kept there, for a sentence
 */
export function openedOnce(name: string, words: string, stores: Stores): () => Promise<IDBPDatabase> {
  let opening: Promise<IDBPDatabase> | undefined;
  const forget = (): void => {
    opening = undefined;
  };
  const open = (): Promise<IDBPDatabase> => {
    if (opening === undefined) {
      opening = openWhole(name, stores, forget).then(({ database, lost }) => {
        place.lost ||= lost;
        return database;
      });
      opening.catch(forget);
    }
    return opening;
  };
  const place: Place = { open, words, lost: false };
  places.push(place);
  return open;
}

/** What was kept in databases that had lost their stores when they were opened; opens all of them. */
export async function lostPlaces(): Promise<string[]> {
  await Promise.allSettled(places.map(({ open }) => open()));
  return places.filter(({ lost }) => lost).map(({ words }) => words);
}
