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
export const MAX_RASTER = 65_535;

/**
 * Samples a map at the middles of a grid of columns; its rows are the map's.
 * @param columns 1 or more; rows × columns at most 65 535
 * @throws RangeError beyond that
 */
export function rasterCells(map: CellMap, columns: number): CellRaster {
  if (!(columns >= 1) || columns * map.rows > MAX_RASTER) {
    throw new RangeError(`a raster of ${columns} × ${map.rows} cells is over ${MAX_RASTER}`);
  }
  const indexes = new Uint16Array(columns * map.rows);
  const seen = new Map<number, number>();
  const mmPerColumn = map.widthMm / columns;
  for (let row = 0, at = 0; row < map.rows; row++) {
    let run = map.rowStart[row]!;
    const last = map.rowStart[row + 1]! - 1;
    for (let column = 0; column < columns; column++, at++) {
      const x = (column + 0.5) * mmPerColumn;
      while (run < last && map.runEndMm[run]! <= x) run++;
      const cell = map.runCell[run]!;
      let index = seen.get(cell);
      if (index === undefined) seen.set(cell, (index = seen.size));
      indexes[at] = index;
    }
  }
  const least = seen.size <= 256 ? Uint8Array.from(indexes) : indexes;
  return { columns, rows: map.rows, indexes: least, cells: Uint32Array.from(seen.keys()) };
}
