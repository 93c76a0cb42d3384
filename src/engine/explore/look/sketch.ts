import { f64, u32 } from '../../base/at.ts';
import { linearFromSrgb } from '../../colour/encode.ts';
import { oklabFromLinearSrgb } from '../../colour/oklab.ts';
import type { SmallPicture } from '../../stack/small-picture.ts';

const ACROSS = 5;
const DOWN = 6;
const LINEAR = Float64Array.from({ length: 256 }, (_, code) => linearFromSrgb(code / 255));

/** Fields of a sketch. */
export const SKETCH_FIELDS = { across: ACROSS, down: DOWN };
/** Numbers of a sketch. */
export const SKETCH_LENGTH = ACROSS * DOWN * 3;

/**
 * A print seen with eyes half shut: the mean colours of 5 × 6 fields of its sheet, in linear light,
 * as Oklab. Sketches of prints that look alike lie near each other.
 * @param picture of at least 5 × 6 fields
 * @returns 5 × 6 × 3 numbers, row by row: L 0–1, a, b
 */
export function sketchOf({ columns, rows, words }: SmallPicture): Float32Array {
  const sums = new Float64Array(SKETCH_LENGTH);
  const counts = new Uint32Array(ACROSS * DOWN);
  for (let row = 0, at = 0; row < rows; row++) {
    const band = Math.floor((row * DOWN) / rows) * ACROSS;
    for (let column = 0; column < columns; column++, at++) {
      const field = band + Math.floor((column * ACROSS) / columns);
      const word = u32(words, at);
      sums[field * 3] = f64(sums, field * 3) + f64(LINEAR, word & 255);
      sums[field * 3 + 1] = f64(sums, field * 3 + 1) + f64(LINEAR, (word >> 8) & 255);
      sums[field * 3 + 2] = f64(sums, field * 3 + 2) + f64(LINEAR, (word >> 16) & 255);
      counts[field] = u32(counts, field) + 1;
    }
  }
  const sketch = new Float32Array(SKETCH_LENGTH);
  for (let field = 0; field < counts.length; field++) {
    const count = Math.max(1, u32(counts, field));
    sketch.set(
      oklabFromLinearSrgb(f64(sums, field * 3) / count, f64(sums, field * 3 + 1) / count, f64(sums, field * 3 + 2) / count),
      field * 3,
    );
  }
  return sketch;
}
