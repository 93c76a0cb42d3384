import { describe, expect, it } from 'vitest';
import { runJob } from '../../../src/workers/client/job-control.ts';

/** Work that is answered by hand. */
function openJob() {
  const cancelled: string[] = [];
  const heard: number[] = [];
  let job = '';
  let tell: (progress: number) => void = () => {};
  let answer: (found: string | null) => void = () => {};
  const aborter = new AbortController();
  const run = (): Promise<string | null> =>
    runJob<number, string | null>(
      { signal: aborter.signal, onProgress: (progress) => heard.push(progress) },
      (name) => cancelled.push(name),
      (name, onProgress) => {
        job = name;
        tell = onProgress;
        return new Promise((resolve) => {
          answer = resolve;
        });
      },
    );
  return {
    aborter,
    run,
    cancelled,
    heard,
    name: () => job,
    tell: (share: number) => tell(share),
    answer: (found: string | null) => answer(found),
  };
}

describe('runJob', () => {
  it('should hear progress until the work ends, and not after', async () => {
    const { run, tell, answer, heard, cancelled, aborter } = openJob();
    const found = run();
    tell(0.5);
    answer('found');
    expect(await found).toBe('found');
    tell(1);
    aborter.abort();
    expect(heard).toEqual([0.5]);
    expect(cancelled).toEqual([]);
  });

  it('should cancel by name when the signal says so, and hear nothing more', async () => {
    const { run, tell, answer, heard, cancelled, name, aborter } = openJob();
    const found = run();
    aborter.abort();
    tell(0.7);
    expect(cancelled).toEqual([name()]);
    answer(null);
    expect(await found).toBeNull();
    expect(heard).toEqual([]);
  });

  it('should not begin work that is no longer wanted', async () => {
    const { run, aborter, name } = openJob();
    aborter.abort();
    await expect(run()).rejects.toThrow(/abort/i);
    expect(name()).toBe('');
  });

  it('should give each piece of work a name of its own', () => {
    const [one, two] = [openJob(), openJob()];
    void one.run();
    void two.run();
    expect(one.name()).not.toBe(two.name());
  });
});
