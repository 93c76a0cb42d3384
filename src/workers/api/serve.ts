import * as Comlink from 'comlink';
import { keepErrorFields } from './errors.ts';
import { type Catalogues, inItsLanguage } from './spoken.ts';

/** What every worker answers besides its own work. */
export interface Served {
  /** Answers at once, as long as the worker lives and is not in the midst of a step. */
  ping(): void;
  /** The name of a lock that the worker holds for as long as it lives; '' where there are no locks. */
  heldLock(): Promise<string>;
}

/** Holds a lock for as long as this worker lives. @returns its name, '' where there are no locks */
async function holdLock(): Promise<string> {
  // Over plain http there are none.
  const { locks } = navigator as { locks?: LockManager };
  if (locks === undefined) return '';
  const name = `pullstack-worker-${Math.random().toString(36).slice(2)}-${performance.timeOrigin}`;
  return new Promise((resolve) => {
    const held = locks.request(name, () => {
      resolve(name);
      return new Promise<never>(() => {});
    });
    // Where a setting forbids locks, death is known by silence alone.
    held.catch(() => resolve(''));
  });
}

const engineGerman = async (): Promise<Catalogues> => (await import('../words/engine-german.ts')).engineGerman;

/**
 * Lets the page call what a worker does; to be called once, on the worker's side.
 * @param german the worker's words, where it has more than the engine's
 */
export function serve(api: object, german: () => Promise<Catalogues> = engineGerman): void {
  const lock = holdLock();
  keepErrorFields();
  const deeds = inItsLanguage({ ...api }, globalThis, german);
  Comlink.expose({ ...deeds, ping() {}, heldLock: () => lock } satisfies Served);
}
