import { describe, expect, it } from 'vitest';
import { Jobs } from '../../../src/workers/jobs/jobs.ts';

function* numbers(upTo: number): Generator<number, void> {
  for (let i = 0; i < upTo; i++) yield i;
}

describe('Jobs', () => {
  it('should take every step when nobody stops it', async () => {
    const seen: number[] = [];
    expect(await new Jobs().run('a', numbers(5), (value) => seen.push(value))).toBe(false);
    expect(seen).toEqual([0, 1, 2, 3, 4]);
  });

  it('should stop between two steps, and only the job that was named', async () => {
    const jobs = new Jobs();
    const a: number[] = [];
    const b: number[] = [];
    const runs = [
      jobs.run('a', numbers(1000), (value) => {
        a.push(value);
        if (value === 3) jobs.cancel('a');
      }),
      jobs.run('b', numbers(10), (value) => b.push(value)),
    ];
    expect(await Promise.all(runs)).toEqual([true, false]);
    expect(a).toEqual([0, 1, 2, 3]);
    expect(b).toHaveLength(10);
  });

  it('should hear a stop sent before the first step', async () => {
    const jobs = new Jobs();
    const seen: number[] = [];
    const run = jobs.run('a', numbers(10), (value) => seen.push(value));
    jobs.cancel('a');
    expect(await run).toBe(true);
    expect(seen).toEqual([]);
  });

  it('should hear a stop sent while the program of a job is loaded', async () => {
    const jobs = new Jobs();
    const seen: number[] = [];
    const loading = jobs.loading('a', () => Promise.resolve(numbers));
    jobs.cancel('a');
    expect(await jobs.run('a', (await loading)(10), (value) => seen.push(value))).toBe(true);
    expect(seen).toEqual([]);
    expect(await jobs.run('a', numbers(2), (value) => seen.push(value))).toBe(false);
    await expect(jobs.loading('b', () => Promise.reject(new Error('not there')))).rejects.toThrow('not there');
    expect(await jobs.run('b', numbers(2), () => {})).toBe(false);
  });

  it('should give what the steps find at their end, and nothing of a stopped job', async () => {
    function* sum(): Generator<number, string> {
      yield* numbers(3);
      return 'found';
    }
    const jobs = new Jobs();
    const seen: number[] = [];
    expect(await jobs.find('a', sum(), (value) => seen.push(value))).toBe('found');
    expect(seen).toEqual([0, 1, 2]);
    expect(await jobs.find('a', sum(), () => jobs.cancel('a'))).toBeNull();
  });

  it('should pass on what a step throws', async () => {
    const failing = {
      next: () => {
        throw new Error('no');
      },
    };
    await expect(new Jobs().run('a', failing, () => {})).rejects.toThrow('no');
  });
});
