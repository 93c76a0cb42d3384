import { f64, u32 } from '../../base/at.ts';
import type { Lab } from '../../colour/lab.ts';
import type { CellMap } from '../../stack/types.ts';
import { colourCount } from './colour-areas.ts';
import { edgeMeasure } from './edges.ts';
import type { MapFigures } from './lines/figure-room.ts';
import { mapFigures } from './map-figures.ts';
import { overprintColourArea } from './overprint-colours.ts';

/** What a print is like, exact from its cells. */
export interface Measures {
  /** Colours told apart, paper among them, and the area of the largest, mm². */
  colours: number;
  mainColourMm2: number;
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

/**
 * All measures of a variant.
 * @param lab cells × 3, what each cell shows (cellLab of the stack module)
 * @param swatches Lab of the paper and of each pull alone on it
 * @param figures of the map, when they are known already
 */
export function measureVariant(map: CellMap, lab: Float64Array, swatches: readonly Lab[], figures: MapFigures = mapFigures(map)): Measures {
  const lightness = lightnessRange(lab, figures);
  const { count, largestMm2 } = colourCount(map, lab, figures.bySize);
  return {
    colours: count,
    mainColourMm2: largestMm2,
    coverage: coverage(map),
    lightness,
    overprintColourMm2: overprintColourArea(map, lab, swatches, figures.bySize),
    edgeContrast: edgeMeasure(map, lab, figures.edges).contrast / (map.widthMm * map.heightMm),
    imbalance: imbalance(map, lab, figures.moments, lightness[1]),
  };
}

/** Share of the sheet under at least one pull, 0–1; only cell 0 lies under none. */
function coverage(map: CellMap): number {
  let covered = 0;
  for (let cell = 1; cell < map.cells; cell++) covered += f64(map.areaMm2, cell);
  return covered / (map.widthMm * map.heightMm);
}

/** Least and greatest L of all areas of the sheet. */
function lightnessRange(lab: Float64Array, { bySize }: MapFigures): [number, number] {
  let least = Infinity;
  let most = -Infinity;
  for (let i = 0; i < bySize.length; i++) {
    const l = f64(lab, u32(bySize, i) * 3);
    if (l < least) least = l;
    if (l > most) most = l;
  }
  return [least, most];
}

/**
 * Distance of the centre of darkness from the sheet's centre, as a share of half its diagonal;
 * darkness is how much darker than the lightest area. 0 for a sheet of one lightness.
 * Source: deviation of the centre of mass, as a measure of balance: Hübner and Fillinger (2016),
 * Frontiers in Psychology 7:335; the scale is ours.
 */
function imbalance(map: CellMap, lab: Float64Array, moments: Float64Array, lightest: number): number {
  let mass = 0;
  let massX = 0;
  let massY = 0;
  for (let cell = 0; cell < map.cells; cell++) {
    const darker = lightest - f64(lab, cell * 3);
    mass += f64(map.areaMm2, cell) * darker;
    massX += f64(moments, cell * 2) * darker;
    massY += f64(moments, cell * 2 + 1) * darker;
  }
  if (!(mass > 0)) return 0;
  const perMass = map.heightMm / map.rows / mass;
  const off = Math.hypot(massX * perMass - map.widthMm / 2, massY * perMass - map.heightMm / 2);
  return off / (Math.hypot(map.widthMm, map.heightMm) / 2);
}
