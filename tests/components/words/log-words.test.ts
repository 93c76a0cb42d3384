import { describe, expect, it } from 'vitest';
import { dryingWords, stillWetWords } from '../../../src/components/words/log-words.ts';

const at = (hour: number, minute: number, second = 0): number => new Date(2026, 4, 3, hour, minute, second).getTime();

describe('the words of what dries', () => {
  it('should say which sheets must wait, by ink and by the later minute', () => {
    const wet = [
      { number: 6, ink: 'Rust', dryMs: at(14, 57, 10), stackMs: at(15, 17) },
      { number: 5, ink: 'Rust', dryMs: at(14, 55), stackMs: at(15, 15) },
      { number: 9, ink: 'Tar', dryMs: at(15, 2), stackMs: at(15, 22) },
    ];
    expect(stillWetWords(wet)).toBe('Still wet: sheets 5, 6 in Rust until 14:58; sheet 9 in Tar until 15:02.');
    expect(stillWetWords([])).toBe('');
  });

  it('should say from when a sheet can be printed over and stacked', () => {
    const wet = [{ number: 5, ink: 'Rust', dryMs: at(14, 55), stackMs: at(15, 15) }];
    expect(dryingWords(wet, at(14, 40))).toBe('Print over sheet 5 from 14:55, stack from 15:15.');
    expect(dryingWords(wet, at(15, 0))).toBe('Stack sheet 5 from 15:15.');
    expect(dryingWords([], 0)).toBe('');
  });
});
