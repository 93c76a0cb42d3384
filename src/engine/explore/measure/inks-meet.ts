import { entryAt, f64, num, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';

/**
 * Whether pulls of two inks overlap or meet along an edge somewhere.
 * @param inks ink of each placed screen of the map
 * @param pairs inks that may not meet
 * @param leastMm2 shared areas below this are rounding
 * Edges are as fine as the map's rows; cost O(runs) and, at each edge between cells, the pulls on both sides.
 */
export function inksMeet(map: CellMap, inks: readonly string[], pairs: readonly (readonly [string, string])[], leastMm2: number): boolean {
  const named = [...new Set(pairs.flat())];
  const bad = pairs.map(([a, b]): [number, number] => [named.indexOf(a), named.indexOf(b)]);
  const over: number[][] = Array.from({ length: map.cells }, (_, cell) =>
    named.map((ink) => inks.reduce((count, each, at) => count + (each === ink && covers(map, cell, at) ? 1 : 0), 0)),
  );
  const areas = bad.map(() => 0);
  for (let cell = 1; cell < map.cells; cell++) {
    const here = entryAt(over, cell);
    bad.forEach(([a, b], i) => {
      if (a === b ? num(here, a) > 1 : num(here, a) > 0 && num(here, b) > 0) areas[i] = num(areas, i) + f64(map.areaMm2, cell);
    });
  }
  if (areas.some((area) => area >= leastMm2)) return true;
  const known = new Map<number, boolean>();
  const meet = (left: number, right: number): boolean => {
    const key = left * map.cells + right;
    let found = known.get(key);
    if (found === undefined) {
      const has = (cell: number, ink: number): boolean => num(entryAt(over, cell), ink) > 0;
      found = bad.some(([a, b]) => a !== b && ((has(left, a) && has(right, b)) || (has(left, b) && has(right, a))));
      known.set(key, found);
    }
    return found;
  };
  for (let row = 0; row < map.rows; row++) {
    const end = u32(map.rowStart, row + 1);
    for (let run = u32(map.rowStart, row) + 1; run < end; run++) {
      if (meet(u32(map.runCell, run - 1), u32(map.runCell, run))) return true;
    }
    if (row + 1 === map.rows) break;
    for (let a = u32(map.rowStart, row), b = end; a < end && b < u32(map.rowStart, row + 2);) {
      if (map.runCell[a] !== map.runCell[b] && meet(u32(map.runCell, a), u32(map.runCell, b))) return true;
      const toMm = Math.min(f64(map.runEndMm, a), f64(map.runEndMm, b));
      if (f64(map.runEndMm, a) <= toMm) a++;
      if (f64(map.runEndMm, b) <= toMm) b++;
    }
  }
  return false;
}

function covers(map: CellMap, cell: number, screen: number): boolean {
  return ((u32(map.cover, cell * map.words + (screen >> 5)) >> (screen & 31)) & 1) === 1;
}
