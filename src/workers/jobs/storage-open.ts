import { type IDBPDatabase, openDB } from 'idb';

/**
 * A database that is opened when first asked for, and anew when opening failed or the browser closed it.
 * @param create makes the stores of a fresh one
 */
export function openedOnce(name: string, create: (fresh: IDBPDatabase) => void): () => Promise<IDBPDatabase> {
  let database: Promise<IDBPDatabase> | undefined;
  const forget = (): void => {
    database = undefined;
  };
  return () => {
    if (database === undefined) {
      database = openDB(name, 1, { upgrade: create, terminated: forget });
      database.catch(forget);
    }
    return database;
  };
}
