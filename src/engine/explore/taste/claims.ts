import { entryAt, f64, num } from '../../base/at.ts';
import { fitPairs, type Pairs, varianceOf } from './logistic.ts';
import { SIZE } from './scale.ts';
import type { Taste } from './taste.ts';
import { type TraitKey, TRAITS } from './traits.ts';

/** Something that a taste has learnt: more or less of a trait, or the middle of it. */
export interface Claim {
  trait: TraitKey;
  way: 'more' | 'less' | 'middle';
}

/** A weight is told of from so many standard deviations on: of 40 weights, chance brings one so far in a wall of ten. */
const CLEAR = 2.8;
const MOST_CLAIMS = 3;
const RIDGE = 0.5;

/** Traits by number in the fit, and how clearly the last of them stands away from 0. */
interface Tried {
  columns: number[];
  clear: number;
}

/**
 * What stands clearly away from nothing: at most three claims, the clearest first. Each is judged beside those
 * before it alone, so that traits that go together do not hide each other, and a second is told of only for what the
 * first leaves unsaid.
 */
export function claimsOf({ pairs, scale }: Taste): Claim[] {
  const claims: Claim[] = [];
  let columns: number[] = [];
  while (claims.length < MOST_CLAIMS) {
    let best: Tried | null = null;
    for (let i = 0; i < TRAITS.length; i++) {
      if (num(scale.spread, i) === 0 || columns.includes(i)) continue;
      const straight = tried(pairs, [...columns, i]);
      const bent = tried(pairs, [...columns, i, TRAITS.length + i]);
      // Both ends liked is no taste that one could name.
      for (const each of bent.clear < 0 ? [straight, bent] : [straight]) {
        if (Math.abs(each.clear) > Math.abs(best?.clear ?? CLEAR)) best = each;
      }
    }
    const last = best?.columns.at(-1);
    if (best === null || last === undefined) break;
    columns = best.columns;
    claims.push({
      trait: entryAt(TRAITS, last % TRAITS.length),
      way: last >= TRAITS.length ? 'middle' : best.clear > 0 ? 'more' : 'less',
    });
  }
  return claims;
}

/** Fits some traits alone. */
function tried({ differences, counts }: Pairs, columns: number[]): Tried {
  const size = columns.length;
  const part = Float64Array.from({ length: counts.length * size }, (_, at) =>
    f64(differences, Math.floor(at / size) * SIZE + num(columns, at % size)),
  );
  const fit = fitPairs({ size, differences: part, counts }, new Float64Array(size).fill(RIDGE));
  if (fit === null) return { columns, clear: 0 };
  const one = new Float64Array(size);
  one[size - 1] = 1;
  // In hundredths, so that every machine tells the same.
  return { columns, clear: Math.round((100 * f64(fit.weights, size - 1)) / Math.sqrt(varianceOf(fit, one))) / 100 };
}
