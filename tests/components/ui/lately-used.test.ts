import { describe, expect, it } from 'vitest';
import { LatelyUsed } from '../../../src/components/ui/lately-used.ts';

describe('what was used lately', () => {
  it('should stay, and what was not asked for longest should go first', () => {
    const known = new LatelyUsed<number>(3);
    for (const [at, name] of ['a', 'b', 'c'].entries()) known.set(name, at);
    expect(known.get('a')).toBe(0);
    known.set('d', 3);
    expect(['a', 'b', 'c', 'd'].map((name) => known.get(name))).toEqual([0, undefined, 2, 3]);
    for (let i = 0; i < 1000; i++) known.set(`${i}`, i);
    expect(known.size).toBe(3);
  });
});
