import { num } from '../../base/at.ts';
import { TRAITS } from './traits.ts';

/** Traits and their squares: a square says that the middle, or both ends, are liked. */
export const SIZE = TRAITS.length * 2;
/** Standard deviations beyond which a print counts as no further out. */
const FARTHEST = 3;
/** Traits that go so closely with one before them tell nothing of their own (coefficient of correlation). */
const ALIKE = 0.97;

/** Middle and spread of each trait among some prints, by which traits are compared. */
export interface Scale {
  middle: number[];
  /** 0 where a trait does not count: it is the same everywhere, or goes with one before it. */
  spread: number[];
}

/** The scale of prints that are to be told apart. @param traits a list of TRAITS.length numbers a print */
export function scaleOf(traits: readonly (readonly number[])[]): Scale {
  const count = Math.max(1, traits.length);
  const middle = TRAITS.map((_, i) => traits.reduce((sum, each) => sum + num(each, i), 0) / count);
  const spread = TRAITS.map((_, i) => Math.sqrt(traits.reduce((sum, each) => sum + (num(each, i) - num(middle, i)) ** 2, 0) / count));
  const together = (i: number, k: number): number =>
    traits.reduce((sum, each) => sum + (num(each, i) - num(middle, i)) * (num(each, k) - num(middle, k)), 0) /
    (count * num(spread, i) * num(spread, k));
  TRAITS.forEach((_, i) => {
    const same = num(spread, i) <= 1e-9 * (1 + Math.abs(num(middle, i)));
    const goes = !same && spread.slice(0, i).some((other, k) => other > 0 && Math.abs(together(i, k)) > ALIKE);
    if (same || goes) spread[i] = 0;
  });
  return { middle, spread };
}

/** Traits in standard deviations from the middle, and their squares. */
export function standardised(traits: readonly number[], { middle, spread }: Scale): Float64Array {
  const out = new Float64Array(SIZE);
  traits.forEach((value, i) => {
    if (num(spread, i) === 0) return;
    const z = Math.max(-FARTHEST, Math.min(FARTHEST, (value - num(middle, i)) / num(spread, i)));
    out[i] = z;
    out[TRAITS.length + i] = (z * z - 1) / 2;
  });
  return out;
}
