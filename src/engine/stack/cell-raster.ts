import { f64, i32, u32 } from '../base/at.ts';
import { say } from '../words/en/stack/stack.ts';
import type { CellMap } from './types.ts';

/** A map as a small grid of cell numbers, for drawing by look-up. */
export interface CellRaster {
  columns: number;
  rows: number;
  /** rows × columns; indexes into `cells`, in bytes where these can name them all. */
  indexes: Uint8Array<ArrayBuffer> | Uint16Array<ArrayBuffer>;
  /** The map's cells that are seen, in order of first sight. */
  cells: Uint32Array<ArrayBuffer>;
}

/** Grids with more entries could hold more cells than 16 bits can name. */
const MAX_RASTER = 65_535;

/**
 * Samples a map at the middles of a grid of columns; its rows are the map's.
 * @param columns 1 or more; rows × columns at most 65 535
 * @throws RangeError beyond that
 */
export function rasterCells(map: CellMap, columns: number): CellRaster {
  if (!(columns >= 1) || columns * map.rows > MAX_RASTER) {
    throw new RangeError(say.rasterOfCellsIs(columns, map.rows, MAX_RASTER));
  }
  const indexes = new Uint16Array(columns * map.rows);
  const numberOf = new Int32Array(map.cells).fill(-1);
  const cells: number[] = [];
  const mmPerColumn = map.widthMm / columns;
  for (let row = 0; row < map.rows; row++) {
    let run = u32(map.rowStart, row);
    const last = u32(map.rowStart, row + 1) - 1;
    for (let column = 0; column < columns; run++) {
      // A column is of the run that ends right of its middle; the last run goes to the edge.
      const to = run === last ? columns : Math.min(columns, Math.ceil(f64(map.runEndMm, run) / mmPerColumn - 0.5));
      if (to <= column) continue;
      const cell = u32(map.runCell, run);
      if (i32(numberOf, cell) < 0) numberOf[cell] = cells.push(cell) - 1;
      indexes.fill(i32(numberOf, cell), row * columns + column, row * columns + to);
      column = to;
    }
  }
  const least = cells.length <= 256 ? Uint8Array.from(indexes) : indexes;
  return { columns, rows: map.rows, indexes: least, cells: Uint32Array.from(cells) };
}
