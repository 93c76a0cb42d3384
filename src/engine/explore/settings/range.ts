import { type Limits, MOST_COUNTED, within } from '../../base/limits.ts';
import { say } from '../../words/en/explore/settings.ts';
import { numberLocale } from '../../words/language.ts';

/** What a number may be, and in which steps a field changes it. */
export interface Range extends Limits {
  step: number;
  whole: boolean;
}

/** Whether a number lies in a range and is whole where it must be; false for what is no number. */
export function inRange(range: Range, value: number): boolean {
  return within(range, value) && (!range.whole || Number.isInteger(value));
}

/** 'from 0 to 1,000' or '1 or more, at most a million', as it stands in a sentence. */
export function rangeText({ least, most }: Range): string {
  return most === MOST_COUNTED ? say.orMoreAtMost(least) : say.fromTo(least, most.toLocaleString(numberLocale()));
}

/** Whole numbers from one up; where no most is given, more only asks for nothing. */
export function wholeFrom(least: number, most = MOST_COUNTED): Range {
  return { least, most, step: 1, whole: true };
}
