import { describe, expect, it } from 'vitest';
import { roomEntry } from '../../../../src/components/rooms.ts';
import { actionOf, isMove } from '../../../../src/components/wall/surface/wall-key-actions.ts';
import { defined } from '../../../../src/engine/base/at.ts';

describe('actionOf', () => {
  it('should know a letter small and capital, and the signs with and without shift', () => {
    expect(actionOf('k')).toBe('keep');
    expect(actionOf('K')).toBe('keep');
    expect(actionOf(' ')).toBe('select');
    expect(actionOf('+')).toBe('closer');
    expect(actionOf('=')).toBe('closer');
    expect(actionOf('Escape')).toBe('close');
  });

  it('should have each of its keys in the list of the room', () => {
    const listed = roomEntry('wall').keys.flatMap(([keys]) => keys.split(/, | and /));
    const names: Readonly<Record<string, string>> = { ' ': 'Space bar', '-': '−', '=': '+' };
    const printed = Array.from({ length: 95 }, (_, at) => String.fromCharCode(32 + at));
    const acting = [...printed, 'Enter', 'Escape', 'Delete', 'Tab'].filter((key) => actionOf(key) !== undefined);
    expect(acting).toContain('k');
    expect(acting.filter((key) => !listed.includes(defined(names[key] ?? (key.length === 1 ? key.toUpperCase() : key))))).toEqual([]);
  });

  it('should leave all other keys to the page', () => {
    for (const key of ['Tab', 'x', '?', 'F1', 'constructor', 'toString', 'enter']) expect(actionOf(key)).toBeUndefined();
  });

  it('should leave the keys that lead from print to print alone', () => {
    for (const key of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End', 'PageUp', 'PageDown']) {
      expect(isMove(key)).toBe(true);
      expect(actionOf(key)).toBeUndefined();
    }
    expect(isMove('Enter')).toBe(false);
  });
});
