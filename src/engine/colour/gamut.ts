import { converter, modeLrgb, modeOklab, modeOklch, modeRgb, toGamut, useMode } from 'culori/fn';
import { f64 } from '../base/at.ts';
import { inSrgbGamut } from './srgb.ts';

for (const mode of [modeRgb, modeLrgb, modeOklab, modeOklch]) useMode(mode);

const intoRgb = toGamut('rgb', 'oklch');
const toLinear = converter('lrgb');

/** Paper as the screen's own white lands a rounding error above 1. */
export const SHOWN_SLACK = 1e-4;

/**
 * Brings linear sRGB into what the screen can show, in place: chroma is reduced, lightness and hue kept.
 * Swatches and pictures both go through here, so that a colour is the same in both.
 * @param rgb three numbers from `at`, linear light; what is inside is only rid of its rounding
 * Source: CSS Color Module Level 4, 13.2 (gamut mapping in OKLCh), by culori.
 * @returns whether it was changed by more than rounding, so that the screen shows less chroma than the colour has
 * Allocates nothing for a colour that lies inside.
 */
export function mapIntoSrgb(rgb: Float64Array, at = 0): boolean {
  const r = f64(rgb, at);
  const g = f64(rgb, at + 1);
  const b = f64(rgb, at + 2);
  if (inSrgbGamut(r, g, b)) {
    put(rgb, at, rgb, at);
    return false;
  }
  const slot = slotOf(r, g, b);
  if (known[slot] !== r || known[slot + 1] !== g || known[slot + 2] !== b) {
    const mapped = toLinear(intoRgb({ mode: 'lrgb', r, g, b }));
    known.set([r, g, b, mapped.r, mapped.g, mapped.b], slot);
  }
  put(rgb, at, known, slot + 3);
  return !inSrgbGamut(r, g, b, SHOWN_SLACK);
}

/** The prints of a wall share most of their few saturated colours. So many are kept, the later in the place of the earlier. */
const KEPT = 2048;
/** Six numbers each: a colour as it is and as it is shown; 0 is inside, so that no free place answers to a colour. */
const known = new Float64Array(KEPT * 6);
const key = new Float64Array(3);
const keyWords = new Uint32Array(key.buffer);

function slotOf(r: number, g: number, b: number): number {
  key[0] = r;
  key[1] = g;
  key[2] = b;
  let hash = 0;
  for (const word of keyWords) {
    hash = Math.imul(hash ^ word, 0x9e3779b1);
    hash ^= hash >>> 15;
  }
  return (hash & (KEPT - 1)) * 6;
}

function put(rgb: Float64Array, at: number, from: Float64Array, first: number): void {
  for (let i = 0; i < 3; i++) rgb[at + i] = clip(f64(from, first + i));
}

function clip(value: number): number {
  return value > 0 ? (value < 1 ? value : 1) : 0;
}
