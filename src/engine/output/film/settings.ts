import { MOST_KEPT_CUTS, OVERLAP_MM } from './film-limits.ts';
import type { SheetCuts } from './sections.ts';
import { type FilmWays, USUAL_LIE } from './ways.ts';

/** What the printer of the films takes. */
export type FilmPaper = 'whole' | 'A4' | 'A3' | 'Letter' | 'Tabloid';

/** Where sheets of one size are cut. */
export interface KeptCuts {
  widthMm: number;
  heightMm: number;
  acrossMm: number[];
  downMm: number[];
  overlapMm: number;
}

/** How a project's films are made, screen after screen: a studio's habits and its printer. */
export interface FilmSettings extends Pick<FilmWays, 'side' | 'printed' | 'spreadMm' | 'registerMarks' | 'lays'> {
  /** One PDF for all films, or a file for each page in a zip. */
  as: 'pdf' | 'pdfs' | 'svgs';
  paper: FilmPaper;
  /** What two neighbouring pages of a smaller printer both show, mm. */
  overlapMm: number;
  /** Cuts belong to a sheet: at most one entry a size, the newest last; absent until a sheet is cut. */
  cuts?: readonly KeptCuts[] | undefined;
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

interface Sheet {
  widthMm: number;
  heightMm: number;
}

/** Where sheets of a size were cut last; undefined for those that never were. */
export function keptCuts({ cuts = [] }: Pick<FilmSettings, 'cuts'>, { widthMm, heightMm }: Sheet): KeptCuts | undefined {
  return cuts.find((kept) => kept.widthMm === widthMm && kept.heightMm === heightMm);
}

/** Settings that keep where sheets of a size are cut, or that they are not. */
export function withCuts(
  settings: FilmSettings,
  { widthMm, heightMm }: Sheet,
  { acrossMm, downMm, overlapMm = 0 }: SheetCuts,
): FilmSettings {
  const { cuts = [], ...rest } = settings;
  const before = keptCuts(settings, { widthMm, heightMm });
  const others = cuts.filter((kept) => kept !== before);
  const none = acrossMm.length + downMm.length === 0;
  const all = none ? others : [...others, { widthMm, heightMm, acrossMm: [...acrossMm], downMm: [...downMm], overlapMm }];
  return all.length === 0 ? rest : { ...rest, cuts: all.slice(-MOST_KEPT_CUTS) };
}
