import { f64, num, u32 } from '../../../engine/base/at.ts';

/** What a print's pixels are read from. */
export interface PixelSource {
  columns: number;
  rows: number;
  /** Cell numbers, and where the first lies and how many make a row; null where the colours themselves lie so. */
  cells: Uint8Array | Uint16Array | null;
  first: number;
  stride: number;
  /** Packed as ImageData packs them; of a print with cells, the colour of cell 0 lies at `offset`. */
  colours: Uint32Array;
  offset: number;
}

/** A picture being drawn, row by row. */
export interface Canvas32 {
  width: number;
  height: number;
  words: Uint32Array;
}

/** Where a print goes, device px; may lie partly outside. */
export interface PixelBox {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** Squares of the codes: about linear light, in which fields of colours are averaged. */
const SQUARES = Float64Array.from({ length: 256 }, (_, code) => code * code);
/** More look-ups across and down a pixel are not worth their time. */
const MOST_TAPS = 4;

/** The texels that stand for each pixel of a row or column: `taps` numbers a pixel. */
function texelsOf(size: number, texels: number, taps: number): Uint32Array {
  const covered = texels / size;
  return Uint32Array.from({ length: size * taps }, (_, i) => {
    const at = (Math.floor(i / taps) + ((i % taps) + 0.5) / taps) * covered;
    return Math.min(texels - 1, Math.floor(at));
  });
}

/**
 * Draws a print, the mean of the texels that a pixel covers; what lies outside the canvas is left out.
 * @param moving draws with one look-up a pixel
 */
export function drawPixels(canvas: Canvas32, source: PixelSource, box: PixelBox, moving: boolean): void {
  if (box.width < 1 || box.height < 1) return;
  const taps = moving ? 1 : Math.max(1, Math.min(MOST_TAPS, Math.ceil(source.rows / box.height)));
  const across = texelsOf(box.width, source.columns, taps);
  const down = texelsOf(box.height, source.rows, taps);
  const { cells, first, stride, colours, offset } = source;
  const right = Math.min(box.width, canvas.width - box.left);
  const bottom = Math.min(box.height, canvas.height - box.top);
  const count = taps * taps;
  const left = Math.max(0, -box.left);
  for (let y = Math.max(0, -box.top); y < bottom; y++) {
    const row = (box.top + y) * canvas.width + box.left;
    for (let x = left; x < right; x++) {
      // Most pixels lie within one colour, and need no mean.
      let mixed = 0;
      for (let i = 0; i < count; i++) {
        const at = first + u32(down, y * taps + ((i / taps) | 0)) * stride + u32(across, x * taps + (i % taps));
        const texel = u32(colours, cells === null ? at : offset + num(cells, at));
        texels[i] = texel;
        mixed |= texel ^ u32(texels, 0);
      }
      canvas.words[row + x] = mixed === 0 ? u32(texels, 0) : meanOf(count);
    }
  }
}

/** What one pixel covers. */
const texels = new Uint32Array(MOST_TAPS * MOST_TAPS);

/** The mean of the first so many of `texels`. */
function meanOf(count: number): number {
  let red = 0;
  let green = 0;
  let blue = 0;
  for (let i = 0; i < count; i++) {
    const texel = u32(texels, i);
    red += f64(SQUARES, texel & 255);
    green += f64(SQUARES, (texel >> 8) & 255);
    blue += f64(SQUARES, (texel >> 16) & 255);
  }
  return packed(red / count, green / count, blue / count);
}

/** A colour from the means of its squares. */
function packed(red: number, green: number, blue: number): number {
  return (0xff000000 | (Math.round(Math.sqrt(blue)) << 16) | (Math.round(Math.sqrt(green)) << 8) | Math.round(Math.sqrt(red))) >>> 0;
}
