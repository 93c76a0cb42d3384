import { entryAt, f64, num } from '../../engine/base/at.ts';
import { linearFromSrgb } from '../../engine/colour/encode.ts';
import { differenceOf, shareOver } from '../../engine/explore/look/difference.ts';
import { packSrgb } from '../../engine/stack/appearance.ts';
import { paintThumbnail } from '../../engine/stack/paint.ts';
import type { DifferencePicture, DifferenceRequest } from '../api/wall-tools-api.ts';

/** ΔE00 at which the ramp ends; what differs more looks the same. */
export const RAMP_END = 30;
/** sRGB from alike to far apart, lighter to darker, so that it reads without colour too. */
export const RAMP: readonly (readonly [number, number, number])[] = [
  [246, 243, 236],
  [236, 196, 128],
  [206, 92, 62],
  [96, 24, 66],
];

const linearRamp = RAMP.map((stop) => stop.map((code) => linearFromSrgb(code / 255)));

function rampAt(deltaE: number): [number, number, number] {
  const along = Math.min(1, Math.max(0, deltaE / RAMP_END)) * (linearRamp.length - 1);
  const below = Math.min(linearRamp.length - 2, Math.floor(along));
  const part = along - below;
  const mix = (i: number): number => num(entryAt(linearRamp, below), i) * (1 - part) + num(entryAt(linearRamp, below + 1), i) * part;
  return [mix(0), mix(1), mix(2)];
}

/** The difference of two prints as a picture, with its figures by exact areas. */
export function differencePicture({ studio, a, b, heightPx, overDeltaE }: DifferenceRequest): DifferencePicture {
  const difference = differenceOf(studio, a, b, heightPx);
  const { map, deltaE, mean, greatest } = difference;
  const linear = new Float64Array(map.cells * 3);
  const packed = new Uint32Array(map.cells);
  for (let cell = 0; cell < map.cells; cell++) {
    const colour = rampAt(f64(deltaE, cell));
    linear.set(colour, cell * 3);
    packed[cell] = packSrgb(...colour);
  }
  const widthPx = Math.max(1, Math.round((heightPx * studio.paper.widthMm) / studio.paper.heightMm));
  const pixels = new Uint8ClampedArray(widthPx * heightPx * 4);
  paintThumbnail(map, { cells: map.cells, linear, packed, outside: new Uint8Array(map.cells) }, widthPx, pixels);
  return { picture: { widthPx, heightPx, pixels }, mean, greatest, share: shareOver(difference, overDeltaE) };
}
