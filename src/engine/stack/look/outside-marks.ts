import { u8 } from '../../base/at.ts';
import type { Box } from '../../geometry/types.ts';
import type { CellColours } from '../appearance.ts';

/** A line of the hatch, and from one line to the next along a row, pixels of the picture. */
const LINE_PX = 2;
const PITCH_PX = 9;
/** 8-bit sRGB of half the light: the greater part of such a pixel lies outside. */
const HALF_LIGHT = 188;
/** How much of a line covers what is below it. */
const STRENGTH = 0.6;
/** Rec. 709 luma of a code, from which on a dark line is seen better than a light one. */
const LIGHT_LUMA = 110;

/** Colours that are white where the screen cannot show a cell and black elsewhere. */
export function outsideAsWhite({ cells, outside, ...colours }: CellColours): CellColours {
  const linear = new Float64Array(cells * 3);
  for (let cell = 0; cell < cells; cell++) if (u8(outside, cell) === 1) linear.fill(1, cell * 3, cell * 3 + 3);
  return { ...colours, cells, outside, linear };
}

/**
 * Draws oblique lines over what the screen cannot show, dark on light and light on dark, in place.
 * @param pixels RGBA bytes of a picture
 * @param mask the same part painted with `outsideAsWhite`
 * @param box the part of the sheet, mm: the lines lie still on the sheet while it is moved
 */
export function hatchOutside(pixels: Uint8ClampedArray, mask: Uint8ClampedArray, box: Box & { widthPx: number; heightPx: number }): void {
  const { widthPx, heightPx } = box;
  const left = Math.round((box.xMm * widthPx) / box.widthMm);
  const top = Math.round((box.yMm * heightPx) / box.heightMm);
  for (let y = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++) {
      const at = (y * widthPx + x) * 4;
      const along = (((x + left + y + top) % PITCH_PX) + PITCH_PX) % PITCH_PX;
      if (along >= LINE_PX || (mask[at] ?? 0) < HALF_LIGHT) continue;
      const luma = 0.2126 * (pixels[at] ?? 0) + 0.7152 * (pixels[at + 1] ?? 0) + 0.0722 * (pixels[at + 2] ?? 0);
      const line = luma > LIGHT_LUMA ? 0 : 255;
      for (let i = at; i < at + 3; i++) pixels[i] = (pixels[i] ?? 0) * (1 - STRENGTH) + line * STRENGTH;
    }
  }
}
