import { entryAt, f64, num, u32 } from '../../base/at.ts';
import type { Lab } from '../../colour/lab.ts';
import type { CellMap } from '../../stack/types.ts';
import { near, printedCells, pullsOver } from './cells.ts';
import { type EdgeLengths, edgeMeasure } from './edges.ts';
import { overprintColourArea } from './overprint-colours.ts';

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
  /** Area of overprint colours (overprintColourArea), mm². */
  overprintColourMm2: number;
  /** Edge length × ΔE00 across it ÷ sheet area, ΔE/mm. */
  edgeContrast: number;
  /** How far the centre of darkness lies from the sheet's: 0 at the centre, 1 at a corner. */
  imbalance: number;
}

/** Colours closer than this count as one, ΔE00; just visible side by side (common practice, no source). */
export const SAME_COLOUR_DELTA_E = 2;

/**
 * All measures of a variant.
 * @param lab cells × 3, what each cell shows (cellLab of the stack module)
 * @param swatches Lab of the paper and of each pull alone on it
 * @param edges of the map, when they are known already
 */
export function measureVariant(map: CellMap, lab: ArrayLike<number>, swatches: readonly Lab[], edges?: EdgeLengths): Measures {
  return {
    colours: colourAreas(map, lab),
    coverage: coverage(map),
    lightness: lightnessRange(map, lab),
    overprintColourMm2: overprintColourArea(map, lab, swatches),
    edgeContrast: edgeMeasure(map, lab, edges).contrast / (map.widthMm * map.heightMm),
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
function coverage(map: CellMap): number {
  let covered = 0;
  for (const cell of printedCells(map)) if (pullsOver(map, cell) > 0) covered += f64(map.areaMm2, cell);
  return covered / (map.widthMm * map.heightMm);
}

/** Least and greatest L of all areas of the sheet. */
function lightnessRange(map: CellMap, lab: ArrayLike<number>): [number, number] {
  let least = Infinity;
  let most = -Infinity;
  for (const cell of printedCells(map)) {
    least = Math.min(least, num(lab, cell * 3));
    most = Math.max(most, num(lab, cell * 3));
  }
  return [least, most];
}

/**
 * Distance of the centre of darkness from the sheet's centre, as a share of half its diagonal;
 * darkness is how much darker than the lightest area. 0 for a sheet of one lightness.
 * Source: deviation of the centre of mass, as a measure of balance: Hübner and Fillinger (2016),
 * Frontiers in Psychology 7:335; the scale is ours.
 */
function imbalance(map: CellMap, lab: ArrayLike<number>): number {
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
