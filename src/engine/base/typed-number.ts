import { say } from '../words/en/base/base.ts';

/** The sign between the whole and the rest of a number. */
export type DecimalSign = '.' | ',';

/** A typed number, or why it is none, in a sentence. */
export type TypedNumber = { value: number; problem: '' } | { value: null; problem: string };

const FRACTION = /^([+-]?)(?:(\d+)\s+)?(\d+)\s*[/⁄]\s*(\d+)$/u;
const GLYPHS: Readonly<Record<string, string>> = { '¼': '1/4', '½': '1/2', '¾': '3/4', '⅓': '1/3', '⅔': '2/3', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8' }; // oxfmt-ignore
/** Signs of a number; more are a text pasted by mistake. */
const LONGEST = 100;
const BLANKS = /[\s\u00a0\u2009\u202f'’]/gu;

/**
 * A number as people type it: with a point or a comma, with any minus, with thousands apart by a blank,
 * an apostrophe or the other sign. '1,234' and '1.234' are read by the person's own sign; whatever can be
 * read in one way only is read so: '2,5', '0,125', '1.234,5', '1,234,567'.
 * @param decimal the person's own decimal sign
 * @returns the number; for a fraction a sentence that says how to write it
 */
export function typedNumber(text: string, decimal: DecimalSign = '.'): TypedNumber {
  const shown = text.trim();
  if (shown === '') return none(say.giveNumber);
  if (shown.length > LONGEST) return none(say.isTooLongFor(shown.slice(0, 20), decimal));
  const plain = shown.replace(/^[−–‒-]\s*/u, '-');
  const glyph = GLYPHS[plain.slice(-1)];
  const written = glyph === undefined ? plain : `${plain.slice(0, -1).trimEnd()} ${glyph}`.replace(/^([+-]?) /u, '$1');
  const fraction = FRACTION.exec(written);
  if (fraction !== null) return none(say.isFractionWrite(shown, fractionText(fraction, decimal)));
  const digits = joined(plain);
  const value = Number(withPoint(digits, decimal));
  if (/^[+-]?[\d.,]+$/u.test(digits) && /\d/u.test(digits) && Number.isFinite(value)) return { value: value + 0, problem: '' };
  return none(say.isNoNumberWrite(shown, decimal));
}

/** A number as the person writes it, without thousands, with a true minus. */
export function numberText(value: number, decimal: DecimalSign = '.'): string {
  return String(value).replace('-', '−').replace('.', decimal);
}

function none(problem: string): TypedNumber {
  return { value: null, problem };
}

/** Thousands put together that stand apart by blanks; other blanks stay, so that '2 5' is no number. */
function joined(text: string): string {
  return /^[+-]?\d{1,3}(?:[\s\u00a0\u2009\u202f'’]\d{3})+(?:[.,]\d*)?$/u.test(text) ? text.replaceAll(BLANKS, '') : text;
}

/** Digits as Number reads them; NaN's text when commas and points make no number. */
function withPoint(text: string, decimal: DecimalSign): string {
  const commas = text.split(',').length - 1;
  const points = text.split('.').length - 1;
  if (commas > 0 && points > 0) {
    const last = text.lastIndexOf(',') > text.lastIndexOf('.') ? ',' : '.';
    return grouped(text, last === ',' ? '.' : ',', last);
  }
  const sign = commas > 0 ? ',' : '.';
  const count = commas + points;
  if (count === 0) return text;
  // Only a whole of one to three digits, not 0, before exactly three more can be a thousand.
  const thousand = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/u.test(text);
  if (count > 1 || (thousand && sign !== decimal)) return grouped(text, sign, '');
  return text.replace(sign, '.');
}

function grouped(text: string, group: DecimalSign, decimal: DecimalSign | ''): string {
  const [whole = '', rest, ...more] = decimal === '' ? [text] : text.split(decimal);
  const apart = group === '.' ? /^[+-]?\d{1,3}(?:\.\d{3})+$/u : /^[+-]?\d{1,3}(?:,\d{3})+$/u;
  if (more.length > 0 || !apart.test(whole) || (rest !== undefined && !/^\d*$/u.test(rest))) return 'NaN';
  return `${whole.replaceAll(group, '')}${rest === undefined ? '' : `.${rest}`}`;
}

function fractionText([, sign, whole = '0', over, under]: RegExpExecArray, decimal: DecimalSign): string {
  const value = Number(whole) + Number(over) / Number(under);
  if (!Number.isFinite(value)) return say.numberInDigits;
  const rounded = Math.round(value * 10_000) / 10_000;
  return say.roundedIsValueNumber(rounded === value, numberText(sign === '-' ? -rounded : rounded, decimal));
}
