import { entryAt, num, u8 } from '../../base/at.ts';

/** Steps of a descriptor's numbers to a distance of 1. */
const STEPS = 1024;

/**
 * How far the prints of a wall lie from the one that looks most like them, in the mean: the larger, the more of them
 * are different. In distances of descriptors, where 0.02 is about what one has to look twice for. Reads the texts by
 * itself: the page, which asks, needs nothing of what describes prints.
 * @param looks descriptors as `descriptorText` gives them
 * @returns rounded to 0.001; null of fewer than two prints
 * Cost O(prints²).
 */
export function spreadOfWall(looks: readonly string[]): number | null {
  if (looks.length < 2) return null;
  const all = looks.map((text) => Uint8Array.from(text.match(/../g) ?? [], (digits) => Number.parseInt(digits, 16)));
  const nearest = all.map(() => Infinity);
  all.forEach((a, i) => {
    for (let j = 0; j < i; j++) {
      const square = squaredSteps(a, entryAt(all, j));
      nearest[i] = Math.min(num(nearest, i), square);
      nearest[j] = Math.min(num(nearest, j), square);
    }
  });
  const steps = nearest.reduce((sum, square) => sum + Math.sqrt(square), 0);
  return Math.round((1000 * steps) / STEPS / all.length) / 1000;
}

function squaredSteps(a: Uint8Array, b: Uint8Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (u8(a, i) - u8(b, i)) ** 2;
  return sum;
}
