import { Desk } from '../client/desk.ts';
import { type Api, seat } from '../client/seat.ts';
import { SharedNames } from '../client/shared-names.ts';
import { receivedDraws, type SentDraws } from './sent-draws.ts';
import type { HelperOrder } from './wall-helper.ts';
import { helpersFor, type RemoteHelper } from './wall-helpers.ts';

/** So long without a sign, while something waits, and a helper counts as dead, ms; the search then goes on by itself. */
const SILENCE_MS = 20_000;
/** The same where its death would be heard, ms. */
const PATIENCE_MS = 120_000;

/**
 * After so many candidates a helper's worker is begun anew: its young space grows with what it has drawn, to 64 MB, and gives
 * nothing back while there is work. A new one takes half a second of its core.
 */
const RENEWED_AFTER = 1500;

const helpers: RemoteHelper[] = [];

/**
 * The helpers of this machine, each a worker of its own; they stay for the next wall. Without workers
 * in workers there are none.
 * @param cores of the machine
 */
export function wallHelpers(cores: number): RemoteHelper[] {
  if (typeof Worker === 'undefined') return [];
  while (helpers.length < helpersFor(cores)) {
    helpers.push(startHelper(cores));
  }
  return helpers.slice(0, helpersFor(cores));
}

/** A helper as its worker serves it. */
interface ServedHelper extends Omit<RemoteHelper, 'draw'> {
  draw(from: number, count: number): Promise<SentDraws>;
}

type HelperDesk = Desk<Api<ServedHelper>>;

function helperDesk(): HelperDesk {
  return new Desk({
    start: () => seat<ServedHelper>(new Worker(new URL('../entry/wall-helper.worker.ts', import.meta.url), { type: 'module' })),
    ping: (helper) => helper.ping(),
    silenceMs: SILENCE_MS,
    patienceMs: PATIENCE_MS,
    what: 'A helper of the search',
  });
}

function startHelper(cores: number): RemoteHelper {
  let desk = helperDesk();
  let stands = false;
  const names = new SharedNames();
  let order: HelperOrder | null = null;
  let drawn = 0;
  /** The worker goes on until the one after it is ready, and does all that it was asked for. */
  const renew = async (begun: HelperOrder): Promise<void> => {
    const fresh = helperDesk();
    await fresh.call((helper) => helper.begin(begun));
    const old = desk;
    // Another wall began meanwhile, with another order.
    if (begun === order) [desk, drawn] = [fresh, 0];
    else fresh.end('another wall is found');
    if (desk !== fresh) return;
    // Also when it died of itself.
    await old.call((helper) => helper.ping()).catch(() => undefined);
    old.end('another took its place', true);
  };
  return {
    get late() {
      return cores === 2 && !stands;
    },
    begin(begun) {
      stands = true;
      [order, drawn] = [begun, 0];
      return desk.call((helper) => helper.begin(begun));
    },
    async draw(from, count) {
      drawn += count;
      // Once: before the other is ready, more is asked for.
      if (order !== null && drawn >= RENEWED_AFTER && drawn - count < RENEWED_AFTER) renew(order).catch(() => undefined);
      const sent = await desk.call((helper) => helper.draw(from, count));
      names.share(sent.pulls.names);
      return receivedDraws(sent);
    },
    paint: (variants) => desk.call((helper) => helper.paint(variants)),
  };
}
