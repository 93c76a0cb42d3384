import { entryAt, f64 } from '../../base/at.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import type { Lab } from '../../ink/types.ts';
import type { Recipe } from '../../recipe/types.ts';
import { studioOfRecipe } from '../../recipe/write.ts';
import { cellLab } from '../../stack/appearance.ts';
import { buildCellMap } from '../../stack/cell-map.ts';
import { stackLayers } from '../../stack/layers.ts';
import { samePlacement } from '../../stack/placement.ts';
import { placedSpans } from '../../stack/screen-spans.ts';
import type { Pull } from '../../stack/types.ts';

/** Rows that two prints are compared in: fine enough for offsets of a few tenths of a mm. */
const ROWS = 400;

/**
 * How far a print moves when its inks, offsets or strokes change: the mean ΔE00 over the sheet.
 * @param after the same pulls in the same order, through the same screens; its inks hold those of `before`
 *   that both print under the same ids
 */
export function changeOf(before: Recipe, after: Recipe): number {
  const { widthMm, heightMm, reflectance } = before.paper;
  const grid = { widthMm, heightMm, rows: ROWS };
  // Both prints in one map: a pull that was moved lies in it twice.
  const moved = after.pulls.map((pull, at): Pull => {
    const was = entryAt(before.pulls, at);
    return { ...pull, id: samePlacement(pull, was) ? was.id : `${was.id} moved` };
  });
  const known = new Set(before.pulls.map((pull) => pull.id));
  const whole = { pulls: [...before.pulls, ...moved.filter((pull) => !known.has(pull.id))] };
  const studio = studioOfRecipe(before);
  const map = buildCellMap(placedSpans(whole, studio, grid), grid);
  const one = cellLab(map, stackLayers({ pulls: before.pulls }, studio, whole), reflectance);
  const other = cellLab(map, stackLayers({ pulls: moved }, studioOfRecipe(after), whole), reflectance);
  let sum = 0;
  for (let cell = 0; cell < map.cells; cell++) sum += f64(map.areaMm2, cell) * deltaE2000(labAt(one, cell), labAt(other, cell));
  return sum / (widthMm * heightMm);
}

function labAt(labs: Float64Array, cell: number): Lab {
  return [f64(labs, cell * 3), f64(labs, cell * 3 + 1), f64(labs, cell * 3 + 2)];
}
