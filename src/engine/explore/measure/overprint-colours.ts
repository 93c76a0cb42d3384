import { f64, u32, u8 } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { NearLanes } from '../../colour/near-lanes.ts';
import { WithinDeltaE } from '../../colour/within-delta-e.ts';
import { type FilmBands, overFilm } from '../../ink/film/film.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../ink/film/overprint.ts';
import type { CellMap } from '../../stack/types.ts';

const within = new WithinDeltaE(OVERPRINT_COLOUR_DELTA_E);
const lanes = new NearLanes();
/** Cells and swatches, two a pair; swatches are numbered after the cells. */
let pairs = new Uint32Array(1024);

/**
 * Area of overprint colours: under two or more pulls, further than OVERPRINT_COLOUR_DELTA_E from the
 * paper and from each of the print's pulls alone on it, mm².
 * @param lab cells × 3, what each cell shows
 * @param swatches as pullSwatches gives them
 */
export function overprintColourArea(map: CellMap, lab: Float64Array, swatches: readonly Lab[]): number {
  const inks = Float64Array.from(swatches.toSorted((one, other) => one[0] - other[0]).flat());
  let count = 0;
  let area = 0;
  for (let cell = 0; cell < map.cells; cell++) {
    if (!(f64(map.areaMm2, cell) > 0) || !underTwo(map, cell)) continue;
    if (pairs.length < (count + swatches.length) * 2) pairs = longer(pairs, (count + swatches.length) * 4);
    const from = count;
    const l = f64(lab, cell * 3);
    const reach = within.reachL(l);
    // Swatches lie darkest first.
    for (let ink = 0; ink < inks.length && f64(inks, ink) <= l + reach; ink += 3) {
      if (f64(inks, ink) < l - reach) continue;
      pairs[count * 2] = cell;
      pairs[count++ * 2 + 1] = map.cells + ink / 3;
    }
    if (count === from) area += f64(map.areaMm2, cell);
  }
  lanes.hold(lab, map.cells, inks);
  const near = lanes.within(pairs, count, OVERPRINT_COLOUR_DELTA_E);
  for (let pair = 0; pair < count;) {
    const cell = u32(pairs, pair * 2);
    let found = 0;
    for (; pair < count && pairs[pair * 2] === cell; pair++) found |= u8(near, pair);
    if (found === 0) area += f64(map.areaMm2, cell);
  }
  return area;
}

function longer(from: Uint32Array, length: number): Uint32Array<ArrayBuffer> {
  const to = new Uint32Array(length);
  to.set(from);
  return to;
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
