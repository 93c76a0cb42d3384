import { describe, expect, it } from 'vitest';
import { BY_NUMBER, type HangChoice } from '../../../../src/components/wall/hang/hanging.ts';
import { keepChoice, keptChoice } from '../../../../src/components/wall/hang/kept-choice.ts';

describe('how prints hang', () => {
  it('should come back after the page was loaded again, with both ends of the slider', () => {
    let kept: string | null = null;
    const place = () => ({ getItem: () => kept, setItem: (_: string, text: string) => void (kept = text) });
    expect(keptChoice(place)).toBe(null);
    for (const towards of [-100, 0, 100]) {
      const choice: HangChoice = { ...BY_NUMBER, way: 'taste', towards, unsure: 33 };
      keepChoice(choice, place);
      expect(keptChoice(place)).toEqual(choice);
    }
  });

  it('should be the usual where nothing is kept that a wall can hang by', () => {
    for (const kept of [
      '{',
      'null',
      '[]',
      '"taste"',
      '{"way":"gone"}',
      '{"way":"taste","towards":900}',
      '{"across":"gone"}',
      '{"ranks":1}',
    ]) {
      const found = keptChoice(() => ({ getItem: () => kept }));
      expect(found === null || found.way === 'number', kept).toBe(true);
    }
    const refuses = (): never => {
      throw new DOMException('denied', 'SecurityError');
    };
    expect(keptChoice(refuses)).toBe(null);
    expect(() => keepChoice(BY_NUMBER, refuses)).not.toThrow();
  });
});
