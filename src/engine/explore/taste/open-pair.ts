import { entryAt, f64 } from '../../base/at.ts';
import { varianceOf } from './logistic.ts';
import { SIZE } from './scale.ts';
import { STEPS, type Taste, type TasteView } from './taste.ts';

/** Prints among which a pair is looked for. */
const MOST_LOOKED_AT = 48;

/**
 * Two prints of which a taste knows least which would be chosen: the answer that is open and tells most.
 * @param views of all prints that hang
 * @param among their numbers, in the order in which they are tried
 * @param asked pairs that were asked before, as `${lower} ${higher}` number
 * @returns their numbers; null when all pairs were asked
 */
export function openPair(
  taste: Taste,
  views: readonly TasteView[],
  among: readonly number[],
  asked: ReadonlySet<string>,
): [number, number] | null {
  const tried = among.slice(0, MOST_LOOKED_AT);
  let best: [number, number] | null = null;
  let most = -1;
  const difference = new Float64Array(SIZE);
  tried.forEach((a, i) => {
    for (const b of tried.slice(0, i)) {
      if (asked.has(`${Math.min(a, b)} ${Math.max(a, b)}`)) continue;
      const [one, two] = [entryAt(views, a), entryAt(views, b)];
      for (let k = 0; k < SIZE; k++) difference[k] = f64(one.numbers, k) - f64(two.numbers, k);
      const chance = 1 / (1 + Math.exp((two.score - one.score) / STEPS));
      const worth = Math.round(STEPS * Math.log1p(chance * (1 - chance) * varianceOf(taste.fit, difference)));
      if (worth <= most) continue;
      most = worth;
      best = [b, a];
    }
  });
  return best;
}
