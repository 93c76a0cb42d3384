import { f64, u32 } from '../../base/at.ts';
import { deltaE2000At } from '../../colour/delta-e.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { type FilmBands, overFilm } from '../../ink/film/film.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../ink/film/overprint-colour.ts';
import type { CellMap } from '../../stack/types.ts';
import { toldRoom } from './told/told-room.ts';

/**
 * Area of overprint colours: under two or more pulls, further than OVERPRINT_COLOUR_DELTA_E from the
 * paper and from each of the print's pulls alone on it, mm².
 * @param lab cells × 3, what each cell shows
 * @param swatches as pullSwatches gives them
 * @param told cells that take some of the sheet, whose colours were told apart just before: they are held still
 */
export function overprintColourArea(map: CellMap, lab: Float64Array, swatches: readonly Lab[], told?: Uint32Array): number {
  if (told === undefined) toldRoom.hold(lab, map.cells);
  const list = told ?? Uint32Array.from({ length: map.cells }, (_, cell) => cell);
  const far = toldRoom.farFrom(list, byLightness(swatches)) ?? plainFar(lab, list, swatches);
  let area = 0;
  for (let i = 0; i < far.length; i++) {
    const cell = u32(far, i);
    if (underTwo(map, cell)) area += f64(map.areaMm2, cell);
  }
  return area;
}

/** The same as of `ToldRoom.farFrom`, each cell compared with one swatch after another. */
export function plainFar(lab: Float64Array, list: Uint32Array, swatches: readonly Lab[]): Uint32Array {
  const inks = Float64Array.from(swatches.flat());
  return list.filter((cell) => swatches.every((_, ink) => !(deltaE2000At(lab, cell * 3, inks, ink * 3) <= OVERPRINT_COLOUR_DELTA_E)));
}

/** The swatches that were sorted latest, and as they were given. */
let given: readonly Lab[] = [];
let sorted: readonly Lab[] = [];

/** Swatches, darkest first; the same list as before where they are the same. */
function byLightness(swatches: readonly Lab[]): readonly Lab[] {
  if (swatches === given || (swatches.length === given.length && swatches.every((swatch, i) => swatch === given[i]))) return sorted;
  given = swatches;
  sorted = swatches.toSorted((one, other) => one[0] - other[0]);
  return sorted;
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
export function pullSwatches(films: Iterable<FilmBands>, paper: ArrayLike<number>, known = new Map<FilmBands | null, Lab>()): Lab[] {
  const swatches: Lab[] = [];
  let ofPaper = known.get(null);
  if (ofPaper === undefined) known.set(null, (ofPaper = labD50(paper)));
  swatches.push(ofPaper);
  for (const film of films) {
    let lab = known.get(film);
    if (lab === undefined) known.set(film, (lab = labD50(overFilm(film, paper, new Float64Array(paper.length)))));
    if (!swatches.includes(lab)) swatches.push(lab);
  }
  return swatches;
}
