import { describe, expect, it } from 'vitest';
import { type Task, Work } from '../../../src/components/ui/work.ts';
import { WorkerEnded } from '../../../src/workers/client/desk.ts';

interface Open {
  name: string;
  signal: AbortSignal;
  progress(share: number): void;
  answer(found: string | null): void;
  fail(error: Error): void;
}

/** Work whose tasks are answered by hand, on a host that counts its drawings. */
function workbench() {
  const open: Open[] = [];
  const heard: string[] = [];
  let drawn = 0;
  const host = {
    addController() {},
    removeController() {},
    requestUpdate: () => drawn++,
    updateComplete: Promise.resolve(true),
  };
  const work = new Work<string>(host, {
    found: (found) => heard.push(found),
    failed: (sentence) => heard.push(`failed: ${sentence}`),
  });
  const task =
    (name: string): Task<string> =>
    ({ signal, onProgress }) =>
      new Promise((answer, fail) => open.push({ name, signal, progress: onProgress, answer, fail }));
  return { work, open, heard, task, names: () => open.map(({ name }) => name), drawn: () => drawn };
}

const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('start', () => {
  it('should end the work before, and hear nothing more of it', async () => {
    const { work, open, heard, task } = workbench();
    void work.start(task('first'));
    void work.start(task('second'));
    expect(open.map(({ signal }) => signal.aborted)).toEqual([true, false]);
    open[0]!.progress(0.9);
    open[0]!.answer('one');
    await turn();
    expect(work).toMatchObject({ running: true, progress: 0, found: null });
    open[1]!.progress(0.5);
    expect(work.progress).toBe(0.5);
    open[1]!.answer('two');
    await turn();
    expect(work).toMatchObject({ running: false, found: 'two', failure: '' });
    expect(heard).toEqual(['two']);
  });

  it('should offer the same again when the worker died, and not when the work itself was at fault', async () => {
    const { work, open, task, names } = workbench();
    void work.start(task('first'));
    open[0]!.fail(new Error('no such screen'));
    await turn();
    expect(work.again).toBeNull();
    void work.start(task('second'));
    open[1]!.fail(new WorkerEnded('stopped', false));
    await turn();
    work.again!();
    expect(work).toMatchObject({ running: true, failure: '', again: null });
    expect(names()).toEqual(['first', 'second', 'second']);
    open[2]!.answer('here');
    await turn();
    expect(work.found).toBe('here');
  });

  it('should say why it failed, and forget it with the next start', async () => {
    const { work, open, heard, task, drawn } = workbench();
    void work.start(task('first'));
    const before = drawn();
    open[0]!.fail(new Error('no such screen'));
    await turn();
    expect(work).toMatchObject({ running: false, found: null, failure: 'no such screen' });
    expect(heard).toEqual(['failed: no such screen']);
    expect(drawn()).toBeGreaterThan(before);
    void work.start(task('second'));
    expect(work.failure).toBe('');
  });

  it('should not hear a failure of work that was stopped', async () => {
    const { work, open, heard, task } = workbench();
    void work.start(task('first'));
    work.hostDisconnected();
    expect(open[0]!.signal.aborted).toBe(true);
    open[0]!.fail(new Error('stopped'));
    await turn();
    expect(work).toMatchObject({ running: false, failure: '' });
    expect(heard).toEqual([]);
  });

  it('should find nothing when the worker says it was cancelled', async () => {
    const { work, open, heard, task } = workbench();
    void work.start(task('first'));
    open[0]!.answer(null);
    await turn();
    expect(work).toMatchObject({ running: false, found: null });
    expect(heard).toEqual([]);
  });

  it('should refuse without any work', () => {
    const { work, task, open } = workbench();
    void work.start(task('first'));
    work.refuse('Square 3 holds no numbers.');
    expect(open[0]!.signal.aborted).toBe(true);
    expect(work).toMatchObject({ running: false, failure: 'Square 3 holds no numbers.' });
  });
});

describe('follow', () => {
  it('should have one call on its way and only the newest waiting', async () => {
    const { work, open, heard, task, names } = workbench();
    for (const name of ['1', '2', '3', '4']) work.follow(task(name));
    expect(names()).toEqual(['1']);
    open[0]!.answer('one');
    await turn();
    expect(names()).toEqual(['1', '4']);
    open[1]!.answer('four');
    await turn();
    expect(heard).toEqual(['one', 'four']);
    expect(work.running).toBe(false);
  });

  it('should go on after a failure', async () => {
    const { work, open, heard, task } = workbench();
    work.follow(task('1'));
    work.follow(task('2'));
    open[0]!.fail(new Error('no such screen'));
    await turn();
    open[1]!.answer('two');
    await turn();
    expect(heard).toEqual(['failed: no such screen', 'two']);
  });

  it('should drop what waits when it forgets, and what is on its way when it stops', async () => {
    const { work, open, heard, task, names } = workbench();
    work.follow(task('1'));
    work.follow(task('2'));
    work.forget();
    open[0]!.answer('one');
    await turn();
    expect(names()).toEqual(['1']);
    work.follow(task('3'));
    work.stop();
    work.follow(task('4'));
    open[1]!.answer('three');
    await turn();
    expect(names()).toEqual(['1', '3', '4']);
    open[2]!.answer('four');
    await turn();
    expect(heard).toEqual(['one', 'four']);
    expect(work.running).toBe(false);
  });
});
