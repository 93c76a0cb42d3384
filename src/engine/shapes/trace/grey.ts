import { u8 } from '../../base/at.ts';

/** A picture in greys, row after row from the top: 0 black, 255 white. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly values: Uint8Array;
}

/** Shares of red, green and blue in what the eye takes for light (ITU-R BT.709 §3.2), in 1/10,000. */
const RED = 2126;
const GREEN = 7152;
const BLUE = 722;

/**
 * The greys of a picture on white paper.
 * @param data four bytes a pixel: red, green, blue and opacity, as a canvas gives them
 */
export function greyOf({ width, height, data }: { width: number; height: number; data: ArrayLike<number> }): Grey {
  const values = new Uint8Array(width * height);
  for (let i = 0; i < values.length; i++) {
    const at = 4 * i;
    const light = (RED * (data[at] ?? 0) + GREEN * (data[at + 1] ?? 0) + BLUE * (data[at + 2] ?? 0)) / 10_000;
    const opacity = (data[at + 3] ?? 255) / 255;
    values[i] = Math.round(light * opacity + 255 * (1 - opacity));
  }
  return { width, height, values };
}

/** How often each grey stands in a picture: 256 counts. */
export function histogram({ values }: Grey): Uint32Array {
  const counts = new Uint32Array(256);
  for (let i = 0; i < values.length; i++) {
    const grey = u8(values, i);
    counts[grey] = (counts[grey] ?? 0) + 1;
  }
  return counts;
}
