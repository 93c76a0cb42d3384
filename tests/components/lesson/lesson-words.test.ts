import { describe, expect, it } from 'vitest';
import { countWords, orderWords, whyWords } from '../../../src/components/lesson/lesson-words.ts';

const edge = (a: number, b: number, deltaE: number) => ({ a, b, areaMm2: 100, deltaE });

describe('countWords', () => {
  it('should count orders and prints', () => {
    const orders = Array.from({ length: 24 }, () => [0, 1, 2, 3]);
    expect(countWords({ orders, count: 6 })).toBe('24 orders, 6 different prints');
    expect(countWords({ orders: orders.slice(0, 2), count: 1 })).toBe('2 orders, 1 different print');
  });
});

describe('whyWords', () => {
  it('should say that shapes apart change nothing', () => {
    expect(whyWords(3, [], 1)).toBe('No two shapes overlap, so it makes no difference which goes down first.');
  });
  it('should count the pairs that do not overlap', () => {
    expect(whyWords(4, [edge(0, 1, 8), edge(1, 2, 9), edge(2, 3, 7)], 1)).toContain('3 of the 6 pairs do not');
  });
  it('should name pairs that overlap and yet look the same', () => {
    const words = whyWords(3, [edge(0, 1, 0.2), edge(1, 2, 9), edge(0, 2, 4)], 1);
    expect(words).toContain('every pair does');
    expect(words).toContain('1 overlapping pair looks the same both ways (under ΔE 1)');
  });
  it('should not claim that order shows when it shows nowhere', () => {
    expect(whyWords(2, [edge(0, 1, 0.2)], 1)).not.toContain('Where order shows');
    expect(whyWords(2, [edge(0, 1, 0.2)], 0.1)).toContain('Where order shows');
  });
});

describe('orderWords', () => {
  it('should read from first down to last down', () => {
    expect(orderWords([2, 0, 1])).toBe('3 under 1 under 2');
  });
});
