import { f64, u32 } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { WithinDeltaE } from '../../colour/within-delta-e.ts';
import { type FilmBands, overFilm } from '../../ink/film/film.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../ink/film/overprint.ts';
import type { CellMap } from '../../stack/types.ts';

const within = new WithinDeltaE(OVERPRINT_COLOUR_DELTA_E);

/**
 * Area of overprint colours: under two or more pulls, further than OVERPRINT_COLOUR_DELTA_E from the
 * paper and from each of the print's pulls alone on it, mm².
 * @param lab cells × 3, what each cell shows
 * @param swatches as pullSwatches gives them
 */
export function overprintColourArea(map: CellMap, lab: Float64Array, swatches: readonly Lab[]): number {
  const inks = Float64Array.from(swatches.toSorted((one, other) => one[0] - other[0]).flat());
  let area = 0;
  for (let cell = 0; cell < map.cells; cell++) {
    if (!(f64(map.areaMm2, cell) > 0) || !underTwo(map, cell)) continue;
    if (!nearSome(inks, lab, cell * 3)) area += f64(map.areaMm2, cell);
  }
  return area;
}

/** @param inks three numbers each, darkest first */
function nearSome(inks: Float64Array, lab: Float64Array, at: number): boolean {
  const l = f64(lab, at);
  const reach = within.reachL(l);
  for (let ink = 0; ink < inks.length && f64(inks, ink) <= l + reach; ink += 3) {
    if (f64(inks, ink) >= l - reach && within.holds(inks, ink, lab, at)) return true;
  }
  return false;
}

/** Whether two pulls or more lie over a cell. */
function underTwo({ cover, words }: CellMap, cell: number): boolean {
  let one = false;
  for (let at = cell * words; at < (cell + 1) * words; at++) {
    const bits = u32(cover, at);
    if (bits === 0) continue;
    if (one || (bits & (bits - 1)) !== 0) return true;
    one = true;
  }
  return false;
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
