import { f64 } from '../../base/at.ts';
import type { SheetOutline } from './placed.ts';

/** What lies less than this beyond the sheet's edge is rounding, mm. */
const EDGE_MM = 0.05;

/** Whether outlines reach beyond a sheet. @param outline in sheet mm */
export function beyondSheet({ rings }: SheetOutline, paper: { widthMm: number; heightMm: number }): boolean {
  return rings.some((ring) => {
    for (let i = 0; i < ring.length; i += 2) {
      if (f64(ring, i) < -EDGE_MM || f64(ring, i) > paper.widthMm + EDGE_MM) return true;
      if (f64(ring, i + 1) < -EDGE_MM || f64(ring, i + 1) > paper.heightMm + EDGE_MM) return true;
    }
    return false;
  });
}
