import { num } from '../base/at.ts';
import type { Overlap } from './overlaps.ts';
import type { SwapDeltas } from './swap-delta.ts';

/**
 * The order graph from the areas of a cell map: as overlapsOf, but as fine as the map's rows and
 * without clipping, for stacks by the thousand.
 * @param areas pulls × pulls, what each two share, mm² (pairOverlapAreas)
 * @param films film numbers of the pulls, from `deltas`
 * @param deltas what swaps show, kept between calls
 * @param least `minDeltaE`: pairs whose two orders differ by less (ΔE00) are left out; `minAreaMm2`:
 *   pairs that share less are taken as only touching
 * @returns sorted by a, then b
 */
export function orderGraph(
  areas: ArrayLike<number>,
  films: readonly number[],
  deltas: SwapDeltas,
  { minDeltaE, minAreaMm2 }: { minDeltaE: number; minAreaMm2: number },
): Overlap[] {
  const n = films.length;
  const edges: Overlap[] = [];
  const unders = new Set<number>();
  for (let a = 0; a < n; a++) {
    for (let b = a + 1; b < n; b++) {
      const areaMm2 = num(areas, a * n + b);
      if (films[a] === films[b] || !(areaMm2 >= minAreaMm2)) continue;
      unders.clear();
      for (let k = 0; k < n; k++) {
        if (k === a || k === b) continue;
        if (num(areas, a * n + k) >= minAreaMm2 && num(areas, b * n + k) >= minAreaMm2) unders.add(num(films, k));
      }
      const deltaE = deltas.largest(num(films, a), num(films, b), unders);
      if (deltaE >= minDeltaE) edges.push({ a, b, areaMm2, deltaE });
    }
  }
  return edges;
}
