import { f64, num, u32 } from '../../base/at.ts';
import { deltaE2000Values } from '../../colour/delta-e.ts';
import type { Lab } from '../../colour/lab.ts';
import type { CellMap } from '../../stack/types.ts';

/** The cells that take some of the sheet. */
export function printedCells(map: CellMap): number[] {
  const cells: number[] = [];
  for (let cell = 0; cell < map.cells; cell++) if (f64(map.areaMm2, cell) > 0) cells.push(cell);
  return cells;
}

/** How many pulls lie over a cell. */
export function pullsOver(map: CellMap, cell: number): number {
  let count = 0;
  for (let word = 0; word < map.words; word++) {
    for (let bits = u32(map.cover, cell * map.words + word); bits !== 0; bits &= bits - 1) count++;
  }
  return count;
}

/**
 * Whether what a cell shows is within a difference of a colour.
 * @param lab cells × 3
 * @param deltaE ΔE00
 */
export function near(colour: Lab, lab: ArrayLike<number>, cell: number, deltaE: number): boolean {
  // A difference in L alone counts at least so much: S_L is never above 1.748 (CIE 142-2001).
  if (Math.abs(colour[0] - num(lab, cell * 3)) > 1.748 * deltaE) return false;
  return deltaE2000Values(colour[0], colour[1], colour[2], num(lab, cell * 3), num(lab, cell * 3 + 1), num(lab, cell * 3 + 2)) <= deltaE;
}
