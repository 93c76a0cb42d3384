import { describe, expect, it } from 'vitest';
import { actionOf, isMove } from '../../../../src/components/wall/surface/wall-key-actions.ts';

describe('actionOf', () => {
  it('should know a letter small and capital, and the signs with and without shift', () => {
    expect(actionOf('k')).toBe('keep');
    expect(actionOf('K')).toBe('keep');
    expect(actionOf(' ')).toBe('select');
    expect(actionOf('+')).toBe('closer');
    expect(actionOf('=')).toBe('closer');
    expect(actionOf('Escape')).toBe('close');
  });

  it('should leave all other keys to the page', () => {
    for (const key of ['Tab', 'x', 'F1', 'constructor', 'toString', 'enter']) expect(actionOf(key)).toBeUndefined();
  });

  it('should leave the keys that lead from print to print alone', () => {
    for (const key of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown']) {
      expect(isMove(key)).toBe(true);
      expect(actionOf(key)).toBeUndefined();
    }
    expect(isMove('Enter')).toBe(false);
  });
});
