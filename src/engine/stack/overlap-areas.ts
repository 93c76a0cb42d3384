import { f64, num, u32 } from '../base/at.ts';
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

/** Which of some pulls share area, as bits: row a, of `words` words, has bit b where a and b do, and its own bit. */
export interface SharedPairs {
  words: number;
  bits: Uint32Array;
}

/**
 * Which two placed screens share an area or more: as pairOverlapAreas tells it, to the bit, but most pairs
 * are told by one large cell, and only what is left is summed.
 * @param leastMm2 above 0
 * Cost O(covered cells × screens ÷ 32), and a little for pairs that share small cells only.
 */
export function sharedPairs({ screens, words, cells, cover, areaMm2 }: CellMap, leastMm2: number): SharedPairs {
  // Of each pair the half with the higher number first; the other half comes last.
  const known = new Uint32Array(screens * words);
  if (bits.length < screens) bits = new Uint32Array(screens * 2);
  for (let cell = 1; cell < cells; cell++) {
    if (f64(areaMm2, cell) < leastMm2) continue;
    const count = listBits(cover, cell * words, words);
    for (let i = 0; i < count; i++) {
      const a = u32(bits, i);
      for (let word = a >> 5; word < words; word++)
        known[a * words + word] = u32(known, a * words + word) | u32(cover, cell * words + word);
    }
  }
  // Sums only grow, so what has reached the least has shared it; cell by cell, as the areas are summed.
  const sums = new Float64Array(screens * screens);
  for (let cell = 1; cell < cells; cell++) {
    const area = f64(areaMm2, cell);
    if (area >= leastMm2) continue;
    const count = listBits(cover, cell * words, words);
    for (let i = 0; i < count; i++) {
      const a = u32(bits, i);
      let open = -1 << (a & 31);
      for (let word = a >> 5; word < words; word++, open = -1) {
        const rest = u32(cover, cell * words + word) & ~u32(known, a * words + word) & open;
        if (rest === 0) continue;
        const told = addToEach(rest, { sums, at: a * screens + (word << 5), area, leastMm2 });
        known[a * words + word] = u32(known, a * words + word) | told;
      }
    }
  }
  const shared: SharedPairs = { words, bits: new Uint32Array(screens * words) };
  for (let a = 0; a < screens; a++) {
    const count = listBits(known, a * words, words);
    for (let i = 0; i < count; i++) if (u32(bits, i) >= a) setShared(shared, a, u32(bits, i));
  }
  return shared;
}

/** Adds an area to the sums of some pairs, as bits from a place on; gives those of them that have reached the least. */
function addToEach(
  pairs: number,
  { sums, at, area, leastMm2 }: { sums: Float64Array; at: number; area: number; leastMm2: number },
): number {
  let told = 0;
  for (let rest = pairs; rest !== 0; rest &= rest - 1) {
    const pair = at + 31 - Math.clz32(rest & -rest);
    const sum = f64(sums, pair) + area;
    sums[pair] = sum;
    if (sum >= leastMm2) told |= rest & -rest;
  }
  return told;
}

/** The same of areas that are known already, as pairOverlapAreas gives them. */
export function sharedOf(areas: Float64Array, pulls: number, leastMm2: number): SharedPairs {
  const words = (pulls + 31) >> 5;
  const shared: SharedPairs = { words, bits: new Uint32Array(pulls * words) };
  for (let a = 0; a < pulls; a++) {
    for (let b = a; b < pulls; b++) if (f64(areas, a * pulls + b) >= leastMm2) setShared(shared, a, b);
  }
  return shared;
}

/** Whether two pulls share area. */
export function shares({ words, bits: rows }: SharedPairs, a: number, b: number): boolean {
  return (u32(rows, a * words + (b >> 5)) & (1 << (b & 31))) !== 0;
}

/**
 * Lists the pulls that share area with both of two, ascending.
 * @param out receives them; at least as many numbers as there are pulls
 * @returns how many there are
 */
export function sharedByBoth({ words, bits: rows }: SharedPairs, a: number, b: number, out: Uint32Array): number {
  let count = 0;
  for (let word = 0; word < words; word++) {
    for (let rest = u32(rows, a * words + word) & u32(rows, b * words + word); rest !== 0; rest &= rest - 1) {
      out[count++] = (word << 5) + 31 - Math.clz32(rest & -rest);
    }
  }
  return count;
}

function setShared({ words, bits: rows }: SharedPairs, a: number, b: number): void {
  rows[a * words + (b >> 5)] = u32(rows, a * words + (b >> 5)) | (1 << (b & 31));
  rows[b * words + (a >> 5)] = u32(rows, b * words + (a >> 5)) | (1 << (a & 31));
}

/** Some of the pulls, numbered anew in the order given. @param kept each by its number */
export function sharedAmong(shared: SharedPairs, kept: readonly number[]): SharedPairs {
  const words = (kept.length + 31) >> 5;
  const among: SharedPairs = { words, bits: new Uint32Array(kept.length * words) };
  kept.forEach((row, a) => {
    for (let b = a; b < kept.length; b++) if (shares(shared, row, num(kept, b))) setShared(among, a, b);
  });
  return among;
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
