import { i32, u8 } from '../../base/at.ts';
import type { Grey } from './grey.ts';

/** A picture without its specks, and how many there were. */
export interface Unspecked {
  grey: Grey;
  specks: number;
}

/**
 * Lets dark parts of fewer pixels become as light as the threshold, and then light parts in the dark just
 * darker than it. Pixels belong together where they share a side.
 * @param threshold greys below it are dark
 * @param smallest pixels that a part must have to stay
 */
export function withoutSpecks({ width, height, values }: Grey, threshold: number, smallest: number): Unspecked {
  const cleaned = Uint8Array.from(values);
  let specks = 0;
  if (smallest <= 1) return { grey: { width, height, values: cleaned }, specks };
  const part = new Int32Array(cleaned.length);
  for (const dark of [true, false]) {
    const seen = new Uint8Array(cleaned.length);
    for (let start = 0; start < cleaned.length; start++) {
      if (u8(seen, start) === 1 || u8(cleaned, start) < threshold !== dark) continue;
      const count = gather({ values: cleaned, width, threshold, dark }, start, seen, part);
      if (count >= smallest) continue;
      specks++;
      for (let i = 0; i < count; i++) cleaned[i32(part, i)] = dark ? threshold : threshold - 1;
    }
  }
  return { grey: { width, height, values: cleaned }, specks };
}

/** Notes the pixels of the part that one belongs to, and tells how many they are. */
function gather(
  { values, width, threshold, dark }: { values: Uint8Array; width: number; threshold: number; dark: boolean },
  start: number,
  seen: Uint8Array,
  part: Int32Array,
): number {
  let count = 0;
  const note = (at: number): void => {
    if (u8(seen, at) === 1 || u8(values, at) < threshold !== dark) return;
    seen[at] = 1;
    part[count++] = at;
  };
  note(start);
  for (let next = 0; next < count; next++) {
    const at = i32(part, next);
    const column = at % width;
    if (column > 0) note(at - 1);
    if (column < width - 1) note(at + 1);
    if (at >= width) note(at - width);
    if (at + width < values.length) note(at + width);
  }
  return count;
}
