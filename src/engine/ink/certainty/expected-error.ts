import { entryAt } from '../../base/at.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { filmBands, overFilm } from '../film/film.ts';
import { type Printing, trappingOn } from '../film/printing.ts';
import type { Ink, InkBasis, Paper } from '../types.ts';

/** A film of a stack. */
export interface StackedFilm {
  ink: Ink;
  /** In films of the ink's own curves; 1 when left out. See filmFactor. */
  thickness?: number | undefined;
}

/** A predicted colour, and about how far the print may be from it. */
export interface ExpectedColour {
  /** D50/2°. */
  lab: Lab;
  /** Expected ΔE00 between print and prediction: 'within about'. */
  deltaE: number;
  /** Where it comes from, ΔE00 each; their squares add up to that of deltaE. */
  parts: { film: number; inks: number; press: number };
}

/** What a pull's film varies by from sheet to sheet: anything within ±10 %, common practice, no source. */
const FILM_SPREAD = 0.1 / Math.sqrt(3);
/**
 * How far an ink's absorption may be from what is thought, in each third of the bands, and its scattering,
 * as logarithms. Chosen so that what is expected is as much as what six published sets of overprints
 * really miss by (tests/published/ink/expected-error.test.ts).
 */
const KNOWN: Readonly<Record<InkBasis | 'fit', { absorbs: number; scatters: number }>> = {
  fit: { absorbs: 0.04, scatters: 0.2 },
  measured: { absorbs: 0.05, scatters: 0.25 },
  drawdown: { absorbs: 0.1, scatters: 0.4 },
  guess: { absorbs: 0.2, scatters: 0.8 },
  invented: { absorbs: 0.2, scatters: 0.8 },
};
/** Of ln trapping, and of k2, where no target told them. */
const TRAPPING_SPREAD = 0.15;
const K2_SPREAD = 0.1;
/** What a film of a fitted ink misses alone on the paper, ΔE00. */
const FITTED_ALONE = 0.5;
const THIRDS = 3;
/** Scattering of an ink that is thought not to scatter may be this much. */
const FAINT = 0.003;
/** Steps are taken in parts of a spread, where ΔE is still in proportion. */
const STEP = 0.25;

/**
 * The colour of films on a paper with its expected error: of the film's thickness, of how each ink is
 * known, and of trapping and surface. Where a target was pulled of all inks, the error of its overprints
 * that were left out stands for the last two.
 * @param films first down first; none gives the paper, without an error
 * @param printing paper, surface and trapping of the studio
 * @throws EngineError 'ink.bad-film'
 * Each unknown is moved by itself and the differences added as squares (propagation of uncertainty, JCGM
 * 100:2008, 5.1).
 */
export function expectedError(films: readonly StackedFilm[], printing: Printing & { paper: Pick<Paper, 'reflectance'> }): ExpectedColour {
  const lab = shown(films, printing, NOTHING);
  const miss = (moved: Moved): number => deltaE2000(lab, shown(films, printing, moved)) / STEP;
  let film = 0;
  let inks = 0;
  films.forEach(({ ink }, at) => {
    film += miss({ ...NOTHING, at, thickness: STEP * FILM_SPREAD }) ** 2;
    const known = KNOWN[ink.fit === undefined ? ink.basis : 'fit'];
    for (let third = 0; third < THIRDS; third++) inks += miss({ ...NOTHING, at, third, absorbs: STEP * known.absorbs }) ** 2;
    inks += miss({ ...NOTHING, at, scatters: STEP * known.scatters }) ** 2;
  });
  let press = 0;
  if (films.length > 1) press += miss({ ...NOTHING, trapping: STEP * TRAPPING_SPREAD }) ** 2;
  if (films.length > 0) press += miss({ ...NOTHING, k2: STEP * K2_SPREAD }) ** 2;
  const fits = films.map(({ ink }) => ink.fit);
  if (films.length > 0 && fits.every((fit) => fit !== undefined)) {
    press = 0;
    inks = films.length === 1 ? FITTED_ALONE ** 2 : Math.max(...fits.map((fit) => fit.looDeltaE)) ** 2;
  }
  return { lab, deltaE: Math.sqrt(film + inks + press), parts: { film: Math.sqrt(film), inks: Math.sqrt(inks), press: Math.sqrt(press) } };
}

/** One unknown that is moved, as logarithms but for k2; `at` names the film. */
interface Moved {
  at: number;
  third: number;
  absorbs: number;
  scatters: number;
  thickness: number;
  trapping: number;
  k2: number;
}

const NOTHING: Moved = { at: -1, third: 0, absorbs: 0, scatters: 0, thickness: 0, trapping: 0, k2: 0 };

function shown(
  films: readonly StackedFilm[],
  { paper, surface, trapping }: Printing & { paper: Pick<Paper, 'reflectance'> },
  moved: Moved,
): Lab {
  const out = Float64Array.from(paper.reflectance);
  const k2 = (surface?.k2 ?? 0) + moved.k2;
  const seen = surface === undefined && moved.k2 === 0 ? undefined : { k1: surface?.k1 ?? 0, k2 };
  films.forEach(({ ink, thickness = 1 }, i) => {
    const under = i === 0 ? null : entryAt(films, i - 1).ink.id;
    const trapped = trappingOn(trapping, under, ink.id) * (under === null ? 1 : Math.exp(-moved.trapping));
    const own = i === moved.at ? movedCurves(ink, moved) : ink;
    const thick = thickness * trapped * (i === moved.at ? Math.exp(moved.thickness) : 1);
    overFilm(filmBands(own.kx, own.sx, thick, seen), out, out);
  });
  return labD50(out);
}

function movedCurves({ kx, sx }: Ink, { third, absorbs, scatters }: Moved): { kx: Float64Array; sx: Float64Array } {
  const scattered = Math.expm1(scatters);
  return {
    kx: Float64Array.from(kx, (k, band) => k * Math.exp(absorbs * hump(third, band))),
    sx: Float64Array.from(sx, (s) => s + Math.max(s, FAINT) * scattered),
  };
}

/** 1 at a third's middle, falling evenly to 0 at the next ones'. */
function hump(third: number, band: number): number {
  return Math.max(0, 1 - Math.abs((band * (THIRDS - 1)) / (BANDS - 1) - third));
}
