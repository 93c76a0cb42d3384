import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { otsuThreshold } from '../../../src/engine/shapes/trace/otsu.ts';

/** Variance within dark and light, weighted: what Otsu (1979) finds the least of. */
function within(counts: readonly number[], threshold: number): number {
  const part = (from: number, to: number): number => {
    const greys = counts.slice(from, to).flatMap((count, i) => Array.from({ length: count }, () => from + i));
    const mean = greys.reduce((sum, grey) => sum + grey, 0) / greys.length;
    return greys.reduce((sum, grey) => sum + (grey - mean) ** 2, 0);
  };
  return part(0, threshold) + part(threshold, counts.length);
}

describe('the threshold of Otsu (1979)', () => {
  it('should part the six greys of a worked example between the third and the fourth', () => {
    // A picture of 6 × 6 pixels often used to show the method (from memory): weights 0.4722 and 0.5278.
    expect(otsuThreshold(Uint32Array.from([8, 7, 2, 6, 9, 4]))).toBe(3);
  });

  it('should have the least variance within the two parts, by trying all', () => {
    const random = randomFrom('otsu');
    for (let round = 0; round < 50; round++) {
      const counts = Array.from({ length: 12 }, () => random.int(20));
      const found = otsuThreshold(Uint32Array.from(counts))!;
      const least = Math.min(...counts.slice(1).map((_, i) => within(counts, i + 1)).filter((value) => !Number.isNaN(value)));
      expect(within(counts, found)).toBeCloseTo(least, 6);
    }
  });

  it('should find none where there is one grey only', () => {
    expect(otsuThreshold(Uint32Array.from([0, 0, 40, 0]))).toBeNull();
  });
});
