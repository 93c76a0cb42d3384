import { defined } from '../../base/at.ts';
import { readingOf, type SquareReading, type Target, type TargetSquare } from './target.ts';
import { readingText, typedColour } from './typed-colour.ts';

/** A text that is no colour, and why. */
export interface Misread {
  text: string;
  problem: string;
}

/** What was typed into fields of squares. */
export interface TypedReadings {
  /** Only of squares whose reading changes; null where a field was emptied. */
  readings: SquareReading[];
  /** By the square's number. */
  misread: Map<number, Misread>;
}

/** Readings from what was typed for squares of a target; a text that shows a reading as it is changes nothing. */
export function typedReadings(target: Target, entries: readonly (readonly [TargetSquare, string])[]): TypedReadings {
  const readings: SquareReading[] = [];
  const misread = new Map<number, Misread>();
  for (const [square, text] of entries) {
    const old = readingOf(target, square);
    if (text.trim() === '') {
      if (old !== undefined) readings.push([square, null]);
      continue;
    }
    const { lab, problem } = typedColour(text);
    if (lab === null) misread.set(square.number, { text, problem });
    else if (old === undefined || readingText(old.lab) !== readingText(lab)) readings.push([square, { lab }]);
  }
  return { readings, misread };
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
  const numbered = lines.map((line) => /^(\d+)[\s,;:]+([^\s,;:].*)$/.exec(line));
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
