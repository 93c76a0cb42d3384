import { entryAt } from '../../base/at.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { expectedError } from '../certainty/expected-error.ts';
import type { Ink, Paper } from '../types.ts';
import { overFilm } from './film.ts';
import { filmOn, laidFilm } from './laid-film.ts';
import { OVERPRINT_COLOUR_DELTA_E } from './overprint-colour.ts';
import type { Printing } from './printing.ts';
import { swatchOf, type Swatch } from './swatch.ts';

/** One ink over another, a stroke each, on the paper. */
export interface Overprint {
  swatch: Swatch;
  /** ΔE00 to the same two inks in the other order; 0 for an ink over itself. */
  orderDeltaE: number;
  /** ΔE00 to the nearest of all inks' own swatches. */
  nearestDeltaE: number;
  /** How far the print may be from it, expected ΔE00. */
  expectedDeltaE: number;
  /** Whether it is farther than the chosen ΔE from every ink's own swatch. */
  overprintColour: boolean;
}

/** All inks over all inks. */
export interface OverprintGrid {
  /** Each ink alone on the paper, in the order given. */
  own: Swatch[];
  /** rows[first down][over it]. */
  rows: Overprint[][];
}

/** The ink whose own swatch is nearest a square's colour, by its place in the grid. */
export function nearestInk({ own, rows }: OverprintGrid, first: number, over: number): number {
  const { lab } = entryAt(entryAt(rows, first), over).swatch;
  const distances = own.map((swatch) => deltaE2000(lab, swatch.lab));
  return distances.indexOf(Math.min(...distances));
}

/**
 * What every ink gives over every other, in both orders.
 * @param inks any number; the grid is as wide as it is high
 * @param printing what they are printed on, seen through what surface, and how films lie on films
 * @param relative true shows the paper as the screen's white
 * @param overprintDeltaE from how far off every ink's own swatch an overprint is a colour of its own
 * @throws EngineError 'ink.bad-film'
 */
export function overprintGrid(
  inks: readonly Ink[],
  printing: Printing & { paper: Pick<Paper, 'reflectance'> },
  relative: boolean,
  overprintDeltaE = OVERPRINT_COLOUR_DELTA_E,
): OverprintGrid {
  const { reflectance } = printing.paper;
  const white = relative ? reflectance : undefined;
  const films = inks.map((ink) => laidFilm(ink, 1, printing));
  const singles = films.map((film) => overFilm(film.onPaper, reflectance, new Float64Array(reflectance.length)));
  const own = singles.map((single) => swatchOf(single, white));
  const swatches = singles.map((single, first) =>
    films.map((film) => swatchOf(overFilm(filmOn(film, entryAt(films, first)), single, new Float64Array(single.length)), white)),
  );
  const rows = swatches.map((row, first) =>
    row.map((swatch, over) => {
      const nearestDeltaE = own.reduce((least, { lab }) => Math.min(least, deltaE2000(swatch.lab, lab)), Infinity);
      return {
        swatch,
        orderDeltaE: first === over ? 0 : deltaE2000(swatch.lab, entryAt(entryAt(swatches, over), first).lab),
        nearestDeltaE,
        expectedDeltaE: expectedError([{ ink: entryAt(inks, first) }, { ink: entryAt(inks, over) }], printing).deltaE,
        overprintColour: first !== over && nearestDeltaE > overprintDeltaE,
      };
    }),
  );
  return { own, rows };
}
