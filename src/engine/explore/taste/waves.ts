import { num } from '../../base/at.ts';
import { SKETCH_FIELDS } from '../look/sketch.ts';

/** Waves over the sheet, half periods across and down, in which a sketch is seen: lightness, and a and b more coarsely. */
const LIGHT_WAVES = [
  [2, 0],
  [0, 2],
  [1, 1],
  [2, 1],
  [1, 2],
  [2, 2],
] as const;
const COLOUR_WAVES = [
  [1, 0],
  [0, 1],
  [1, 1],
] as const;
/** How many numbers wavesOf gives. */
export const WAVES = LIGHT_WAVES.length + 2 * COLOUR_WAVES.length;

/**
 * How light and colour lie over the sheet beyond the traits that have a name: the low cosine waves of a sketch.
 * Source: discrete cosine transform, N. Ahmed, T. Natarajan, K. R. Rao, IEEE Transactions on Computers C-23 (1974) 90–93.
 */
export function wavesOf(sketch: ArrayLike<number>): number[] {
  return [
    ...LIGHT_WAVES.map((wave) => waveOf(sketch, 0, wave)),
    ...COLOUR_WAVES.map((wave) => waveOf(sketch, 1, wave)),
    ...COLOUR_WAVES.map((wave) => waveOf(sketch, 2, wave)),
  ];
}

function waveOf(sketch: ArrayLike<number>, channel: number, [u, v]: readonly [number, number]): number {
  const { across, down } = SKETCH_FIELDS;
  let sum = 0;
  for (let field = 0; field < across * down; field++) {
    const [column, row] = [field % across, Math.floor(field / across)];
    const height = Math.cos((Math.PI * u * (column + 0.5)) / across) * Math.cos((Math.PI * v * (row + 0.5)) / down);
    sum += height * num(sketch, field * 3 + channel);
  }
  return sum / (across * down);
}
