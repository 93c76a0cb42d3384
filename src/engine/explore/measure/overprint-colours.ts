import { entryAt, f64, u16, u32, u8 } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { NearLanes, STEP } from '../../colour/near-lanes.ts';
import { WithinDeltaE } from '../../colour/within-delta-e.ts';
import { type FilmBands, overFilm } from '../../ink/film/film.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../ink/film/overprint.ts';
import type { CellMap } from '../../stack/types.ts';

const within = new WithinDeltaE(OVERPRINT_COLOUR_DELTA_E);
const lanes = new NearLanes();
/** Swatches are looked for by parts of L; the first and the last hold all that lies beyond. */
const PARTS = 50;
const PART_L = 2;
/** By part the first swatch within reach, and the one after the last. */
const firstOf = new Uint16Array(PARTS);
const endOf = new Uint16Array(PARTS);
/** L, a and b of what nothing is near to. */
const NOTHING = -1000;
/** Cells and swatches, the first of some; swatches are numbered after the cells. */
let rows = new Uint32Array(1024);

/**
 * Area of overprint colours: under two or more pulls, further than OVERPRINT_COLOUR_DELTA_E from the
 * paper and from each of the print's pulls alone on it, mm².
 * @param lab cells × 3, what each cell shows
 * @param swatches as pullSwatches gives them
 */
export function overprintColourArea(map: CellMap, lab: Float64Array, swatches: readonly Lab[]): number {
  const byL = swatches.toSorted((one, other) => one[0] - other[0]);
  markReach(byL);
  const perCell = Math.ceil(byL.length / STEP);
  let count = 0;
  let area = 0;
  for (let cell = 0; cell < map.cells; cell++) {
    if (!(f64(map.areaMm2, cell) > 0) || !underTwo(map, cell)) continue;
    if (rows.length < (count + perCell) * 2) rows = longer(rows, (count + perCell) * 4);
    const part = Math.max(0, Math.min(PARTS - 1, Math.floor(f64(lab, cell * 3) / PART_L)));
    const from = count;
    for (let ink = u16(firstOf, part), end = u16(endOf, part); ink < end; ink += STEP) {
      rows[count * 2] = cell;
      rows[count++ * 2 + 1] = map.cells + ink;
    }
    if (count === from) area += f64(map.areaMm2, cell);
  }
  // Beyond the last of them come some that nothing is near to.
  const inks = new Float64Array((byL.length + STEP) * 3).fill(NOTHING);
  inks.set(byL.flat());
  lanes.hold(lab, map.cells, inks);
  const near = lanes.anyWithin(rows, count, OVERPRINT_COLOUR_DELTA_E);
  for (let row = 0; row < count;) {
    const cell = u32(rows, row * 2);
    let found = 0;
    for (; row < count && rows[row * 2] === cell; row++) found |= u8(near, row);
    if (found === 0) area += f64(map.areaMm2, cell);
  }
  return area;
}

/** @param byL swatches, darkest first */
function markReach(byL: readonly Lab[]): void {
  const last = byL.length;
  for (let part = 0; part < PARTS; part++) {
    const [from, to] = [part * PART_L, (part + 1) * PART_L];
    const reach = Math.max(within.reachL(from), within.reachL(to));
    let first = 0;
    if (part > 0) while (first < last && entryAt(byL, first)[0] < from - reach) first++;
    let end = first;
    while (end < last && (part === PARTS - 1 || entryAt(byL, end)[0] <= to + reach)) end++;
    firstOf[part] = first;
    endOf[part] = end;
  }
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
