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
const RENEWED_AFTER = 1000;

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

function helperDesk(): Desk<Api<ServedHelper>> {
  return new Desk({
    start: () => seat<ServedHelper>(new Worker(new URL('../entry/wall-helper.worker.ts', import.meta.url), { type: 'module' })),
    ping: (helper) => helper.ping(),
    silenceMs: SILENCE_MS,
    patienceMs: PATIENCE_MS,
    what: 'A helper of the search',
  });
}

function startHelper(cores: number): RemoteHelper {
  const desk = helperDesk();
  const names = new SharedNames();
  let order: HelperOrder | null = null;
  let [stands, renewing] = [false, false];
  let drawn = 0;
  /** One goes before the next one comes: both at once took 26 MB more, and the search draws by itself meanwhile. */
  const renew = async (begun: HelperOrder): Promise<void> => {
    renewing = true;
    try {
      // Answered when all that was asked for before is drawn.
      await desk.call((helper) => helper.ping());
      // Another wall began meanwhile.
      if (begun !== order) return;
      desk.end('another takes its place', true);
      drawn = 0;
      await desk.call((helper) => helper.begin(begun));
    } finally {
      renewing = false;
    }
  };
  return {
    get late() {
      return cores === 2 && !stands;
    },
    get away() {
      return renewing;
    },
    begin(begun) {
      stands = true;
      [order, drawn] = [begun, 0];
      return desk.call((helper) => helper.begin(begun));
    },
    async draw(from, count) {
      drawn += count;
      const sending = desk.call((helper) => helper.draw(from, count));
      if (order !== null && drawn >= RENEWED_AFTER && !renewing) renew(order).catch(() => undefined);
      const sent = await sending;
      names.share(sent.pulls.names);
      return receivedDraws(sent);
    },
    paint: (variants) => desk.call((helper) => helper.paint(variants)),
  };
}
