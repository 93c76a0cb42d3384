import { f64 } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { type FilmBands, overFilm } from '../../ink/film/film.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../ink/film/overprint.ts';
import type { CellMap } from '../../stack/types.ts';
import { near, printedCells, pullsOver } from './cells.ts';

/**
 * Area of overprint colours: under two or more pulls, further than OVERPRINT_COLOUR_DELTA_E from the
 * paper and from each of the print's pulls alone on it, mm².
 * @param lab cells × 3, what each cell shows
 * @param swatches as pullSwatches gives them
 */
export function overprintColourArea(map: CellMap, lab: ArrayLike<number>, swatches: readonly Lab[]): number {
  let area = 0;
  for (const cell of printedCells(map)) {
    if (pullsOver(map, cell) < 2) continue;
    if (!swatches.some((swatch) => near(swatch, lab, cell, OVERPRINT_COLOUR_DELTA_E))) area += f64(map.areaMm2, cell);
  }
  return area;
}

/**
 * Lab of the paper and of each film alone on it, each film once.
 * @param films of a print's pulls
 * @param paper reflectance, 36 bands
 * @param known swatches on this paper from earlier calls; new ones are put in
 */
export function pullSwatches(films: Iterable<FilmBands>, paper: ArrayLike<number>, known = new Map<FilmBands, Lab>()): Lab[] {
  const swatches = [labD50(paper)];
  for (const film of new Set(films)) {
    const lab = known.get(film) ?? labD50(overFilm(film, paper, new Float64Array(paper.length)));
    known.set(film, lab);
    swatches.push(lab);
  }
  return swatches;
}
