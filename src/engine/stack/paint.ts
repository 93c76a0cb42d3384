import { f64, u32, u8 } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { encodeSrgb8 } from '../colour/encode.ts';
import { say } from '../words/en/stack/stack.ts';
import type { CellColours } from './appearance.ts';
import type { CellMap } from './types.ts';

// Codes of blended pixels by steps so fine that none is off by more than a tenth of a code (the curve's
// steepest part has 12.92 · 255 codes to 1), without the comparisons that exact rounding needs.
const STEPS = 16384;
const BLEND_CODE = Uint8Array.from({ length: STEPS + 2 }, (_, i) => encodeSrgb8((i + 0.5) / STEPS));

/**
 * Paints a map as a small picture: a row of the map is a row of pixels. Where a run ends inside a
 * pixel its colours are blended in linear light by their exact shares of the pixel's width (to the
 * nearest code, give or take a tenth of one).
 * @param widthPx pixels across the sheet
 * @param out at least widthPx × rows pixels: RGBA bytes, or words as in `CellColours.packed`
 * @returns out
 * @throws EngineError 'stack.bad-picture' when `out` is too small or its bytes lie on no word boundary
 * Allocates nothing when `out` is words.
 */
export function paintThumbnail<Pixels extends Uint8ClampedArray | Uint32Array>(
  map: CellMap,
  colours: CellColours,
  widthPx: number,
  out: Pixels,
): Pixels {
  const pixels = out instanceof Uint32Array ? out : wordsOf(out);
  if (!(widthPx >= 1) || !Number.isInteger(widthPx) || pixels.length < widthPx * map.rows) {
    throw new EngineError('stack.bad-picture', say.pictureOfPixelsDoes(widthPx, map.rows, pixels.length));
  }
  paintRows(map, colours, widthPx, pixels);
  return out;
}

function paintRows(map: CellMap, colours: CellColours, widthPx: number, pixels: Uint32Array): void {
  const { rowStart, runEndMm, runCell, rows } = map;
  const { linear, packed } = colours;
  const pxPerMm = widthPx / map.widthMm;
  for (let row = 0; row < rows; row++) {
    const base = row * widthPx;
    const end = u32(rowStart, row + 1);
    let from = 0;
    let px = 0;
    let r = 0;
    let g = 0;
    let b = 0;
    for (let run = u32(rowStart, row); run < end; run++) {
      const to = run + 1 === end ? widthPx : f64(runEndMm, run) * pxPerMm;
      const cell = u32(runCell, run);
      const last = to | 0;
      if (px < last) {
        if (from > px) {
          const share = px + 1 - from;
          pixels[base + px++] = packBlend(
            r + share * f64(linear, cell * 3),
            g + share * f64(linear, cell * 3 + 1),
            b + share * f64(linear, cell * 3 + 2),
          );
        }
        const word = u32(packed, cell);
        while (px < last) pixels[base + px++] = word;
        from = px;
        r = 0;
        g = 0;
        b = 0;
      }
      if (to > from) {
        const share = to - from;
        r += share * f64(linear, cell * 3);
        g += share * f64(linear, cell * 3 + 1);
        b += share * f64(linear, cell * 3 + 2);
        from = to;
      }
    }
  }
}

/** As CellColours packs it; r, g and b are shares of colours in 0–1 that sum to at most 1, but for dust. */
function packBlend(r: number, g: number, b: number): number {
  return 0xff000000 | (u8(BLEND_CODE, (b * STEPS) | 0) << 16) | (u8(BLEND_CODE, (g * STEPS) | 0) << 8) | u8(BLEND_CODE, (r * STEPS) | 0);
}

function wordsOf(bytes: Uint8ClampedArray): Uint32Array {
  if (bytes.byteOffset % 4 !== 0) {
    throw new EngineError('stack.bad-picture', say.pictureMustBeginOn);
  }
  return new Uint32Array(bytes.buffer, bytes.byteOffset, bytes.byteLength >> 2);
}
