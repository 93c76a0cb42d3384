import { entryAt, f64, num, u32 } from '../../base/at.ts';
import { deltaE2000Values } from '../../colour/delta-e.ts';
import type { CellMap } from '../../stack/types.ts';
import { type EdgeLengths, edgeMeasure } from './edges.ts';

/** One colour of a print and how much of the sheet it takes. */
export interface ColourArea {
  lab: [number, number, number];
  areaMm2: number;
}

/** What a print is like, exact from its cells. */
export interface Measures {
  /** Colours told apart, paper among them, largest area first. */
  colours: ColourArea[];
  /** Share of the sheet that some pull covers, 0–1. */
  coverage: number;
  /** Darkest and lightest L of any area, paper included. */
  lightness: [number, number];
  /** Area of colours that are in no ink's swatch, where two or more pulls overlap, mm². */
  thirdColourMm2: number;
  /** Edge length × ΔE00 across it ÷ sheet area, ΔE/mm: how busy the print is. */
  busyness: number;
  /** How far the centre of darkness lies from the sheet's: 0 at the centre, 1 at a corner. */
  imbalance: number;
}

/** Colours closer than this count as one, ΔE00; just visible side by side (common practice, no source). */
export const SAME_COLOUR_DELTA_E = 2;

/**
 * All measures of a variant.
 * @param lab cells × 3, what each cell shows (cellLab of the stack module)
 * @param laid bits of the placed screens that are printed; all when left out
 * @param swatches Lab of the paper and of each ink alone on it
 * @param edges of the map, when they are known already
 */
export function measureVariant(
  map: CellMap,
  lab: ArrayLike<number>,
  swatches: readonly (readonly [number, number, number])[],
  laid?: Uint32Array,
  edges?: EdgeLengths,
): Measures {
  return {
    colours: colourAreas(map, lab),
    coverage: coverage(map, laid),
    lightness: lightnessRange(map, lab),
    thirdColourMm2: thirdColourArea(map, lab, swatches, laid),
    busyness: edgeMeasure(map, lab, edges).contrast / (map.widthMm * map.heightMm),
    imbalance: imbalance(map, lab),
  };
}

/**
 * Area by colour. Cells join, largest first, the first colour within `sameDeltaE`; a colour is
 * that of its largest cell.
 */
export function colourAreas(map: CellMap, lab: ArrayLike<number>, sameDeltaE = SAME_COLOUR_DELTA_E): ColourArea[] {
  const cells = printedCells(map).sort((a, b) => f64(map.areaMm2, b) - f64(map.areaMm2, a) || a - b);
  const colours: ColourArea[] = [];
  for (const cell of cells) {
    let found: ColourArea | undefined;
    for (let i = 0; found === undefined && i < colours.length; i++) {
      if (near(entryAt(colours, i).lab, lab, cell, sameDeltaE)) found = colours[i];
    }
    if (found !== undefined) found.areaMm2 += f64(map.areaMm2, cell);
    else colours.push({ lab: [num(lab, cell * 3), num(lab, cell * 3 + 1), num(lab, cell * 3 + 2)], areaMm2: f64(map.areaMm2, cell) });
  }
  return colours.sort((a, b) => b.areaMm2 - a.areaMm2);
}

/** Share of the sheet under at least one pull, 0–1. */
export function coverage(map: CellMap, laid?: Uint32Array): number {
  let covered = 0;
  for (const cell of printedCells(map)) if (pullsOver(map, cell, laid) > 0) covered += f64(map.areaMm2, cell);
  return covered / (map.widthMm * map.heightMm);
}

/** Least and greatest L of all areas of the sheet. */
export function lightnessRange(map: CellMap, lab: ArrayLike<number>): [number, number] {
  let least = Infinity;
  let most = -Infinity;
  for (const cell of printedCells(map)) {
    least = Math.min(least, num(lab, cell * 3));
    most = Math.max(most, num(lab, cell * 3));
  }
  return [least, most];
}

/** Area under two or more pulls whose colour no swatch comes near, mm². */
export function thirdColourArea(
  map: CellMap,
  lab: ArrayLike<number>,
  swatches: readonly (readonly [number, number, number])[],
  laid?: Uint32Array,
  sameDeltaE = SAME_COLOUR_DELTA_E,
): number {
  let area = 0;
  for (const cell of printedCells(map)) {
    if (pullsOver(map, cell, laid) < 2) continue;
    if (!swatches.some((swatch) => near(swatch, lab, cell, sameDeltaE))) area += f64(map.areaMm2, cell);
  }
  return area;
}

/**
 * Distance of the centre of darkness from the sheet's centre, as a share of half its diagonal;
 * darkness is how much darker than the lightest area. 0 for a sheet of one lightness.
 * Source: deviation of the centre of mass, as a measure of balance: Hübner and Fillinger (2016),
 * Frontiers in Psychology 7:335; the scale is ours.
 */
export function imbalance(map: CellMap, lab: ArrayLike<number>): number {
  const lightest = lightnessRange(map, lab)[1];
  const rowHeightMm = map.heightMm / map.rows;
  let mass = 0;
  let massX = 0;
  let massY = 0;
  for (let row = 0; row < map.rows; row++) {
    let fromMm = 0;
    const yMm = (row + 0.5) * rowHeightMm;
    for (let run = u32(map.rowStart, row); run < u32(map.rowStart, row + 1); run++) {
      const toMm = f64(map.runEndMm, run);
      const weight = (toMm - fromMm) * (lightest - num(lab, u32(map.runCell, run) * 3));
      mass += weight;
      massX += (weight * (fromMm + toMm)) / 2;
      massY += weight * yMm;
      fromMm = toMm;
    }
  }
  if (!(mass > 0)) return 0;
  const off = Math.hypot(massX / mass - map.widthMm / 2, massY / mass - map.heightMm / 2);
  return off / (Math.hypot(map.widthMm, map.heightMm) / 2);
}

function printedCells(map: CellMap): number[] {
  const cells: number[] = [];
  for (let cell = 0; cell < map.cells; cell++) if (f64(map.areaMm2, cell) > 0) cells.push(cell);
  return cells;
}

function pullsOver(map: CellMap, cell: number, laid?: Uint32Array): number {
  let count = 0;
  for (let word = 0; word < map.words; word++) {
    let bits = u32(map.cover, cell * map.words + word);
    if (laid !== undefined) bits &= u32(laid, word);
    for (; bits !== 0; bits &= bits - 1) count++;
  }
  return count;
}

function near(colour: readonly [number, number, number], lab: ArrayLike<number>, cell: number, deltaE: number): boolean {
  // A difference in L alone counts at least so much: S_L is never above 1.748 (CIE 142-2001).
  if (Math.abs(colour[0] - num(lab, cell * 3)) > 1.748 * deltaE) return false;
  return deltaE2000Values(colour[0], colour[1], colour[2], num(lab, cell * 3), num(lab, cell * 3 + 1), num(lab, cell * 3 + 2)) <= deltaE;
}
