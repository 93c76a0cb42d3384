import { f64, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';

/** Fields of equal size that the sheet is cut into; a whole number of the map's rows to each. */
export interface Fields {
  columns: number;
  rows: number;
}

/**
 * What the cells of each field hold in the mean, by area, exact from the map's runs.
 * @param values cells × channels
 * @returns fields, row by row, × channels
 */
export function fieldMeans(map: CellMap, fields: Fields, values: Float64Array, channels: number): Float64Array {
  const sums = new Float64Array(fields.columns * fields.rows * channels);
  const { rowStart, runEndMm, runCell, rows } = map;
  const widthMm = map.widthMm / fields.columns;
  for (let row = 0; row < rows; row++) {
    const base = Math.floor((row * fields.rows) / rows) * fields.columns;
    let column = 0;
    let fromMm = 0;
    for (let run = u32(rowStart, row); run < u32(rowStart, row + 1);) {
      const edgeMm = (column + 1) * widthMm;
      const last = column === fields.columns - 1;
      const toMm = last || f64(runEndMm, run) < edgeMm ? f64(runEndMm, run) : edgeMm;
      const at = (base + column) * channels;
      const cell = u32(runCell, run) * channels;
      for (let i = 0; i < channels; i++) sums[at + i] = f64(sums, at + i) + (toMm - fromMm) * f64(values, cell + i);
      fromMm = toMm;
      if (f64(runEndMm, run) <= toMm) run++;
      else column++;
    }
  }
  const whole = (widthMm * rows) / fields.rows;
  return sums.map((sum) => sum / whole);
}
