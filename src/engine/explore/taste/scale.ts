import { num } from '../../base/at.ts';
import { type TasteFacts, TRAITS, traitsOf } from './traits.ts';
import { WAVES, wavesOf } from './waves.ts';

/** What tells prints apart: traits, their squares (by which the middle, or both ends, are liked), and waves. */
const APART = TRAITS.length + WAVES;
export const SIZE = TRAITS.length + APART;
/** Standard deviations beyond which a print counts as no further out. */
const FARTHEST = 3;
/** What goes so closely with what stands before it tells nothing of their own (coefficient of correlation). */
const ALIKE = 0.97;

/** Middle and spread of each trait among some prints, by which traits are compared. */
export interface Scale {
  middle: number[];
  /** 0 where a trait does not count: it is the same everywhere, or goes with one before it. */
  spread: number[];
}

function apartOf(facts: TasteFacts): number[] {
  return [...traitsOf(facts), ...wavesOf(facts.sketch)];
}

/** The scale of prints that are to be told apart. */
export function scaleOf(prints: readonly TasteFacts[]): Scale {
  const rows = prints.map(apartOf);
  const count = Math.max(1, rows.length);
  const all = Array.from({ length: APART }, (_, i) => i);
  const middle = all.map((i) => rows.reduce((sum, each) => sum + num(each, i), 0) / count);
  const spread = all.map((i) => Math.sqrt(rows.reduce((sum, each) => sum + (num(each, i) - num(middle, i)) ** 2, 0) / count));
  const together = (i: number, k: number): number =>
    rows.reduce((sum, each) => sum + (num(each, i) - num(middle, i)) * (num(each, k) - num(middle, k)), 0) /
    (count * num(spread, i) * num(spread, k));
  for (const i of all) {
    const same = num(spread, i) <= 1e-9 * (1 + Math.abs(num(middle, i)));
    const goes = !same && spread.slice(0, i).some((other, k) => other > 0 && Math.abs(together(i, k)) > ALIKE);
    if (same || goes) spread[i] = 0;
  }
  return { middle, spread };
}

/** A print in standard deviations from the middle: traits, their squares, and waves. */
export function standardised(facts: TasteFacts, { middle, spread }: Scale): Float64Array {
  const out = new Float64Array(SIZE);
  apartOf(facts).forEach((value, i) => {
    if (num(spread, i) === 0) return;
    const z = Math.max(-FARTHEST, Math.min(FARTHEST, (value - num(middle, i)) / num(spread, i)));
    if (i >= TRAITS.length) out[TRAITS.length + i] = z;
    else {
      out[i] = z;
      out[TRAITS.length + i] = (z * z - 1) / 2;
    }
  });
  return out;
}
