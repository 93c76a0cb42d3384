import { describe, expect, it } from 'vitest';
import { withinWords } from '../../../src/components/words/error-words.ts';

describe('words of expected errors', () => {
  it('should be whole from one on', () => {
    expect([0.44, 2.6, 11.2].map(withinWords)).toEqual(['within about 0.4 ΔE', 'within about 3 ΔE', 'within about 11 ΔE']);
  });
});
