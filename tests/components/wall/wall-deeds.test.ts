import { describe, expect, it } from 'vitest';
import { deedOf, isMove } from '../../../src/components/wall/wall-deeds.ts';

describe('deedOf', () => {
  it('should know a letter small and capital, and the signs with and without shift', () => {
    expect(deedOf('k')).toBe('keep');
    expect(deedOf('K')).toBe('keep');
    expect(deedOf('+')).toBe('closer');
    expect(deedOf('=')).toBe('closer');
    expect(deedOf('Escape')).toBe('put-away');
  });

  it('should leave all other keys to the page', () => {
    for (const key of ['Tab', 'x', ' ', 'F1', 'constructor', 'toString', 'enter']) expect(deedOf(key)).toBeUndefined();
  });

  it('should leave the keys that lead from print to print alone', () => {
    for (const key of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown']) {
      expect(isMove(key)).toBe(true);
      expect(deedOf(key)).toBeUndefined();
    }
    expect(isMove('Enter')).toBe(false);
  });
});
