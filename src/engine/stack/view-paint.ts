import { f64, u32 } from '../base/at.ts';
import { encodeSrgb8 } from '../colour/encode.ts';
import type { Box } from '../geometry/types.ts';
import { packSrgb } from './appearance.ts';
import type { CellColours } from './appearance.ts';
import type { CellMap } from './types.ts';

// The module's own name for it: unbundled, hot loops would look up another module's each time.
const pack = packSrgb;

// What changes from one pixel to the next in the pixel row at hand: r, g, b (times cover), cover.
// Left all zero after every row.
let change = new Float64Array(0);
// Pixels of the row at hand where something changes.
let touched = new Uint8Array(0);

/**
 * Paints the map of a box, several rows of the map to a row of pixels.
 * @param map built for the box: its x and rows begin at the box's corner, its rows a multiple of heightPx
 * @param box where the map lies on the sheet, mm, and the picture's size
 * @param sheet what lies outside it is transparent
 * @returns RGBA bytes, not premultiplied
 * Each run end is one change, spread over two pixels by its share; a row of pixels is their running
 * sum, so that wide runs cost next to nothing.
 */
export function paintBox(
  map: CellMap,
  colours: CellColours,
  box: Box & { widthPx: number; heightPx: number },
  sheet: { widthMm: number; heightMm: number },
): Uint8ClampedArray<ArrayBuffer> {
  const { widthPx, heightPx } = box;
  const bytes = new Uint8ClampedArray(widthPx * heightPx * 4);
  const pixels = new Uint32Array(bytes.buffer);
  if (touched.length < widthPx + 2) {
    change = new Float64Array((widthPx + 2) * 4);
    touched = new Uint8Array(widthPx + 2);
  }
  const pxPerMm = widthPx / map.widthMm;
  const leftPx = Math.min(widthPx, Math.max(0, -box.xMm * pxPerMm));
  const rightPx = Math.min(widthPx, Math.max(0, (sheet.widthMm - box.xMm) * pxPerMm));
  const rowHeightMm = map.heightMm / map.rows;
  const subRows = map.rows / heightPx;
  const across: Across = { pxPerMm, leftPx, rightPx, weight: 1 / subRows };
  for (let y = 0; y < heightPx; y++) {
    let any = false;
    for (let row = y * subRows; row < (y + 1) * subRows; row++) {
      const middleMm = box.yMm + (row + 0.5) * rowHeightMm;
      if (middleMm < 0 || middleMm >= sheet.heightMm || leftPx >= rightPx) continue;
      addRow(map, colours.linear, row, across);
      any = true;
    }
    if (any) sumRow(pixels, y * widthPx, widthPx);
  }
  return bytes;
}

/** Where a row of the map lies on a row of pixels. */
interface Across {
  pxPerMm: number;
  /** Where the sheet begins and ends. */
  leftPx: number;
  rightPx: number;
  /** How much of a pixel row the row is. */
  weight: number;
}

/** Adds one row of the map, clipped to the sheet, to the changes. */
function addRow(map: CellMap, linear: Float64Array, row: number, across: Across): void {
  const { runEndMm, runCell } = map;
  const { pxPerMm, leftPx, rightPx, weight } = across;
  const end = u32(map.rowStart, row + 1);
  let run = u32(map.rowStart, row);
  while (run + 1 < end && f64(runEndMm, run) * pxPerMm <= leftPx) run++;
  let r = 0;
  let g = 0;
  let b = 0;
  let atPx = leftPx;
  addCover(leftPx, weight);
  for (; run < end; run++) {
    const at = u32(runCell, run) * 3;
    const toR = f64(linear, at) * weight;
    const toG = f64(linear, at + 1) * weight;
    const toB = f64(linear, at + 2) * weight;
    addColour(atPx, toR - r, toG - g, toB - b);
    r = toR;
    g = toG;
    b = toB;
    atPx = run + 1 === end ? rightPx : f64(runEndMm, run) * pxPerMm;
    if (atPx >= rightPx) break;
  }
  addColour(rightPx, -r, -g, -b);
  addCover(rightPx, -weight);
}

/** A change of colour, spread over the two pixels that it touches. */
function addColour(atPx: number, r: number, g: number, b: number): void {
  const px = atPx | 0;
  const share = px + 1 - atPx;
  const rest = atPx - px;
  const at = px * 4;
  change[at] = f64(change, at) + r * share;
  change[at + 1] = f64(change, at + 1) + g * share;
  change[at + 2] = f64(change, at + 2) + b * share;
  change[at + 4] = f64(change, at + 4) + r * rest;
  change[at + 5] = f64(change, at + 5) + g * rest;
  change[at + 6] = f64(change, at + 6) + b * rest;
  touched[px] = 1;
  touched[px + 1] = 1;
}

/** A change of cover, likewise. */
function addCover(atPx: number, cover: number): void {
  const px = atPx | 0;
  const at = px * 4;
  change[at + 3] = f64(change, at + 3) + cover * (px + 1 - atPx);
  change[at + 7] = f64(change, at + 7) + cover * (atPx - px);
  touched[px] = 1;
  touched[px + 1] = 1;
}

/** The running sum of the changes as pixels; leaves the changes zero. */
function sumRow(pixels: Uint32Array, base: number, widthPx: number): void {
  let r = 0;
  let g = 0;
  let b = 0;
  let cover = 0;
  let word = 0;
  for (let px = 0; px < widthPx; px++) {
    if (touched[px] !== 0) {
      touched[px] = 0;
      const at = px * 4;
      r += f64(change, at);
      g += f64(change, at + 1);
      b += f64(change, at + 2);
      cover += f64(change, at + 3);
      change[at] = 0;
      change[at + 1] = 0;
      change[at + 2] = 0;
      change[at + 3] = 0;
      word = packCovered(r, g, b, cover);
    }
    pixels[base + px] = word;
  }
  // What ends at or beyond the right edge.
  touched[widthPx] = 0;
  touched[widthPx + 1] = 0;
  change.fill(0, widthPx * 4, (widthPx + 2) * 4);
}

function packCovered(r: number, g: number, b: number, cover: number): number {
  // Sums of shares carry rounding dust; a cover this near to 0 or 1 is 0 or 1.
  if (cover < 1e-6) return 0;
  if (cover > 1 - 1e-6) return pack(r, g, b);
  const alpha = Math.round(cover * 255) << 24;
  return (alpha | (encodeSrgb8(b / cover) << 16) | (encodeSrgb8(g / cover) << 8) | encodeSrgb8(r / cover)) >>> 0;
}
