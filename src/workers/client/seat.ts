import * as Comlink from 'comlink';
import { language } from '../../engine/words/language.ts';
import type { Served } from '../api/serve.ts';
import type { Spoken } from '../api/spoken.ts';
import type { Seated } from './desk.ts';

/** A worker as it is called. */
export type Api<Work> = Comlink.Remote<Work & Served>;

/**
 * Resolves when the worker has died, in whatever way: the browser gives its lock to who waits for it.
 * Never where there are no locks.
 */
async function gone(remote: Comlink.Remote<Served>): Promise<void> {
  const name = await remote.heldLock();
  const { locks } = navigator as { locks?: LockManager };
  if (name === '' || locks === undefined) return new Promise(() => {});
  return locks.request(name, { mode: 'shared' }, () => {});
}

/** Seats a worker that was begun just now. */
export function seat<Work>(worker: Worker): Seated<Api<Work>> {
  // First of all, so that it holds for whatever is asked next.
  if (language() !== 'en') worker.postMessage({ spoken: language() } satisfies Spoken, []);
  const remote = Comlink.wrap<Work & Served>(worker);
  const { locks } = navigator as { locks?: LockManager };
  return { worker, remote, gone: gone(remote as unknown as Comlink.Remote<Served>), deathHeard: locks !== undefined };
}
