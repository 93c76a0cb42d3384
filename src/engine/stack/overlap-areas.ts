import { f64, u32 } from '../base/at.ts';
import type { CellMap } from './types.ts';

/**
 * How much of the sheet each two placed screens share.
 * @param out at least screens × screens numbers; a new array when left out, else nothing is allocated
 * @returns out: [a · screens + b] is the area under both a and b, mm², the same both ways round;
 *   [a · screens + a] is a's own area on the sheet
 * Exact for the map: its rows are as fine as its grid. Cost O(cells × covering pairs).
 */
export function pairOverlapAreas(map: CellMap, out: Float64Array = new Float64Array(map.screens * map.screens)): Float64Array {
  const { screens, words, cells, cover, areaMm2 } = map;
  out.fill(0, 0, screens * screens);
  if (bits.length < screens) bits = new Uint32Array(screens * 2);
  for (let cell = 1; cell < cells; cell++) {
    const count = listBits(cover, cell * words, words);
    const area = f64(areaMm2, cell);
    for (let i = 0; i < count; i++) {
      const row = u32(bits, i) * screens;
      for (let k = i; k < count; k++) out[row + u32(bits, k)] = f64(out, row + u32(bits, k)) + area;
    }
  }
  for (let a = 0; a < screens; a++) {
    for (let b = 0; b < a; b++) out[a * screens + b] = f64(out, b * screens + a);
  }
  return out;
}

/** The placed screens that cover a cell, ascending. */
export function pullsOfCell({ screens, words, cover }: CellMap, cell: number): number[] {
  if (bits.length < screens) bits = new Uint32Array(screens * 2);
  const count = listBits(cover, cell * words, words);
  return Array.from(bits.subarray(0, count));
}

let bits = new Uint32Array(64);

/** Lists the set bits of a cover into `bits`, ascending; returns how many. */
function listBits(cover: Uint32Array, from: number, words: number): number {
  let count = 0;
  for (let word = 0; word < words; word++) {
    let rest = u32(cover, from + word);
    while (rest !== 0) {
      const low = rest & -rest;
      bits[count++] = (word << 5) + 31 - Math.clz32(low);
      rest ^= low;
    }
  }
  return count;
}
