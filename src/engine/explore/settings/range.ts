import { type Limits, within } from '../../base/limits.ts';

/** What a number may be, and in which steps a field changes it; most is Infinity where more only asks for nothing. */
export interface Range extends Limits {
  step: number;
  whole: boolean;
}

/** Whether a number lies in a range and is whole where it must be; false for what is no number. */
export function inRange(range: Range, value: number): boolean {
  return within(range, value) && (!range.whole || Number.isInteger(value));
}

/** '0 to 1,000' or '1 or more', as it stands in a sentence. */
export function rangeText({ least, most }: Range): string {
  return most === Infinity ? `${least} or more` : `from ${least} to ${most.toLocaleString('en')}`;
}

/** Whole numbers from one up. */
export function wholeFrom(least: number, most = Infinity): Range {
  return { least, most, step: 1, whole: true };
}
