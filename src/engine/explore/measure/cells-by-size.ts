import { f64, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';

/** A digit of a size. */
const BITS = 11;
const DIGITS = 2 ** BITS;
/** Bits of the upper half of a number that sizes are sorted by; the sign is none of them. */
const SKIPPED = 31 - 2 * BITS;
/** So often may a cell be moved by one place, on average, before another sort is quicker. */
const MOVES = 30;
/** How many sizes have each lower digit, and each upper; then where the next of each goes. */
const lower = new Uint32Array(DIGITS);
const upper = new Uint32Array(DIGITS);
/** Which half of a number holds its sign. */
const HIGH = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1 ? 1 : 0;

/** Cells, and their sizes in two digits, by their lower digit. */
let half = new Uint32Array(1024);
let sizes = new Uint32Array(1024);
let sortedRoom = new Uint32Array(1024);

/** Cells that take some of the sheet, largest first, the lower number first of equals; the list holds until the next is asked for. */
export function cellsBySize({ cells, areaMm2 }: Pick<CellMap, 'cells' | 'areaMm2'>): Uint32Array {
  // As whole numbers, numbers above 0 keep their order: their first 22 bits sort them but for a few neighbours.
  const words = new Uint32Array(areaMm2.buffer, areaMm2.byteOffset, cells * 2);
  if (half.length < cells) {
    half = new Uint32Array(cells * 2);
    sizes = new Uint32Array(cells * 2);
    sortedRoom = new Uint32Array(cells * 2);
  }
  const count = countDigits(areaMm2, words, cells);
  for (let cell = 0; cell < cells; cell++) {
    if (!(f64(areaMm2, cell) > 0)) continue;
    const size = u32(words, cell * 2 + HIGH) >>> SKIPPED;
    const at = u32(lower, size % DIGITS);
    lower[size % DIGITS] = at + 1;
    half[at] = cell;
    sizes[at] = size >>> BITS;
  }
  const sorted = sortedRoom.subarray(0, count);
  for (let i = 0; i < count; i++) {
    const digit = u32(sizes, i);
    const at = u32(upper, digit);
    upper[digit] = at + 1;
    sorted[at] = u32(half, i);
  }
  putRight(sorted, areaMm2);
  return sorted;
}

/** Leaves in `lower` and `upper` where cells with each digit begin, greatest first. @returns how many cells there are */
function countDigits(areaMm2: Float64Array, words: Uint32Array, cells: number): number {
  lower.fill(0);
  upper.fill(0);
  let count = 0;
  for (let cell = 0; cell < cells; cell++) {
    if (!(f64(areaMm2, cell) > 0)) continue;
    count++;
    const size = u32(words, cell * 2 + HIGH) >>> SKIPPED;
    lower[size % DIGITS] = u32(lower, size % DIGITS) + 1;
    upper[size >>> BITS] = u32(upper, size >>> BITS) + 1;
  }
  let [ofLower, ofUpper] = [0, 0];
  for (let digit = DIGITS - 1; digit >= 0; digit--) {
    ofLower += u32(lower, digit);
    ofUpper += u32(upper, digit);
    lower[digit] = ofLower - u32(lower, digit);
    upper[digit] = ofUpper - u32(upper, digit);
  }
  return count;
}

/** Sorts what the digits have left: few neighbours, but for maps whose cells are all about as large. */
function putRight(sorted: Uint32Array, areaMm2: Float64Array): void {
  let last = Infinity;
  let moves = sorted.length * MOVES;
  for (let i = 0; i < sorted.length; i++) {
    const cell = u32(sorted, i);
    const area = f64(areaMm2, cell);
    if (area <= last) {
      last = area;
      continue;
    }
    let at = i;
    for (; at > 0 && f64(areaMm2, u32(sorted, at - 1)) < area; at--) sorted[at] = u32(sorted, at - 1);
    sorted[at] = cell;
    moves -= i - at;
    if (moves < 0) {
      sorted.sort((a, b) => f64(areaMm2, b) - f64(areaMm2, a) || a - b);
      return;
    }
  }
}
