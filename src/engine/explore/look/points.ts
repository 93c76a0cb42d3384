import { f64, u32 } from '../../base/at.ts';
import { deltaE2000Values } from '../../colour/delta-e.ts';
import type { CellMap } from '../../stack/types.ts';

/** Points at which pictures are compared. */
const POINTS = { across: 24, down: 32 };

/** The cell at each of a few hundred points that lie evenly over the sheet, row by row. */
export function pointCells(map: CellMap): Uint32Array {
  const cells = new Uint32Array(POINTS.across * POINTS.down);
  for (let y = 0; y < POINTS.down; y++) {
    let run = u32(map.rowStart, Math.floor(((y + 0.5) * map.rows) / POINTS.down));
    for (let x = 0; x < POINTS.across; x++) {
      while (f64(map.runEndMm, run) < ((x + 0.5) * map.widthMm) / POINTS.across) run++;
      cells[y * POINTS.across + x] = u32(map.runCell, run);
    }
  }
  return cells;
}

/** What is shown at points: L, a, b a point. @param lab cells × 3 */
export function labAtPoints(points: Uint32Array, lab: Float64Array): Float64Array {
  const out = new Float64Array(points.length * 3);
  points.forEach((cell, i) => out.set(lab.subarray(cell * 3, cell * 3 + 3), i * 3));
  return out;
}

/** Mean ΔE00 between what two pictures show at the points. */
export function meanDifference(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < a.length; at += 3) {
    sum += deltaE2000Values(f64(a, at), f64(a, at + 1), f64(a, at + 2), f64(b, at), f64(b, at + 1), f64(b, at + 2));
  }
  return sum / (a.length / 3);
}
