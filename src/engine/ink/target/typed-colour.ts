import { cutText } from '../../base/bounds.ts';
import { hexOfText } from '../../colour/hex-text.ts';
import { type Lab, roundedLab } from '../../colour/lab.ts';
import { labFromSrgbHex } from '../../colour/screen-colour.ts';
import { say } from '../../words/en/ink/target.ts';

/** A typed colour, or why it is none. */
export type Typed = { lab: Lab; problem: '' } | { lab: null; problem: string };

const NUMBER = /^[+-]?\d+([.,]\d+)?$/;
const MOST_AB = 160;

/**
 * A colour as people type it: '#a63c20', or L, a and b with blanks, commas or semicolons between,
 * decimal points or decimal commas.
 */
export function typedColour(text: string): Typed {
  const hex = hexOfText(text);
  if (hex !== null && !/^\d{3}$/.test(text.trim())) {
    return { lab: roundedLab(labFromSrgbHex(hex)), problem: '' };
  }
  const plain = text
    .replaceAll('−', '-')
    .replace(/\b[lab]\*?\s*[=:]/gi, ' ')
    .trim();
  // First as with decimal commas, then as with commas between.
  const parts = [/[\s;]+/, /[\s,;]+/]
    .map((between) => plain.split(between).filter((part) => part !== ''))
    .find((list) => list.length === 3 && list.every((part) => NUMBER.test(part)));
  if (parts === undefined) {
    return { lab: null, problem: say.isNoColourWrite(cutText(text.trim())) };
  }
  const [l, a, b] = parts.map((part) => Number(part.replace(',', '.'))) as Lab;
  if (l < 0 || l > 100) return { lab: null, problem: `L is ${l}, but goes from 0 to 100; read the square again.` };
  const far = [a, b].find((value) => Math.abs(value) > MOST_AB);
  if (far !== undefined) return { lab: null, problem: say.isTooFarFor(far, MOST_AB) };
  return { lab: [l, a, b], problem: '' };
}

/** A reading as its field shows it. */
export function readingText(lab: Readonly<Lab>): string {
  return roundedLab(lab)
    .map((value) => String(value).replace('-', '−'))
    .join(' ');
}
