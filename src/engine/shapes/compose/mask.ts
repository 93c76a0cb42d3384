import { f64, u32 } from '../../base/at.ts';
import { mapRings, placeRings, shapeBounds } from '../../geometry/rings.ts';
import { rowSpans } from '../../geometry/row-crossings.ts';
import type { Shape } from '../types.ts';

/** The cells of a sheet that a shape covers, from the top left cell of its box. */
export interface Mask {
  columns: number;
  rows: number;
  /** How many cells it covers. */
  cells: number;
  /** Cells of a row, from the first up to, not with, `to`. */
  runs: { row: number; from: number; to: number }[];
  /** The middle of the shape's own box from the mask's top left, mm. */
  middleXMm: number;
  middleYMm: number;
}

/**
 * The cells whose rows' middles a turned and scaled shape covers, each run as wide as its span and up to a cell
 * more at either end, so that masks that share no cell are shapes that hardly touch.
 * @param cellMm side of a cell
 */
export function maskOf(shape: Pick<Shape, 'rings' | 'fillRule'>, place: { turnDeg: number; scale: number }, cellMm: number): Mask {
  const laid = placeRings(shape.rings, { ...place, xMm: 0, yMm: 0 });
  const box = shapeBounds(laid);
  const rings = mapRings(laid, [1, 0, 0, 1, -box.xMm, -box.yMm]);
  const columns = Math.max(1, Math.ceil(box.widthMm / cellMm));
  const rows = Math.max(1, Math.ceil(box.heightMm / cellMm));
  const spans = rowSpans({ rings, fillRule: shape.fillRule }, { rowHeightMm: cellMm, firstRow: 0, endRow: rows });
  const runs: Mask['runs'] = [];
  let cells = 0;
  for (let held = 0; held < spans.rows; held++) {
    let after = 0;
    for (let i = u32(spans.starts, held); i < u32(spans.starts, held + 1); i += 2) {
      const from = Math.max(after, Math.floor(f64(spans.xMm, i) / cellMm));
      const to = Math.min(columns, Math.ceil(f64(spans.xMm, i + 1) / cellMm));
      if (to <= from) continue;
      runs.push({ row: spans.firstRow + held, from, to });
      cells += to - from;
      after = to;
    }
  }
  return { columns, rows, cells, runs, middleXMm: -box.xMm, middleYMm: -box.yMm };
}
