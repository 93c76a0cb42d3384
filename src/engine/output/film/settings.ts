import { OVERLAP_MM } from './film-limits.ts';
import { type FilmWays, USUAL_LIE } from './ways.ts';

/** What the printer of the films takes. */
export type FilmPaper = 'whole' | 'A4' | 'A3' | 'Letter' | 'Tabloid';

/** How a project's films are made, screen after screen: a studio's habits and its printer. */
export interface FilmSettings extends Pick<FilmWays, 'side' | 'printed' | 'spreadMm' | 'registerMarks' | 'lays'> {
  /** One PDF for all films, or a file for each page in a zip. */
  as: 'pdf' | 'pdfs' | 'svgs';
  paper: FilmPaper;
  /** What two neighbouring pages of a smaller printer both show, mm. */
  overlapMm: number;
}

/** Until something else is asked. */
export const USUAL_FILMS: FilmSettings = {
  ...USUAL_LIE,
  spreadMm: 0,
  registerMarks: true,
  lays: false,
  as: 'pdf',
  paper: 'whole',
  overlapMm: OVERLAP_MM.usual,
};
