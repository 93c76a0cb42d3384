import type { Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/target.ts';
import type { CgatsSample } from '../cgats/read-cgats.ts';
import type { Ink } from '../types.ts';
import { sampleReadings } from './sample-readings.ts';
import type { FewSquare } from './target.ts';
import { readingText, typedColour } from './typed-colour.ts';
import type { Misread } from './typed-readings.ts';

/** A square that was read. */
export type ReadSquare = FewSquare & { lab: Lab };

/** The squares that were read. */
export function readOf(squares: readonly FewSquare[]): ReadSquare[] {
  return squares.filter((square): square is ReadSquare => square.lab !== undefined);
}

/** What a square is called: 'Tar over Ochre', 'Ochre alone'. */
export function filmsName(films: readonly string[], inks: readonly Pick<Ink, 'id' | 'name'>[]): string {
  const names = films.map((id) => inks.find((ink) => ink.id === id)?.name ?? say.inkThatIsGone);
  return names.length === 1 ? say.alone(names.join()) : names.reverse().join(say.over);
}

/**
 * Squares with what was typed for some of them; an empty text takes a reading away.
 * @param texts by the number of the square, from 1
 * @returns the same list where nothing changes, and the texts that are no colour
 */
export function withTyped(
  squares: readonly FewSquare[],
  texts: ReadonlyMap<number, string>,
): { squares: readonly FewSquare[]; misread: Map<number, Misread> } {
  const misread = new Map<number, Misread>();
  let changed = false;
  const next = squares.map((square, i): FewSquare => {
    const text = texts.get(i + 1);
    if (text === undefined || (square.lab !== undefined && text.trim() === readingText(square.lab))) return square;
    if (text.trim() === '') {
      changed ||= square.lab !== undefined;
      return { films: square.films };
    }
    const { lab, problem } = typedColour(text);
    if (lab === null) {
      misread.set(i + 1, { text, problem });
      return square;
    }
    changed = true;
    return { films: square.films, lab };
  });
  return { squares: changed ? next : squares, misread };
}

/** Squares with what a measurement file gives: samples are named by the numbers of the squares. */
export function withSamples(
  squares: readonly FewSquare[],
  samples: readonly CgatsSample[],
): { squares: FewSquare[]; read: number; remarks: string[] } {
  const numbered = squares.map((_, i) => ({ number: i + 1 }));
  const { readings, remarks } = sampleReadings(samples, numbered);
  const found = new Map(readings.map(([{ number }, reading]) => [number, reading]));
  return { squares: squares.map((square, i) => ({ films: square.films, ...(found.get(i + 1) ?? square) })), read: found.size, remarks };
}
