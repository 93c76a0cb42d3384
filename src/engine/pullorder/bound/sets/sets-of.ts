import { num } from '../../../base/at.ts';

/** All sets of k of some letters, in the order of a dictionary. */
export function* setsOf(letters: readonly number[], k: number): Generator<number[], void> {
  const places = Array.from({ length: k }, (_, i) => i);
  for (let i = k <= letters.length ? 0 : -1; i >= 0;) {
    yield places.map((p) => num(letters, p));
    for (i = k - 1; i >= 0 && num(places, i) === letters.length - k + i;) i--;
    if (i >= 0) {
      const next = num(places, i) + 1 - i;
      for (let j = i; j < k; j++) places[j] = next + j;
    }
  }
}
