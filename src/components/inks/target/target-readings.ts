import { defined, entryAt, num } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { labD50, type Lab } from '../../../engine/colour/lab.ts';
import { labFromSrgbHex } from '../../../engine/colour/screen-colour.ts';
import type { CgatsSample } from '../../../engine/ink/cgats/read-cgats.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { MeasuredSquare, Project, Target } from '../../../engine/project/types.ts';
import { hexOfText } from '../add/hex-text.ts';
import type { TargetSquare } from './target-layout.ts';

/** The project's target; before there is one, of all inks that are pulled. */
export function targetOf({ target, drawer }: Pick<Project, 'target' | 'drawer'>): Target {
  return target ?? { inks: printInks(drawer.inks).map(({ id }) => id), squares: [] };
}

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
    const [l, a, b] = labFromSrgbHex(hex);
    return { lab: [roundTo(l, 2), roundTo(a, 2), roundTo(b, 2)], problem: '' };
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
    return { lab: null, problem: `“${text.trim()}” is no colour: write L, a and b, as in 52.1 −3 18.4, or # and six hex digits.` };
  }
  const [l, a, b] = parts.map((part) => Number(part.replace(',', '.'))) as Lab;
  if (l < 0 || l > 100) return { lab: null, problem: `L is ${l}, but goes from 0 to 100; read the square again.` };
  const far = [a, b].find((value) => Math.abs(value) > MOST_AB);
  if (far !== undefined)
    return { lab: null, problem: `${far} is too far for a or b, which go from −${MOST_AB} to ${MOST_AB}; read the square again.` };
  return { lab: [l, a, b], problem: '' };
}

/** A reading as its field shows it. */
export function readingText([l, a, b]: Readonly<Lab>): string {
  return [l, a, b].map((value) => String(roundTo(value, 2)).replace('-', '−')).join(' ');
}

/** Whether a reading is of a square. */
export function isOf(square: Pick<TargetSquare, 'first' | 'over'>, reading: Pick<MeasuredSquare, 'first' | 'over'>): boolean {
  return reading.first === square.first && reading.over === square.over;
}

/** A target with readings put in the place of those of the same squares; null takes one away. */
export function withReadings(
  target: Target,
  readings: readonly (readonly [TargetSquare, Omit<MeasuredSquare, 'first' | 'over'> | null])[],
): Target {
  const kept = target.squares.filter((old) => !readings.some(([square]) => isOf(square, old)));
  const fresh = readings.flatMap(([{ first, over }, reading]) => (reading === null ? [] : [{ first, over, ...reading }]));
  return { ...target, squares: [...kept, ...fresh] };
}

/**
 * Lines that were pasted into the field of a square: one colour a line for it and the squares after
 * it, or lines that begin with a square's number.
 * @returns squares with their text
 */
export function pastedLines(text: string, squares: readonly TargetSquare[], from: number): [TargetSquare, string][] {
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const numbered = lines.map((line) => /^(\d+)[\s,;:]+(.+)$/.exec(line));
  const start = squares.findIndex(({ number }) => number === from);
  return lines.flatMap((line, i): [TargetSquare, string][] => {
    const [, number, rest] = numbered[i] ?? [];
    const named =
      rest !== undefined && typedColour(rest).problem === '' ? squares.find((square) => square.number === Number(number)) : undefined;
    if (named !== undefined) return [[named, defined(rest)]];
    const square = squares[start + i];
    return square === undefined ? [] : [[square, line]];
  });
}

/** What a measurement file gives for a target. */
export interface FileReadings {
  readings: [TargetSquare, Omit<MeasuredSquare, 'first' | 'over'>][];
  /** What was left out or joined, in sentences. */
  remarks: string[];
}

/**
 * Readings by sample id, which is the square's number; ids such as 'S07' count as 7. Several samples
 * of one square are averaged.
 */
export function readingsOfSamples(samples: readonly CgatsSample[], squares: readonly TargetSquare[]): FileReadings {
  const bySquare = new Map<TargetSquare, CgatsSample[]>();
  const strange: string[] = [];
  for (const sample of samples) {
    const digits = /^\D*?0*(\d+)$/.exec(sample.id.trim())?.[1];
    const square = squares.find(({ number }) => number === Number(digits));
    if (square === undefined) strange.push(sample.id === '' ? sample.name : sample.id);
    else bySquare.set(square, [...(bySquare.get(square) ?? []), sample]);
  }
  const remarks: string[] = [];
  if (strange.length > 0) {
    const some = strange.slice(0, 5).join(', ');
    remarks.push(
      `Samples ${some}${strange.length > 5 ? ` and ${strange.length - 5} more` : ''} are no numbers of this target's squares, 1 to ${squares.length}; they were left out.`,
    );
  }
  const twice = [...bySquare].filter(([, list]) => list.length > 1).map(([square]) => square.number);
  if (twice.length > 0)
    remarks.push(
      `Square ${twice.slice(0, 8).join(', ')}${twice.length > 8 ? ' and more' : ''} was measured more than once; the mean is taken.`,
    );
  const readings = [...bySquare].map(([square, list]): FileReadings['readings'][number] => [square, meanReading(list)]);
  return { readings: readings.sort(([a], [b]) => a.number - b.number), remarks };
}

/** The mean of samples of one square: of curves where all have one, else of Labs. */
function meanReading(list: readonly CgatsSample[]): Omit<MeasuredSquare, 'first' | 'over'> {
  const mean = (values: readonly ArrayLike<number>[]): number[] =>
    Array.from(entryAt(values, 0), (_, i) => values.reduce((sum, each) => sum + num(each, i), 0) / values.length);
  const curves = list.flatMap(({ reflectance }) => (reflectance === undefined ? [] : [reflectance]));
  if (curves.length === list.length) {
    const reflectance = mean(curves);
    return { lab: labD50(reflectance), reflectance };
  }
  return { lab: mean(list.map(({ lab, reflectance }) => lab ?? labD50(defined(reflectance)))) as Lab };
}
