import { f64, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';

/** How far in from its edge the sheet's edge reaches, mm; about a gripper's margin (common practice, no source). */
export const SHEET_EDGE_MM = 10;

/** Share of the outermost 10 mm of the sheet under at least one pull, 0–1; as fine as the map's rows. */
export function edgeShare(map: CellMap): number {
  const height = map.heightMm / map.rows;
  const rim = Math.min(SHEET_EDGE_MM, map.widthMm / 2);
  let covered = 0;
  let whole = 0;
  for (let row = 0; row < map.rows; row++) {
    const yMm = (row + 0.5) * height;
    const across = yMm < SHEET_EDGE_MM || yMm > map.heightMm - SHEET_EDGE_MM;
    whole += height * (across ? map.widthMm : 2 * rim);
    let fromMm = 0;
    for (let run = u32(map.rowStart, row); run < u32(map.rowStart, row + 1); run++) {
      const toMm = f64(map.runEndMm, run);
      if (map.runCell[run] !== 0) {
        const inside = across ? 0 : Math.max(0, Math.min(toMm, map.widthMm - rim) - Math.max(fromMm, rim));
        covered += height * (toMm - fromMm - inside);
      }
      fromMm = toMm;
    }
  }
  return whole > 0 ? covered / whole : 0;
}
