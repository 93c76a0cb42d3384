import { describe, expect, it } from 'vitest';
import { numberText, typedNumber } from '../../../src/engine/base/typed-number.ts';

describe('typedNumber', () => {
  it.each([
    ['2,5', 2.5],
    ['2.5', 2.5],
    ['0,125', 0.125],
    ['-0.5', -0.5],
    ['−0,5', -0.5],
    ['– 3', -3],
    ['+4', 4],
    [',5', 0.5],
    ['5.', 5],
    ['1 234', 1234],
    ['1 234,5', 1234.5],
    ["1'234.5", 1234.5],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
    ['1,234,567', 1234567],
    ['12,3456', 12.3456],
  ])('should read %s the same with either sign', (text, value) => {
    expect(typedNumber(text, '.')).toEqual({ value, problem: '' });
    expect(typedNumber(text, ',')).toEqual({ value, problem: '' });
  });

  it('should read what could be thousands by the sign of the person', () => {
    expect([typedNumber('1,234', '.').value, typedNumber('1,234', ',').value]).toEqual([1234, 1.234]);
    expect([typedNumber('1.234', '.').value, typedNumber('1.234', ',').value]).toEqual([1.234, 1234]);
  });

  it.each([
    ['1/2', '0.5'],
    ['1 3/8', '1.375'],
    ['-½', '−0.5'],
    ['2¾', '2.75'],
    ['1/3', 'about 0.3333'],
  ])('should refuse the fraction %s and say how to write it', (text, written) => {
    expect(typedNumber(text)).toEqual({ value: null, problem: `“${text}” is a fraction: write ${written}.` });
  });

  it.each(['', '-', 'x', '2 5', '1.2.3', '1,23,4', '1e3', '5 mm', '1,234.5.6', '.', '--2'])('should refuse %j', (text) => {
    const { value, problem } = typedNumber(text);
    expect(value).toBeNull();
    expect(problem).toMatch(text === '' ? /^Give a number\.$/u : /is no number: write it in digits, as in 2\.5\.$/u);
  });

  it('should read back what numberText writes', () => {
    for (const value of [0, -0.1, 1.234, -1234.5, 0.001, 99999]) {
      for (const sign of ['.', ','] as const) expect(typedNumber(numberText(value, sign), sign).value).toBe(value);
    }
  });
});
