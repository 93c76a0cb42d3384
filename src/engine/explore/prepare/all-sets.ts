import { f64 } from '../../base/at.ts';
import { bitCount } from '../../base/bits.ts';
import { affordable, type ScreenSets } from './screen-sets.ts';

/** Up to so many screens all sets are gone through, a second at the most. */
export const MOST_FOR_ALL_SETS = 24;
/** Sets are gone through in parts of so many screens, which keeps the list of a part at 32 MB. */
const PART = 22;

/** Makes of each set's own value the sum over all its subsets; in place. Source: Yates (1937), 'The design and analysis of factorial experiments' (from memory). */
function sumSubsets(values: Float64Array, screens: number): void {
  for (let bit = 1; bit < 1 << screens; bit *= 2) {
    for (let block = 0; block < values.length; block += 2 * bit) {
      for (let low = block; low < block + bit; low++) values[low + bit] = f64(values, low + bit) + f64(values, low);
    }
  }
}

/**
 * Of all sets of screens that may be made the one that prints most, the first of them by its screens' numbers.
 * @param sets of at most MOST_FOR_ALL_SETS screens
 */
export function bestOfAllSets({ groups, names, limits }: ScreenSets): Set<number> {
  const screens = [...names.keys()];
  const part = Math.min(PART, names.length);
  const most = limits[0]?.most ?? 0;
  const masks = groups.map(({ lacks }) => lacks.reduce((mask, screen) => mask | (1 << screen), 0));
  const values = new Float64Array(1 << part);
  let best = new Set<number>();
  let weight = 0;
  for (let upper = 0; upper < 1 << (names.length - part); upper++) {
    values.fill(0);
    groups.forEach((group, i) => {
      const mask = masks[i] ?? 0;
      if (((mask >> part) & ~upper) !== 0) return;
      const low = mask & (values.length - 1);
      values[low] = f64(values, low) + group.weight;
    });
    sumSubsets(values, part);
    const left = most - bitCount(upper);
    for (let low = 0; low < values.length; low++) {
      if (f64(values, low) <= weight || bitCount(low) > left) continue;
      const mask = (upper << part) | low;
      const made = new Set(screens.filter((screen) => (mask >> screen) & 1));
      if (limits.length > 1 && !affordable(made, limits)) continue;
      best = made;
      weight = f64(values, low);
    }
  }
  return best;
}
