import { num } from '../base/at.ts';

// Numbers that follow each other as whole steps from one to the next, a sign or two each: small steps are
// common, and are the same signs again and again, which is what packs well.

/** Signs that end a step, and as many that say that it goes on; none of them is a quote or a backslash. */
const DIGITS = 44;
const ENDS = [...'#$%&()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNO'];
const GOES_ON = [...'PQRSTUVWXYZ[]^_`abcdefghijklmnopqrstuvwxyz{|'];
const VALUES = new Map([...ENDS, ...GOES_ON].map((sign, value) => [sign, value]));
/** No step has more digits: 44^5 is beyond all bounds. */
const MOST_DIGITS = 5;

/** Whole steps as signs: 0, −1, 1, −2, … are the digits 0, 1, 2, 3, the least digit first. */
export function lettersOf(steps: readonly number[]): string {
  return steps
    .map((step) => {
      let rest = step < 0 ? -2 * step - 1 : 2 * step;
      let text = '';
      for (; rest >= DIGITS; rest = Math.floor(rest / DIGITS)) text += GOES_ON[rest % DIGITS];
      return `${text}${ENDS[rest]}`;
    })
    .join('');
}

/** The steps behind signs; null where one is no sign of a step, or a step does not end. */
export function stepsOf(letters: string): number[] | null {
  const out: number[] = [];
  let [value, digit] = [0, 0];
  for (const sign of letters) {
    const found = VALUES.get(sign);
    if (found === undefined || digit >= MOST_DIGITS) return null;
    value += (found % DIGITS) * DIGITS ** digit++;
    if (found >= DIGITS) continue;
    out.push(value % 2 === 1 ? -(value + 1) / 2 : value / 2);
    [value, digit] = [0, 0];
  }
  return digit === 0 ? out : null;
}

/** A curve's value is written to half a percent, and 0 as 0. */
const CURVE_STEPS = 200;
const CURVE_SCALE = 50;

/** Whole numbers as the steps between them. */
export function deltas(values: readonly number[]): number[] {
  return values.map((value, i) => value - (i === 0 ? 0 : num(values, i - 1)));
}

/** The values behind steps. @param every how many lie between a value and the next of its kind: 2 for x, y, x, y */
export function sums(steps: readonly number[], every = 1): number[] {
  const out: number[] = [];
  for (const [i, step] of steps.entries()) out.push(step + (i < every ? 0 : num(out, i - every)));
  return out;
}

/** Absorption or scattering, band by band, in signs. */
export function packCurve(values: readonly number[]): string {
  return lettersOf(deltas(values.map((value) => Math.round(CURVE_STEPS * Math.log1p(CURVE_SCALE * value)))));
}

/** The curve that was packed; null where it is none. */
export function unpackCurve(letters: string): number[] | null {
  const steps = stepsOf(letters);
  return steps === null ? null : sums(steps).map((step) => Math.expm1(step / CURVE_STEPS) / CURVE_SCALE);
}
