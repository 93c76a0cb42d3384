import { describe, it, expect } from 'vitest';
import { nextSeed } from '../../../../src/engine/explore/settings/next-seed.ts';

describe('nextSeed', () => {
  it('should raise the last number, or begin one', () => {
    expect(nextSeed('slack tide')).toBe('slack tide 2');
    expect(nextSeed('slack tide 2')).toBe('slack tide 3');
    expect(nextSeed('neap9')).toBe('neap10');
    expect(nextSeed('3 gulls')).toBe('3 gulls 2');
    expect(nextSeed('  ')).toBe('1');
  });

  it('should never come back to a seed', () => {
    const seen = new Set<string>();
    let seed = 'a';
    for (let i = 0; i < 50; i++) {
      expect(seen.has(seed)).toBe(false);
      seen.add(seed);
      seed = nextSeed(seed);
    }
  });
});
