import { f64, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';

/** Ends of runs are told apart from so much on, mm: the grid on which offsets lie. */
const END_MM = 0.1;

/**
 * A name for what is seen of a print, row by row: where its colours end and which they are. Equal for
 * prints of the same image, whatever lies hidden in them; edges between equal colours do not count.
 * @param packed a word a cell: 8-bit sRGB
 * @returns 16 hex digits; two images of one wall of 10,000 share one with a chance of about 3 · 10⁻¹²
 * Source: two lanes of the 32-bit multiply–xorshift of MurmurHash3 (A. Appleby, public domain), from memory.
 */
export function imageName(map: CellMap, packed: Uint32Array): string {
  let a = 0x9e3779b9;
  let b = 0x3c6ef372;
  for (let row = 0; row < map.rows; row++) {
    const end = u32(map.rowStart, row + 1);
    for (let run = u32(map.rowStart, row); run < end; run++) {
      const colour = u32(packed, u32(map.runCell, run));
      if (run + 1 < end && u32(packed, u32(map.runCell, run + 1)) === colour) continue;
      const at = Math.round(f64(map.runEndMm, run) / END_MM);
      // Written out: lanes that a closure writes to are put on the heap with every value.
      a = Math.imul(a ^ colour, 0x85ebca6b);
      b = Math.imul(b ^ colour, 0xc2b2ae35);
      a = Math.imul(a ^ (a >>> 15) ^ at, 0x85ebca6b);
      b = Math.imul(b ^ (b >>> 13) ^ at, 0xc2b2ae35);
      a ^= a >>> 15;
      b ^= b >>> 13;
    }
  }
  return [a, b].map((lane) => (lane >>> 0).toString(16).padStart(8, '0')).join('');
}
