import { describe, expect, it } from 'vitest';
import { KeptMarks } from '../../../../src/components/wall/print/kept-marks.ts';

function tab(text?: string) {
  const kept = new Map(text === undefined ? [] : [['pullstack.marks', text]]);
  return { getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => void kept.set(key, value) };
}

describe('what is selected on a wall', () => {
  const keys = ['a', 'b', 'c', 'd'];

  it('should come back once after the page was loaded again, on whichever numbers its prints hang', () => {
    const storage = tab();
    const chosen = new Set([0, 2]);
    expect(new KeptMarks(() => storage).keep(chosen, keys)).toBe(chosen);
    const again = new KeptMarks(() => storage);
    expect([...again.keep(new Set([3]), ['x', 'c', 'a', 'y'])]).toEqual([3, 1, 2]);
    // What is let go of later stays so.
    const none = new Set<number>();
    expect(again.keep(none, keys)).toBe(none);
    expect(new KeptMarks(() => storage).keep(none, keys)).toBe(none);
  });

  it('should come back on each wall that hangs again, whichever hung when the page was left', () => {
    const storage = tab();
    const before = new KeptMarks(() => storage);
    before.keep(new Set([0, 2]), keys);
    before.keep(new Set([1]), ['n', 'o']);
    const again = new KeptMarks(() => storage);
    expect([...again.keep(new Set(), ['n', 'o'])]).toEqual([1]);
    expect([...again.keep(new Set(), keys)]).toEqual([0, 2]);
    // A wall that hangs another time is as it was left then.
    expect([...again.keep(new Set(), keys)]).toEqual([]);
  });

  it('should come back however many they are, and of other walls the latest', () => {
    const storage = tab();
    const many = Array.from({ length: 10_000 }, (_, i) => `print ${i}`);
    const all = new Set(many.keys());
    const before = new KeptMarks(() => storage);
    before.keep(new Set([0]), ['of another wall']);
    before.keep(all, many);
    const again = new KeptMarks(() => storage);
    expect(again.keep(new Set(), many)).toEqual(all);
    expect([...again.keep(new Set(), ['of another wall'])]).toEqual([0]);
  });

  it('should be as it is where nothing is kept, or nothing of ours', () => {
    const chosen = new Set([1]);
    for (const text of ['{', '{"a":1}', '"abc"', 'null']) expect(new KeptMarks(() => tab(text)).keep(chosen, keys)).toBe(chosen);
    const refuses = (): never => {
      throw new DOMException('denied', 'SecurityError');
    };
    expect(new KeptMarks(refuses).keep(chosen, keys)).toBe(chosen);
  });
});
