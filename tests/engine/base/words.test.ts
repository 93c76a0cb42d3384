import { describe, expect, it } from 'vitest';
import { minutesText, rangesText } from '../../../src/engine/base/words.ts';

describe('minutesText', () => {
  it('should write hours and what is left of one', () => {
    expect([0, 25, 59.6, 60, 65, 2875].map(minutesText)).toEqual(['0 min', '25 min', '1 h', '1 h', '1 h 5 min', '47 h 55 min']);
  });
});

describe('rangesText', () => {
  it('should join runs of three and more and keep the rest apart', () => {
    expect(rangesText([1, 2, 3, 4, 5, 8, 10, 11])).toBe('1–5, 8, 10, 11');
    expect(rangesText([7])).toBe('7');
    expect(rangesText([])).toBe('');
  });
});
