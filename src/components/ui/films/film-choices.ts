import type { FilmPaper, FilmSettings } from '../../../engine/output/film/settings.ts';
import type { Tile } from '../../../engine/output/film/tiles.ts';
import { type FilmLie, type FilmWays, readsWrong } from '../../../engine/output/film/ways.ts';
import type { FilmsAs } from '../../output/films/films-file.ts';
import { say } from '../../words/en/ui/films.ts';
import type { Option } from '../kit/select.ts';
import { cutsOf, type TypedCuts } from './cut-fields.ts';

/** All that is asked of films, as it stands in the fields. */
export interface FilmChoices extends FilmSettings, TypedCuts {}

export const FILMS_AS: readonly Option<FilmsAs>[] = [
  { value: 'pdf', label: say.onePDFAllFilms },
  { value: 'pdfs', label: say.pdfFilmInZip },
  { value: 'svgs', label: say.svgFilmInZip },
];

export const FILM_PAPERS: readonly Option<FilmPaper>[] = [
  { value: 'whole', label: say.filmInOnePiece },
  { value: 'A4', label: say.a4PagesToJoin },
  { value: 'A3', label: say.a3PagesToJoin },
  { value: 'Letter', label: say.letterPagesToJoin },
  { value: 'Tabloid', label: say.tabloidPagesToJoin },
];

export const FILM_SIDES: readonly Option<FilmLie['side']>[] = [
  { value: 'paper', label: say.paperSide },
  { value: 'squeegee', label: say.squeegeeSide },
];

export const PRINTED_SIDES: readonly Option<FilmLie['printed']>[] = [
  { value: 'against', label: say.againstEmulsion },
  { value: 'away', label: say.awayFromIt },
];

/** What follows for the films from how they lie, in a sentence or two. */
export function lieSentence(lie: FilmLie): string {
  const reads = readsWrong(lie) ? say.wrongReadingMirroredAs : say.rightReadingSeenFrom;
  return say.soFilmsAreLight(reads, lie.printed === 'away');
}

/** Sides of pages, mm. Source: ISO 216; ANSI/ASME Y14.1, A and B. */
const SIDES: Record<Exclude<FilmPaper, 'whole'>, readonly [number, number]> = {
  A4: [210, 297],
  A3: [297, 420],
  Letter: [215.9, 279.4],
  Tabloid: [279.4, 431.8],
};

function tileOf({ paper, overlapMm }: FilmChoices): Tile | null {
  if (paper === 'whole') return null;
  const [widthMm, heightMm] = SIDES[paper];
  return { widthMm, heightMm, overlapMm };
}

/**
 * How films are made by what stands in the fields.
 * @param title on every film
 * @throws EngineError 'film.cut' for cuts that are no numbers
 */
export function waysOf(choices: FilmChoices, title: string): FilmWays {
  const { side, printed, spreadMm, registerMarks, lays } = choices;
  return { title, side, printed, spreadMm, registerMarks, lays, cuts: cutsOf(choices), tile: tileOf(choices) };
}
