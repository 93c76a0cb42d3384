import type { VisitHead } from '../../engine/log/types.ts';
import type { KeptHead, StorageApi, StoredProject } from '../api/storage-api.ts';
import { say } from '../words/en/client.ts';
import { awakeTimeout } from './awake-timeout.ts';
import { Desk, WorkerEnded } from './desk.ts';
import { type Api, seat } from './seat.ts';

/** A worker that gives no sign for so long is replaced, ms. */
const SILENCE_MS = 5000;
/** A call that is not done by then is given to another worker, although the first still answers, ms. */
const LONGEST_MS = 30_000;

/**
 * The worker that saves, as the page calls it. When it dies, another gets the same call again: each of
 * them may be done twice.
 */
export class StorageClient {
  private readonly desk = new Desk<Api<StorageApi>>({
    start: () => seat<StorageApi>(new Worker(new URL('../entry/storage.worker.ts', import.meta.url), { type: 'module' })),
    ping: (remote) => remote.ping(),
    silenceMs: SILENCE_MS,
    get what() {
      return say.partThatSaves;
    },
  });

  private readonly restarted: () => void;

  /** @param restarted called when another worker has done what one that died had not */
  constructor(restarted: () => void) {
    this.restarted = restarted;
  }

  open(): Promise<StoredProject> {
    return this.call((remote) => remote.open());
  }

  lost(): Promise<string[]> {
    return this.call((remote) => remote.lost());
  }

  save(sections: Record<string, unknown>): Promise<void> {
    return this.call((remote) => remote.save(sections));
  }

  replace(sections: Record<string, unknown>): Promise<void> {
    return this.call((remote) => remote.replace(sections));
  }

  keep(head: KeptHead, sections: Record<string, unknown>): Promise<void> {
    return this.call((remote) => remote.keep(head, sections));
  }

  listKept(): Promise<KeptHead[]> {
    return this.call((remote) => remote.listKept());
  }

  readKept(id: string): Promise<Record<string, unknown> | null> {
    return this.call((remote) => remote.readKept(id));
  }

  dropKept(id: string): Promise<void> {
    return this.call((remote) => remote.dropKept(id));
  }

  openPress(): Promise<Record<string, unknown>> {
    return this.call((remote) => remote.openPress());
  }

  savePress(parts: Record<string, unknown>): Promise<void> {
    return this.call((remote) => remote.savePress(parts));
  }

  readVisits(): Promise<unknown[]> {
    return this.call((remote) => remote.readVisits());
  }

  readEvents(visit: string): Promise<unknown[]> {
    return this.call((remote) => remote.readEvents(visit));
  }

  addEvents(head: VisitHead, events: readonly unknown[]): Promise<void> {
    return this.call((remote) => remote.addEvents(head, events));
  }

  private async call<Found>(work: (remote: Api<StorageApi>) => Promise<Found>): Promise<Found> {
    try {
      return await this.timed(work);
    } catch (error) {
      if (!(error instanceof WorkerEnded)) throw error;
      const found = await this.timed(work);
      this.restarted();
      return found;
    }
  }

  private async timed<Found>(work: (remote: Api<StorageApi>) => Promise<Found>): Promise<Found> {
    const stopWaiting = awakeTimeout(() => this.desk.end(say.notDoneAfter(LONGEST_MS / 1000)), LONGEST_MS);
    try {
      return await this.desk.call(work);
    } finally {
      stopWaiting();
    }
  }
}
