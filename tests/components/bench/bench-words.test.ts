import { describe, expect, it } from 'vitest';
import { keysWords, readoutWords } from '../../../src/components/bench/bench-words.ts';

const sheet = { widthMm: 500, heightMm: 700 };

describe('readoutWords', () => {
  it('should say the state that is played before anything else', () => {
    expect(readoutWords(sheet, 3, 0, { xMm: 1, yMm: 1 })).toBe('Bare paper');
    expect(readoutWords(sheet, 3, 2, null)).toBe('After pull 2 of 3');
  });
  it('should say where one points, edges of the sheet included', () => {
    expect(readoutWords(sheet, 3, null, null)).toBe('Sheet 500 × 700 mm');
    expect(readoutWords(sheet, 3, null, { xMm: 0, yMm: 700 })).toBe('0.0 mm right, 700.0 mm down');
    for (const off of [
      { xMm: -0.1, yMm: 5 },
      { xMm: 5, yMm: -0.1 },
      { xMm: 500.1, yMm: 5 },
      { xMm: 5, yMm: 700.1 },
    ]) {
      expect(readoutWords(sheet, 3, null, off)).toBe('Off the sheet');
    }
  });
});

describe('keysWords', () => {
  it('should say what the arrow keys move', () => {
    expect(keysWords(-1)).toContain('Arrow keys move the sheet;');
    expect(keysWords(1)).toContain('Arrow keys move pull 2 by 0.1 mm, with Shift by 1 mm;');
  });
});
