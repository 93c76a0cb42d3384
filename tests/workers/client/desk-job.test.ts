import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { runAtDesk } from '../../../src/workers/client/desk-job.ts';
import { Desk } from '../../../src/workers/client/desk.ts';

/** A worker that hears 'cancel', and stops by it or not. */
class FakeWorker extends EventTarget {
  ended = false;
  readonly cancelled: string[] = [];
  readonly asked: string[] = [];
  private readonly answers = new Map<string, (value: string) => void>();
  private readonly stops: boolean;

  constructor(stops: boolean) {
    super();
    this.stops = stops;
  }

  terminate(): void {
    this.ended = true;
  }

  ask(what: string): Promise<string> {
    this.asked.push(what);
    return new Promise((resolve) => this.answers.set(what, resolve));
  }

  answer(what: string): void {
    this.answers.get(what)?.(`${what}, answered`);
  }

  cancel(job: string): void {
    this.cancelled.push(job);
    if (this.stops) this.answer(job);
  }
}

function seat(stops: boolean) {
  const workers: FakeWorker[] = [];
  const desk = new Desk<FakeWorker>({
    start() {
      const worker = new FakeWorker(stops);
      workers.push(worker);
      return { worker, remote: worker };
    },
    ping: () => Promise.resolve(),
    silenceMs: 60_000,
    what: 'The part of the app that works this out',
  });
  return { desk, workers };
}

const JOB = {
  cancel: (worker: FakeWorker, job: string) => worker.cancel(job),
  work: (worker: FakeWorker, job: string) => worker.ask(job),
};

describe('a job at a desk', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('should end with its worker when it does not stop, and leave other work whole', async () => {
    const { desk, workers } = seat(false);
    const stop = new AbortController();
    const stuck = runAtDesk(desk, { signal: stop.signal }, JOB);
    const failed = expect(stuck).rejects.toThrow(/abort/i);
    const other = desk.call((worker) => worker.ask('view'));
    stop.abort();
    await vi.advanceTimersByTimeAsync(100);
    await failed;
    expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
    // Not the job that hung, but what waited behind it, is asked of the next worker.
    expect(workers[1]!.asked).toEqual(['view']);
    workers[1]!.answer('view');
    expect(await other).toBe('view, answered');
  });

  it('should leave the worker when it stops as told', async () => {
    const { desk, workers } = seat(true);
    const stop = new AbortController();
    const job = runAtDesk(desk, { signal: stop.signal }, JOB);
    stop.abort();
    expect(await job).toMatch(/answered/);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(workers.map(({ ended }) => ended)).toEqual([false]);
    expect(vi.getTimerCount()).toBe(0);
  });
});
