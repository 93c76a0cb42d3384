import { entryAt, f64, u8 } from '../../base/at.ts';

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
  const all = looks.map(numbersOf);
  const nearest = new Float64Array(all.length).fill(Infinity);
  all.forEach((a, i) => {
    for (let j = 0; j < i; j++) {
      const enough = Math.max(f64(nearest, i), f64(nearest, j));
      const square = squaredSteps(a, entryAt(all, j), enough);
      if (square < f64(nearest, i)) nearest[i] = square;
      if (square < f64(nearest, j)) nearest[j] = square;
    }
  });
  const steps = nearest.reduce((sum, square) => sum + Math.sqrt(square), 0);
  return Math.round((1000 * steps) / STEPS / all.length) / 1000;
}

/** The numbers of a text of two lower-case hex digits each. */
function numbersOf(text: string): Uint8Array {
  const numbers = new Uint8Array(text.length >> 1);
  for (let i = 0; i < numbers.length; i++) numbers[i] = digit(text, i * 2) * 16 + digit(text, i * 2 + 1);
  return numbers;
}

function digit(text: string, at: number): number {
  const code = text.charCodeAt(at);
  return code < 58 ? code - 48 : code - 87;
}

/** @param enough once the sum is at least this, it need not be finished */
function squaredSteps(a: Uint8Array, b: Uint8Array, enough: number): number {
  let sum = 0;
  // Asking costs as much as a term.
  for (let i = 0; i < a.length && sum < enough;) {
    for (const until = Math.min(i + 12, a.length); i < until; i++) {
      const off = u8(a, i) - u8(b, i);
      sum += off * off;
    }
  }
  return sum;
}
