import { f64, u32 } from '../../base/at.ts';
import { deltaE2000At } from '../../colour/delta-e.ts';
import type { Lab } from '../../colour/lab.ts';
import type { CellMap } from '../../stack/types.ts';
import { type ToldColours, toldRoom } from './told/told-room.ts';

/** One colour of a print and how much of the sheet it takes. */
export interface ColourArea {
  lab: Lab;
  areaMm2: number;
}

/** Colours closer than this count as one, ΔE00; just visible side by side (common practice, no source). */
export const SAME_COLOUR_DELTA_E = 2;

/** Areas of cells, in a list that may be longer. */
type Areas = Pick<CellMap, 'areaMm2'> & { cells?: number };

/**
 * Area by colour. Cells join, largest first, the first colour within `sameDeltaE`; a colour is
 * that of its largest cell.
 * @param lab cells × 3
 * @param bySize cells that take some of the sheet, largest first (see MapFigures)
 * @returns largest area first
 */
export function colourAreas(map: Areas, lab: Float64Array, bySize: Uint32Array, sameDeltaE = SAME_COLOUR_DELTA_E): ColourArea[] {
  const { areas, cellOf } = tell(map, lab, bySize, sameDeltaE);
  const all = Array.from(areas, (area, i): ColourArea => {
    const at = u32(cellOf, i) * 3;
    return { lab: [f64(lab, at), f64(lab, at + 1), f64(lab, at + 2)], areaMm2: area };
  });
  return all.sort((a, b) => b.areaMm2 - a.areaMm2);
}

/** How many colours `colourAreas` tells apart, and how much of the sheet the largest takes, mm². */
export function colourCount(map: Areas, lab: Float64Array, bySize: Uint32Array): { count: number; largestMm2: number } {
  const { areas } = tell(map, lab, bySize, SAME_COLOUR_DELTA_E);
  let largestMm2 = 0;
  for (let i = 0; i < areas.length; i++) largestMm2 = Math.max(largestMm2, f64(areas, i));
  return { count: areas.length, largestMm2 };
}

function tell(map: Areas, lab: Float64Array, bySize: Uint32Array, deltaE: number): { areas: Float64Array; cellOf: Uint32Array } {
  const { areaMm2, cells = Math.min(lab.length / 3, areaMm2.length) } = map;
  toldRoom.hold(lab, cells);
  const { count, colourOf, cellOf } = toldRoom.tell(bySize, deltaE) ?? plainColours(lab, bySize, deltaE);
  const areas = new Float64Array(count);
  for (let i = 0; i < bySize.length; i++) {
    const colour = u32(colourOf, i);
    areas[colour] = f64(areas, colour) + f64(areaMm2, u32(bySize, i));
  }
  return { areas, cellOf };
}

/** The same, each cell compared with one colour after another. */
export function plainColours(lab: Float64Array, list: Uint32Array, deltaE: number): ToldColours {
  const cellOf: number[] = [];
  const colourOf = list.map((cell) => {
    const colour = cellOf.findIndex((other) => deltaE2000At(lab, other * 3, lab, cell * 3) <= deltaE);
    return colour >= 0 ? colour : cellOf.push(cell) - 1;
  });
  return { count: cellOf.length, colourOf, cellOf: Uint32Array.from(cellOf) };
}
