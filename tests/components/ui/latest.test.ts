import { describe, expect, it } from 'vitest';
import { Latest } from '../../../src/components/ui/latest.ts';

function deferred() {
  const open: { question: number; answer: (value: string) => void; fail: (error: Error) => void }[] = [];
  const done: string[] = [];
  const failed: string[] = [];
  const latest = new Latest<number, string>(
    (question) => new Promise((answer, fail) => open.push({ question, answer, fail })),
    (answer) => done.push(answer),
    (error) => failed.push((error as Error).message),
  );
  return { latest, open, done, failed };
}

const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('Latest', () => {
  it('should have one question on its way and only the newest waiting', async () => {
    const { latest, open, done } = deferred();
    for (const question of [1, 2, 3, 4]) latest.ask(question);
    expect(open.map(({ question }) => question)).toEqual([1]);
    open[0]!.answer('one');
    await turn();
    expect(open.map(({ question }) => question)).toEqual([1, 4]);
    open[1]!.answer('four');
    await turn();
    expect(done).toEqual(['one', 'four']);
    expect(latest.idle).toBe(true);
  });

  it('should go on after a failure', async () => {
    const { latest, open, done, failed } = deferred();
    latest.ask(1);
    latest.ask(2);
    open[0]!.fail(new Error('no such screen'));
    await turn();
    open[1]!.answer('two');
    await turn();
    expect(failed).toEqual(['no such screen']);
    expect(done).toEqual(['two']);
  });

  it('should drop what waits when told to forget', async () => {
    const { latest, open } = deferred();
    latest.ask(1);
    latest.ask(2);
    latest.forget();
    open[0]!.answer('one');
    await turn();
    expect(open).toHaveLength(1);
  });
});
