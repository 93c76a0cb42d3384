import { describe, expect, it } from 'vitest';
import { keysWords, placePullsWords, readoutWords } from '../../../src/components/bench/bench-words.ts';
import type { Ink } from '../../../src/engine/ink/types.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';

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

describe('placePullsWords', () => {
  const inks = [
    { id: 'a', name: 'Ochre' },
    { id: 'b', name: 'Tar' },
  ] as Ink[];
  const pulls = ['a', 'b', 'a', 'gone'].map((ink) => ({ ink })) as Pull[];
  it('should name the films from the top down and their pulls', () => {
    expect(placePullsWords([], pulls, { inks })).toBe('Bare paper');
    expect(placePullsWords([1], pulls, { inks })).toBe('Tar (pull 2)');
    expect(placePullsWords([0, 1, 2], pulls, { inks })).toBe('Ochre over Tar over Ochre (pulls 1, 2 and 3)');
    expect(placePullsWords([3], pulls, { inks })).toBe('an ink that is gone (pull 4)');
    // Of a deep pile the last down, and how many lie below.
    expect(placePullsWords([0, 1, 0, 0, 0, 1, 0], pulls, { inks })).toBe('Ochre over Tar over Ochre over 4 more');
  });
});
