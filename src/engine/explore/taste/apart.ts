import { num } from '../../base/at.ts';
import { MEASURES } from '../measure/variant-measures.ts';
import { type TasteFacts, type TraitKey, TRAITS, traitsOf } from './traits.ts';

/** A trait by which a print stands apart from others. */
export interface Apart {
  trait: TraitKey;
  value: number;
  /** The mean of the others. */
  usual: number;
}

/** Less than this part of what the prints of a wall spread by (one standard deviation) is not worth a word. */
const LEAST_SPREAD = 0.6;
/** What goes so closely with what was said says it again (coefficient of correlation). */
const SAME = 0.6;
/** What one counts rather than sees comes after what one sees: it weighs half; a choice of ours. */
const COUNTED: readonly TraitKey[] = ['pulls', 'screens', 'setUps'];
/** Prints from which it is taken how much a wall's differ. */
const MOST_TAKEN = 600;

/**
 * The traits by which a print differs most from some others, against how much the prints of the wall differ.
 * @param others at least one, else nothing is found
 * @param wall all that hang
 * @returns at most two that do not say the same, the one that sets it apart most first
 */
export function apartFrom(of: TasteFacts, others: readonly TasteFacts[], wall: readonly TasteFacts[]): Apart[] {
  if (others.length === 0) return [];
  const step = Math.max(1, Math.ceil(wall.length / MOST_TAKEN));
  const rows = wall.filter((_, i) => i % step === 0).map(traitsOf);
  const own = traitsOf(of);
  const usual = meansOf(others.map(traitsOf));
  const middle = meansOf(rows);
  const spread = TRAITS.map((_, i) => together(rows, middle, i, i) ** 0.5);
  const found = TRAITS.flatMap((trait, i) => {
    const [value, mean, usually] = [num(own, i), num(spread, i), num(usual, i)];
    if (mean < 1e-9 || readsAlike(trait, value, usually)) return [];
    const worth = (Math.abs(value - usually) / mean) * (COUNTED.includes(trait) ? 0.5 : 1);
    return worth < LEAST_SPREAD ? [] : [{ i, worth, apart: { trait, value, usual: usually } }];
  }).sort((a, b) => b.worth - a.worth || a.i - b.i);
  const [first, ...rest] = found;
  if (first === undefined) return [];
  const other = rest.find(({ i }) => {
    const goes = together(rows, middle, i, first.i) / (num(spread, i) * num(spread, first.i));
    return Math.abs(goes) < SAME;
  });
  return [first.apart, ...(other === undefined ? [] : [other.apart])];
}

function meansOf(rows: readonly (readonly number[])[]): number[] {
  return TRAITS.map((_, i) => rows.reduce((sum, row) => sum + num(row, i), 0) / Math.max(1, rows.length));
}

/** Covariance of two traits. */
function together(rows: readonly (readonly number[])[], middle: readonly number[], i: number, k: number): number {
  const sum = rows.reduce((all, row) => all + (num(row, i) - num(middle, i)) * (num(row, k) - num(middle, k)), 0);
  return sum / Math.max(1, rows.length);
}

/** Whether two values of a measure are the same as they are written. */
function readsAlike(trait: TraitKey, a: number, b: number): boolean {
  const measure = MEASURES.find(({ key }) => key === trait);
  return measure !== undefined && a.toFixed(measure.digits) === b.toFixed(measure.digits);
}
