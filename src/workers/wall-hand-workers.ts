import * as Comlink from 'comlink';
import { handsFor, type RemoteHand } from './wall-hands.ts';

const hands: RemoteHand[] = [];

/**
 * The hands of this machine, each a worker of its own; they stay for the next wall. Without workers
 * in workers there are none.
 * @param cores of the machine
 */
export function wallHands(cores: number): RemoteHand[] {
  if (typeof Worker === 'undefined') return [];
  while (hands.length < handsFor(cores)) {
    const worker = new Worker(new URL('./wall-hand.worker.ts', import.meta.url), { type: 'module' });
    hands.push(Comlink.wrap(worker) as unknown as RemoteHand);
  }
  return hands.slice(0, handsFor(cores));
}
