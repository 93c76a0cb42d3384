import { i32, num, u32 } from '../base/at.ts';
import { PairNumbers } from '../base/pair-numbers.ts';
import type { CellRaster } from './cell-raster.ts';

/**
 * A raster in which cells of one colour are one cell. Only for a print that shares its raster with no other: it takes half
 * the room, as most have no more colours than a byte can name.
 * @param colours a word for each of the raster's cells
 * @returns indexes into the colours left, in bytes where these can name them all
 */
export function mergedRaster(
  { indexes }: Pick<CellRaster, 'indexes'>,
  colours: Uint32Array,
): { indexes: Uint8Array<ArrayBuffer> | Uint16Array<ArrayBuffer>; colours: Uint32Array<ArrayBuffer> } {
  const numbers = new PairNumbers(512);
  const left = new Uint32Array(colours.length);
  const numberOf = new Int32Array(colours.length);
  for (let cell = 0; cell < colours.length; cell++) {
    const colour = u32(colours, cell);
    let number = numbers.of(colour | 0, 0);
    if (number < 0) {
      number = numbers.add(colour | 0, 0);
      left[number] = colour;
    }
    numberOf[cell] = number;
  }
  const out = numbers.size <= 256 ? new Uint8Array(indexes.length) : new Uint16Array(indexes.length);
  for (let at = 0; at < out.length; at++) out[at] = i32(numberOf, num(indexes, at));
  return { indexes: out, colours: left.slice(0, numbers.size) };
}
