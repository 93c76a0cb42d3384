import { num } from '../../base/at.ts';
import { say } from '../../words/en/ink/cgats.ts';
import type { Unit } from './fields.ts';

/** How much more than a perfect white a reading may be: brighteners glow, and instruments err. */
export const MOST_REFLECTANCE = 1.2;

// A print whose lightest reading is 2 % does not happen, whereas a bad reading of 2 does.
const LEAST_PERCENT_TOP = 2;
const LEAST_PERCENT_SHARE = 0.2;
const SURE_PERCENT_TOP = 5;
// So few are bad readings, each told by itself.
const STRAY_SHARE = 0.05;

/** What the numbers of spectral columns are to be divided by. */
export interface Scale {
  divisor: 1 | 100;
  /** Why this may be wrong, a sentence without its full stop; null when there is no doubt. */
  doubt: string | null;
}

/**
 * Whether spectral numbers run to 1 or to 100, from what the file says and from the numbers.
 * @param values all of one kind of column, NaN for unreadable ones; a few bad ones do not mislead
 * @param unit what the file says
 */
export function scaleOf(values: ArrayLike<number>, unit: Unit): Scale {
  let count = 0;
  let over = 0;
  let top = 0;
  for (let i = 0; i < values.length; i++) {
    const value = num(values, i);
    if (Number.isNaN(value)) continue;
    count++;
    if (value > MOST_REFLECTANCE) over++;
    top = Math.max(top, value);
  }
  const found = say.highestOfSpectralValues(Number(top.toPrecision(4)));
  if (unit === 'fraction') {
    const looksPercent = over > count / 2;
    return looksPercent ? { divisor: 100, doubt: say.fileSaysThatIts(found) } : { divisor: 1, doubt: null };
  }
  if (unit === 'percent') {
    return over === 0 && count > 0 && top > 0
      ? { divisor: 1, doubt: say.fileSaysThatItsReflectances(found) }
      : { divisor: 100, doubt: null };
  }
  if (over === 0) return { divisor: 1, doubt: null };
  if (top > LEAST_PERCENT_TOP && over >= LEAST_PERCENT_SHARE * count) {
    return {
      divisor: 100,
      doubt: top < SURE_PERCENT_TOP ? say.fileDoesNotSay(found) : null,
    };
  }
  if (over <= STRAY_SHARE * count) return { divisor: 1, doubt: null };
  return {
    divisor: 1,
    doubt: say.fileDoesNotSayHow(found),
  };
}
