import { expect, it } from 'vitest';
import { PairNumbers } from '../../../src/engine/base/pair-numbers.ts';
import { randomFrom } from '../../../src/engine/base/random.ts';

it('should number pairs as a Map of texts does, however many there are', () => {
  const random = randomFrom('pairs');
  const numbers = new PairNumbers(4);
  const expected = new Map<string, number>();
  const whole = (): number => (random.chance(1, 2) ? random.int(40) : random.int(2 ** 31) * 2 - 2 ** 31) | 0;
  for (let i = 0; i < 4000; i++) {
    const [first, second] = [whole(), random.int(50) - 1];
    const key = `${first} ${second}`;
    expect(numbers.of(first, second)).toBe(expected.get(key) ?? -1);
    if (expected.has(key)) continue;
    expected.set(key, expected.size);
    expect(numbers.add(first, second)).toBe(expected.get(key));
  }
  expect(numbers.size).toBe(expected.size);
  numbers.clear();
  expect([numbers.size, numbers.of(0, 0)]).toEqual([0, -1]);
});
