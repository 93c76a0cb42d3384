import { entryAt, f64, u16, u32, u8 } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { STEP } from '../../colour/near-lanes.ts';
import { reachL } from '../../colour/reach.ts';
import { type FilmBands, overFilm } from '../../ink/film/film.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../ink/film/overprint.ts';
import type { CellMap } from '../../stack/types.ts';
import { heldLanes } from './told/told-room.ts';

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
 * @param held whether these colours were told apart just before, and are held still
 */
export function overprintColourArea(map: CellMap, lab: Float64Array, swatches: readonly Lab[], held = false): number {
  const { areaMm2, cells } = map;
  const inks = inksByL(swatches);
  const most = Math.ceil(swatches.length / STEP);
  if (rows.length < cells * most * 2) rows = new Uint32Array(cells * most * 4);
  const list = rows;
  let end = 0;
  let area = 0;
  for (let cell = 0; cell < cells; cell++) {
    if (!(f64(areaMm2, cell) > 0) || !underTwo(map, cell)) continue;
    const at = f64(lab, cell * 3) * (1 / PART_L);
    const part = at < 0 ? 0 : at < PARTS ? at | 0 : PARTS - 1;
    const last = u16(endOf, part);
    let ink = u16(firstOf, part);
    if (ink >= last) area += f64(areaMm2, cell);
    for (; ink < last; ink += STEP, end += 2) {
      list[end] = cell;
      list[end + 1] = cells + ink;
    }
  }
  if (!held) heldLanes.hold(lab, cells);
  heldLanes.hold(inks, inks.length / 3, cells);
  const near = heldLanes.anyWithin(list, end / 2, OVERPRINT_COLOUR_DELTA_E);
  for (let at = 0; at < end;) {
    const cell = u32(list, at);
    let found = 0;
    for (; at < end && list[at] === cell; at += 2) found |= u8(near, at / 2);
    if (found === 0) area += f64(areaMm2, cell);
  }
  return area;
}

/** The swatches whose reach is marked, and as they were given. */
let marked: readonly Lab[] = [];
let markedInks = new Float64Array(0);

/** Marks where swatches reach. @returns them, darkest first; beyond the last come some that nothing is near to */
function inksByL(swatches: readonly Lab[]): Float64Array {
  if (swatches.length === marked.length && swatches.every((swatch, i) => swatch === marked[i])) return markedInks;
  const byL = swatches.toSorted((one, other) => one[0] - other[0]);
  markReach(byL);
  markedInks = new Float64Array((byL.length + STEP) * 3).fill(NOTHING);
  markedInks.set(byL.flat());
  marked = swatches.slice();
  return markedInks;
}

/** @param byL swatches, darkest first */
function markReach(byL: readonly Lab[]): void {
  const last = byL.length;
  for (let part = 0; part < PARTS; part++) {
    const [from, to] = [part * PART_L, (part + 1) * PART_L];
    const reach = Math.max(reachL(from, OVERPRINT_COLOUR_DELTA_E), reachL(to, OVERPRINT_COLOUR_DELTA_E));
    let first = 0;
    if (part > 0) while (first < last && entryAt(byL, first)[0] < from - reach) first++;
    let end = first;
    while (end < last && (part === PARTS - 1 || entryAt(byL, end)[0] <= to + reach)) end++;
    firstOf[part] = first;
    endOf[part] = end;
  }
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
