import { describe, expect, it } from 'vitest';
import { countWords, orderWords, reasonLines } from '../../../../src/components/lesson/board/lesson-words.ts';
import type { PairOrder, PairReason } from '../../../../src/engine/order/groups/pair-reasons.ts';

const pair = (a: number, b: number, reason: PairReason, more: Partial<PairOrder> = {}): PairOrder => ({
  a,
  b,
  reason,
  areaMm2: 100,
  deltaE: 0,
  shownMm2: 0,
  hiddenUnder: [],
  ...more,
});
const LIMITS = { minDeltaE: 1, minAreaMm2: 25 };
const words = (...pairs: PairOrder[]): string[] => reasonLines(pairs, LIMITS).map((line) => `${line.pairs}: ${line.words}`);

describe('countWords', () => {
  it('should count orders and prints', () => {
    const orders = Array.from({ length: 24 }, () => [0, 1, 2, 3]);
    expect(countWords({ orders, count: 6 })).toBe('24 orders, 6 different prints');
    expect(countWords({ orders: orders.slice(0, 2), count: 1 })).toBe('2 orders, 1 different print');
  });
});

describe('reasonLines', () => {
  it('should put pairs of one reason on one line, what shows first', () => {
    expect(words(pair(0, 1, 'apart'), pair(0, 2, 'shows'), pair(1, 2, 'apart'))).toEqual([
      '1 and 3: which lies on top shows in every order',
      '1 and 2, 2 and 3: never meet, so either may go down first',
    ]);
  });
  it('should blame films that only absorb for nothing but films that only absorb', () => {
    expect(words(pair(0, 1, 'absorb'))[0]).toContain('only absorb');
    expect(words(pair(0, 1, 'same-ink'))[0]).toBe('1 and 2: the same ink, so either order leaves the same film');
    expect(words(pair(0, 1, 'alike', { deltaE: 0.42 }))[0]).toBe(
      '1 and 2: look the same both ways: they differ by at most ΔE 0.4, and up to 1.0 counts as the same',
    );
  });
  it('should give the area that is too small, and name what hides a pair', () => {
    expect(words(pair(0, 1, 'small', { areaMm2: 4.25 }))[0]).toContain('meet on 4.3 mm² only; up to 25 mm² does not count');
    expect(words(pair(0, 1, 'small', { areaMm2: 900, shownMm2: 12 }))[0]).toContain('differ on 12 mm² only');
    expect(words(pair(0, 1, 'hidden', { hiddenUnder: [2, 3] }))[0]).toContain('hidden when 3 or 4 goes over both');
    expect(words(pair(0, 1, 'hidden'))[0]).toContain('in others the pulls around them hide it');
  });
});

describe('orderWords', () => {
  it('should read from first down to last down', () => {
    expect(orderWords([2, 0, 1])).toBe('3 under 1 under 2');
  });
});
