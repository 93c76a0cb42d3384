import { defined } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { MOST_SHEETS } from '../../base/limits.ts';
import type { Recipe } from '../../recipe/types.ts';
import { say } from '../../words/en/log/edition.ts';
import type { ScreenFate } from './fates.ts';

/** How many of each kind an edition has. */
export interface EditionCounts {
  impressions: number;
  /** Artist's proofs. */
  ap: number;
  /** Printer's proofs. */
  pp: number;
  /** Hors commerce, not for sale. */
  hc: number;
  /** The approved standard that all others are compared with: one or none. */
  bat: boolean;
  /** Impressions differ from each other on purpose. */
  variable: boolean;
}

/** What only the artist can say of an edition. */
export interface EditionWords {
  artist: string;
  title: string;
  year: string;
  workshop: string;
  /** Of printing; what the log says of each pull stands beside it. */
  dates: string;
  /** What was spoiled where no log says it, and how it was done away with. */
  rejects: string;
  approved: string;
  other: string;
}

/** A mark that was given to a sheet by hand; '' keeps the sheet out of the edition. */
export interface ChosenMark {
  sheet: number;
  mark: string;
}

/** An edition of a kept recipe, as far as somebody has said something of it. */
export interface Edition {
  /** Id of the recipe; it has one edition. */
  recipe: string;
  counts: EditionCounts;
  words: EditionWords;
  fates: ScreenFate[];
  /** Sheets to print beside those that get a mark, to take the place of spoiled ones; absent until somebody says. */
  spares?: number | undefined;
  /** Id of the logged visit in which it was printed; absent until one is chosen. */
  visit?: string | undefined;
  /** Of that visit's sheets. */
  marks: ChosenMark[];
}

/** From so many sheets on one is spared as the approved standard, and one for the printer. */
const LEAST_FOR = { bat: 8, pp: 12 };

/** Artist's proofs for each impression of an edition that nobody has counted yet; common practice, no source. */
const AP_PROPOSED = 0.1;

/** What 24 sheets give. */
const USUAL_COUNTS: EditionCounts = { impressions: 20, ap: 2, pp: 1, hc: 0, bat: true, variable: false };

/** An edition of exactly so many sheets: impressions, and of proofs what the number allows; common practice, no source. */
function countsFor(sheets: number): EditionCounts {
  const bat = sheets >= LEAST_FOR.bat;
  const pp = sheets >= LEAST_FOR.pp ? 1 : 0;
  const rest = sheets - pp - (bat ? 1 : 0);
  const ap = Math.round((rest * AP_PROPOSED) / (1 + AP_PROPOSED));
  return { ...USUAL_COUNTS, impressions: rest - ap, ap, pp, bat };
}

/**
 * An edition of which nothing was said yet.
 * @param sheets good ones that there are for it, or that are to be printed; absent or 0 = nobody knows, so that it is the usual one
 */
export function newEdition(recipe: Pick<Recipe, 'id' | 'title'>, sheets = 0): Edition {
  return {
    recipe: recipe.id,
    counts: sheets > 0 ? countsFor(Math.min(sheets, MOST_SHEETS)) : { ...USUAL_COUNTS },
    words: { artist: '', title: recipe.title, year: '', workshop: '', dates: '', rejects: '', approved: '', other: '' },
    fates: [],
    marks: [],
  };
}

/** Share of artist's proofs that is usual (common practice, no source); a warning, never a rule. */
const AP_SHARE = { least: 0.05, most: 0.2 };

/**
 * What is pencilled on the sheets: impressions first, then the proofs. The number says nothing
 * about the order of printing.
 * @returns '1/30' or 'EV 1/30', 'BAT', 'AP 1/3', 'PP 1/2', 'HC 1/2'
 */
export function editionMarks(counts: EditionCounts): string[] {
  const run = (mark: string, count: number): string[] => Array.from({ length: count }, (_, i) => `${mark}${i + 1}/${count}`);
  return [
    ...run(counts.variable ? 'EV ' : '', counts.impressions),
    ...(counts.bat ? ['BAT'] : []),
    ...run('AP ', counts.ap),
    ...run('PP ', counts.pp),
    ...run('HC ', counts.hc),
  ];
}

/**
 * What is impossible or unusual about an edition.
 * @returns 'edition.count' (cannot be), 'edition.sheets' (more than a visit holds), 'edition.ap'
 *   (a share of artist's proofs outside 5–20 %: glossaries of the trade differ, so only a warning)
 */
export function checkEdition(counts: EditionCounts): Problem[] {
  const named = [
    [say.impressions, counts.impressions, 1],
    [say.artistsProofs, counts.ap, 0],
    [say.printersProofs, counts.pp, 0],
    [say.horsCommerce, counts.hc, 0],
  ] as const;
  for (const [name, count, least] of named) {
    if (!Number.isInteger(count) || count < least || count > MOST_SHEETS) {
      const message = Number.isNaN(count)
        ? say.numberOfIsMissing(name, least, MOST_SHEETS)
        : say.numberOfIsGive(name, count, least, MOST_SHEETS);
      return [{ code: 'edition.count', message, where: name }];
    }
  }
  const problems: Problem[] = [];
  const sheets = editionMarks(counts).length;
  if (sheets > MOST_SHEETS) {
    problems.push({
      code: 'edition.sheets',
      message: say.sheetsAreMoreThan(sheets, MOST_SHEETS),
      where: 'sheets',
    });
  }
  const share = counts.ap / counts.impressions;
  if (counts.ap > 0 && (share < AP_SHARE.least || share > AP_SHARE.most)) {
    problems.push({
      code: 'edition.ap',
      message: say.artistsProofsAreOf(counts.ap, Math.round(share * 100)),
      where: 'artist’s proofs',
    });
  }
  return problems;
}

/** How an edition was made, as its documentation sheet tells it. */
export interface EditionFacts {
  paper: string;
  /** Each ink that is printed, with the parts by weight that it is mixed from. */
  inks: { name: string; mix: { name: string; parts: number }[] }[];
  screens: { number: number; name: string; mesh: string }[];
  /** First down first. */
  sequence: { screen: number; ink: string; strokes: number; dxMm: number; dyMm: number; turnDeg: number }[];
}

/** Reads from a recipe how its prints are made. */
export function editionFacts(recipe: Recipe): EditionFacts {
  const { paper, pulls } = recipe;
  const screen = new Map(recipe.screens.map((entry) => [entry.id, entry]));
  const ink = new Map(recipe.inks.map((entry) => [entry.id, entry]));
  const printed = new Set(pulls.map((pull) => pull.ink));
  return {
    paper: `${paper.name}, ${paper.widthMm} × ${paper.heightMm} mm`,
    inks: recipe.inks
      .filter((entry) => printed.has(entry.id))
      .map(({ name, mix }) => ({
        name,
        mix: (mix ?? []).map((part) => ({ name: ink.get(part.ink)?.name ?? part.ink, parts: part.parts })),
      })),
    screens: recipe.screens.map(({ number, name, mesh }) => ({
      number,
      name,
      mesh: say.threadsCmThreadM(mesh.threadsPerCm, mesh.threadUm),
    })),
    sequence: pulls.map(({ screen: id, ink: inkId, strokes, dxMm, dyMm, turnDeg }) => ({
      screen: defined(screen.get(id)).number,
      ink: defined(ink.get(inkId)).name,
      strokes,
      dxMm,
      dyMm,
      turnDeg,
    })),
  };
}
