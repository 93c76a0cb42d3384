import * as Comlink from 'comlink';
import { helpersFor, type RemoteHelper } from './wall-helpers.ts';

const helpers: RemoteHelper[] = [];

/**
 * The helpers of this machine, each a worker of its own; they stay for the next wall. Without workers
 * in workers there are none.
 * @param cores of the machine
 */
export function wallHelpers(cores: number): RemoteHelper[] {
  if (typeof Worker === 'undefined') return [];
  while (helpers.length < helpersFor(cores)) {
    const worker = new Worker(new URL('../entry/wall-helper.worker.ts', import.meta.url), { type: 'module' });
    helpers.push(Comlink.wrap(worker) as unknown as RemoteHelper);
  }
  return helpers.slice(0, helpersFor(cores));
}
