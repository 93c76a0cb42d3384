import { Desk } from '../client/desk.ts';
import { type Api, seat } from '../client/seat.ts';
import { SharedNames } from '../client/shared-names.ts';
import { helpersFor, type RemoteHelper } from './wall-helpers.ts';

/** So long without a sign, while something waits, and a helper counts as dead, ms; the search then goes on by itself. */
const SILENCE_MS = 20_000;

const helpers: RemoteHelper[] = [];

/**
 * The helpers of this machine, each a worker of its own; they stay for the next wall. Without workers
 * in workers there are none.
 * @param cores of the machine
 */
export function wallHelpers(cores: number): RemoteHelper[] {
  if (typeof Worker === 'undefined') return [];
  while (helpers.length < helpersFor(cores)) {
    helpers.push(startHelper());
  }
  return helpers.slice(0, helpersFor(cores));
}

function startHelper(): RemoteHelper {
  const desk = new Desk<Api<RemoteHelper>>({
    start: () => seat<RemoteHelper>(new Worker(new URL('../entry/wall-helper.worker.ts', import.meta.url), { type: 'module' })),
    ping: (helper) => helper.ping(),
    silenceMs: SILENCE_MS,
    what: 'A helper of the search',
  });
  const names = new SharedNames();
  return {
    begin: (order) => desk.call((helper) => helper.begin(order)),
    async draw(from, count) {
      const drawn = await desk.call((helper) => helper.draw(from, count));
      for (const each of drawn) if (each !== null) names.share(each.variant.pulls);
      return drawn;
    },
    paint: (variants) => desk.call((helper) => helper.paint(variants)),
  };
}
