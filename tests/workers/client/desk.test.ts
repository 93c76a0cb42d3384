import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { speakIn } from '../../../src/engine/words/language.ts';
import { Desk } from '../../../src/workers/client/desk.ts';
import { engineGerman } from '../../../src/workers/words/engine-german.ts';

const SILENCE_MS = 5000;

/** A worker whose answers the test gives, or not. */
class FakeWorker extends EventTarget {
  ended = false;
  alive = true;
  die: () => void = () => {};
  readonly gone = new Promise<void>((resolve) => {
    this.die = resolve;
  });
  readonly answers: ((value: string) => void)[] = [];

  terminate(): void {
    this.ended = true;
  }

  readonly ask = (): Promise<string> => new Promise((resolve) => this.answers.push(resolve));
  readonly ping = (): Promise<void> => (this.alive ? Promise.resolve() : new Promise(() => {}));
}

function seat(restMs?: number, deathHeard?: boolean) {
  const workers: FakeWorker[] = [];
  const desk = new Desk<FakeWorker>({
    start() {
      const worker = new FakeWorker();
      workers.push(worker);
      return { worker, remote: worker, gone: worker.gone, ...(deathHeard === undefined ? {} : { deathHeard }) };
    },
    ping: (remote) => remote.ping(),
    silenceMs: SILENCE_MS,
    patienceMs: 6 * SILENCE_MS,
    what: 'The part of the app that saves',
    restMs,
  });
  return { desk, workers };
}

describe('a desk', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('should reject what waits with one sentence when its worker throws, and start another for the next call', async () => {
    const { desk, workers } = seat();
    const first = desk.call((worker) => worker.ask());
    const second = desk.call((worker) => worker.ask());
    const failed = Promise.allSettled([first, second]);
    workers[0]!.dispatchEvent(Object.assign(new Event('error'), { message: 'out of memory' }));
    for (const each of await failed) {
      expect(each).toMatchObject({
        status: 'rejected',
        reason: { message: 'The part of the app that saves stopped (out of memory); it was started anew, so ask once more.' },
      });
    }
    expect(workers[0]!.ended).toBe(true);
    const third = desk.call((worker) => worker.ask());
    workers[1]!.answers[0]!('here');
    expect(await third).toBe('here');
  });

  it('should say so in the language that is spoken', async () => {
    speakIn('de', engineGerman);
    try {
      const { desk, workers } = seat();
      const failed = expect(desk.call((worker) => worker.ask())).rejects.toThrow(
        /blieb stehen \(keine Antwort seit 5 s\); er wurde neu gestartet/,
      );
      workers[0]!.alive = false;
      await vi.advanceTimersByTimeAsync(SILENCE_MS + 10);
      await failed;
    } finally {
      speakIn('en', new Map());
    }
  });

  it.each([{}, { message: '' }, { message: 7 }])('should say that its worker failed where it says nothing itself: %j', async (sign) => {
    const { desk, workers } = seat();
    const failed = expect(desk.call((worker) => worker.ask())).rejects.toThrow(/stopped \(it failed\)/);
    workers[0]!.dispatchEvent(Object.assign(new Event('error'), sign));
    await failed;
  });

  it('should pass on what a worker refuses, and keep the worker', async () => {
    const { desk, workers } = seat();
    await expect(desk.call(() => Promise.reject(new Error('no such print')))).rejects.toThrow(/^no such print$/);
    expect(workers[0]!.ended).toBe(false);
    expect(vi.getTimerCount()).toBe(0);
  });

  it('should end a worker that had nothing to do for as long as it is let rest, and start another when asked', async () => {
    const { desk, workers } = seat(1000);
    const asked = (at: number): Promise<string> => {
      const answer = desk.call((worker) => worker.ask());
      workers[at]!.answers.shift()!('here');
      return answer;
    };
    await asked(0);
    await vi.advanceTimersByTimeAsync(900);
    const long = desk.call((worker) => worker.ask());
    await vi.advanceTimersByTimeAsync(3000);
    expect(workers[0]!.ended).toBe(false);
    workers[0]!.answers.shift()!('late');
    expect(await long).toBe('late');
    await vi.advanceTimersByTimeAsync(1000);
    expect(workers[0]!.ended).toBe(true);
    expect(await asked(1)).toBe('here');
    desk.restAfter(undefined);
    await vi.advanceTimersByTimeAsync(5000);
    expect(workers[1]!.ended).toBe(false);
    desk.restAfter(500);
    await vi.advanceTimersByTimeAsync(500);
    expect(workers[1]!.ended).toBe(true);
  });

  it('should not end a worker for what becomes of the one before it', async () => {
    const { desk, workers } = seat();
    const failed = expect(desk.call((worker) => worker.ask())).rejects.toThrow(/out of memory/);
    workers[0]!.dispatchEvent(Object.assign(new Event('error'), { message: 'out of memory' }));
    await failed;
    const next = desk.call((worker) => worker.ask());
    workers[0]!.die();
    workers[0]!.dispatchEvent(Object.assign(new Event('error'), { message: 'late' }));
    await vi.advanceTimersByTimeAsync(0);
    expect(workers[1]!.ended).toBe(false);
    workers[1]!.answers[0]!('here');
    expect(await next).toBe('here');
  });

  it('should go on watching for silence while one of two still waits, with one clock', async () => {
    const { desk, workers } = seat();
    const first = desk.call((worker) => worker.ask());
    const second = desk.call((worker) => worker.ask());
    expect(vi.getTimerCount()).toBe(1);
    workers[0]!.answers[0]!('one');
    expect(await first).toBe('one');
    expect(vi.getTimerCount()).toBe(1);
    const failed = expect(second).rejects.toThrow(/no answer for 5 s/);
    workers[0]!.alive = false;
    await vi.advanceTimersByTimeAsync(3 * SILENCE_MS);
    await failed;
  });

  it('should end a worker whose message cannot be read', async () => {
    const { desk, workers } = seat();
    const failed = expect(desk.call((worker) => worker.ask())).rejects.toThrow(/its answer could not be read/);
    workers[0]!.dispatchEvent(new Event('messageerror'));
    await failed;
    expect(workers[0]!.ended).toBe(true);
  });

  it('should end a silent worker after the stated time, and not before', async () => {
    const { desk, workers } = seat();
    const failed = expect(desk.call((worker) => worker.ask())).rejects.toThrow(/no answer for 5 s/);
    workers[0]!.alive = false;
    await vi.advanceTimersByTimeAsync(SILENCE_MS - 1);
    expect(workers[0]!.ended).toBe(false);
    await vi.advanceTimersByTimeAsync(SILENCE_MS);
    expect(workers[0]!.ended).toBe(true);
    await failed;
  });

  it('should have more patience with a silent worker whose death it would hear', async () => {
    const { desk, workers } = seat(undefined, true);
    const failed = expect(desk.call((worker) => worker.ask())).rejects.toThrow(/no answer for 30 s/);
    workers[0]!.alive = false;
    await vi.advanceTimersByTimeAsync(5 * SILENCE_MS);
    expect(workers[0]!.ended).toBe(false);
    await vi.advanceTimersByTimeAsync(2 * SILENCE_MS);
    expect(workers[0]!.ended).toBe(true);
    await failed;
  });

  it('should know at once of a worker that ends without a word', async () => {
    const { desk, workers } = seat();
    const failed = expect(desk.call((worker) => worker.ask())).rejects.toThrow(/stopped \(it ended by itself\)/);
    workers[0]!.alive = false;
    workers[0]!.die();
    await failed;
    const next = desk.call((worker) => worker.ask());
    workers[1]!.answers[0]!('here');
    expect(await next).toBe('here');
  });

  it('should ask a second worker for what may be done twice, and no third', async () => {
    const { desk, workers } = seat();
    const twice = desk.callAgain((worker) => worker.ask());
    const failed = expect(twice).rejects.toThrow(/it ended by itself/);
    workers[0]!.die();
    await vi.advanceTimersByTimeAsync(0);
    workers[1]!.die();
    await failed;
    expect(workers.length).toBe(2);
    const again = desk.callAgain((worker) => worker.ask());
    workers[2]!.die();
    await vi.advanceTimersByTimeAsync(0);
    workers[3]!.answers[0]!('at last');
    expect(await again).toBe('at last');
  });

  it('should not take a sleep of the device for silence', async () => {
    const { desk, workers } = seat();
    const long = desk.call((worker) => worker.ask());
    workers[0]!.alive = false;
    // A timer that jumps looks once, however long the device slept.
    await vi.advanceTimersByTimeAsync(SILENCE_MS / 5);
    vi.setSystemTime(Date.now() + 3_600_000);
    workers[0]!.alive = true;
    await vi.advanceTimersByTimeAsync(10 * SILENCE_MS);
    expect(workers[0]!.ended).toBe(false);
    workers[0]!.answers[0]!('awake');
    expect(await long).toBe('awake');
  });

  it('should leave a worker that is long at work, but answers', async () => {
    const { desk, workers } = seat();
    const long = desk.call((worker) => worker.ask());
    await vi.advanceTimersByTimeAsync(20 * SILENCE_MS);
    expect(workers[0]!.ended).toBe(false);
    workers[0]!.answers[0]!('done');
    expect(await long).toBe('done');
    // Nothing waits: nothing is looked at.
    expect(vi.getTimerCount()).toBe(0);
  });
});
