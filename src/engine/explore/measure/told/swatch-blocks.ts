import { entryAt } from '../../../base/at.ts';
import type { CodeRoom } from '../../../base/code/code-room.ts';
import type { Lab } from '../../../colour/lab.ts';
import { reachL } from '../../../colour/reach.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../../ink/film/overprint-colour.ts';
import { BLOCK, FAR, NAME, NEXT, PART_L, PARTS } from './told-names.ts';

/**
 * Puts down in blocks, for each part of L, the swatches that something may be near to there: see `findSwatchCode`.
 * @param swatches darkest first; their names are −1, −2 …
 * @param at where the first block of each part is told, and where blocks lie
 */
export function putSwatches(
  swatches: readonly Lab[],
  { ints, singles }: CodeRoom<string>,
  at: { parts: number; swatchBlocks: number },
): void {
  let block = at.swatchBlocks;
  for (let part = 0; part < PARTS; part++) {
    const [from, to] = [part * PART_L, (part + 1) * PART_L];
    const reach = Math.max(reachL(from, OVERPRINT_COLOUR_DELTA_E), reachL(to, OVERPRINT_COLOUR_DELTA_E));
    let put = 0;
    ints[at.parts + part] = 0;
    for (let i = 0; i < swatches.length; i++) {
      const [l, a, b] = entryAt(swatches, i);
      if ((part > 0 && l < from - reach) || (part + 1 < PARTS && l > to + reach)) continue;
      const place = put++ % 4;
      if (place === 0) {
        if (put > 1) ints[block + NEXT - BLOCK] = block * 4;
        else ints[at.parts + part] = block * 4;
        singles.fill(FAR, block, block + 4).fill(0, block + 4, block + NEXT + 1);
        block += BLOCK;
      }
      const into = block - BLOCK + place;
      [l, a, b, Math.hypot(a, b)].forEach((value, k) => (singles[into + k * 4] = value));
      ints[into + NAME] = -1 - i;
    }
  }
}
