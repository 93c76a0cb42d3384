import { num } from '../../base/at.ts';
import { encodeSrgb8, linearFromSrgb } from '../../colour/encode.ts';
import type { PatchRgb } from './drawdown-photo.ts';

/** Pixels as ImageData holds them. */
export interface Pixels {
  width: number;
  height: number;
  data: Uint8ClampedArray;
}

/** How many pixels on each side of the middle are averaged: 1 % of the photo, at least 2. */
export function patchReach(pixels: Pick<Pixels, 'width' | 'height'>): number {
  return Math.max(2, Math.round(Math.min(pixels.width, pixels.height) / 100));
}

/**
 * The mean of a square of pixels, as light adds: in linear light, encoded again.
 * @param x of its middle, px; what lies off the photo is left out
 */
export function averagePatch({ width, height, data }: Pixels, x: number, y: number, reach: number): PatchRgb {
  const sums = [0, 0, 0];
  let count = 0;
  for (let row = Math.max(0, y - reach); row <= Math.min(height - 1, y + reach); row++) {
    for (let column = Math.max(0, x - reach); column <= Math.min(width - 1, x + reach); column++) {
      const at = 4 * (row * width + column);
      for (let i = 0; i < 3; i++) sums[i] = num(sums, i) + linearFromSrgb(num(data, at + i) / 255);
      count++;
    }
  }
  return sums.map((sum) => encodeSrgb8(sum / count)) as unknown as PatchRgb;
}

/** Keeps a point on the photo. */
export function onPhoto({ width, height }: Pick<Pixels, 'width' | 'height'>, x: number, y: number): [number, number] {
  return [Math.max(0, Math.min(width - 1, Math.round(x))), Math.max(0, Math.min(height - 1, Math.round(y)))];
}
