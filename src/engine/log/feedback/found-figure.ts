import { entryAt, num } from '../../base/at.ts';

/** What a visit says of a studio figure: the middle of what was found, and from where to where it ranged. */
export interface FoundFigure {
  /** The median. */
  value: number;
  least: number;
  most: number;
  /** In how many set-ups it was found. */
  setUps: number;
}

/** The middle and range of what set-ups said; null of none. */
export function foundFigure(values: readonly number[]): FoundFigure | null {
  if (values.length === 0) return null;
  const sorted = values.toSorted((a, b) => a - b);
  return { value: median(sorted), least: num(sorted, 0), most: num(sorted, sorted.length - 1), setUps: sorted.length };
}

/** The median of values, the mean of the two middle ones where they are even; at least one. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  return sorted.length % 2 === 1 ? entryAt(sorted, Math.floor(half)) : (num(sorted, half - 1) + num(sorted, half)) / 2;
}
