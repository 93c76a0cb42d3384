import { f64, i32, num } from '../base/at.ts';
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
  areas: Float64Array,
  films: readonly number[],
  deltas: SwapDeltas,
  { minDeltaE, minAreaMm2 }: { minDeltaE: number; minAreaMm2: number },
): Overlap[] {
  const n = films.length;
  const edges: Overlap[] = [];
  const first = Int32Array.from(films, (film) => films.indexOf(film));
  /** By the first pull of a film, the last pair under which it lies. */
  const listed = new Int32Array(n).fill(-1);
  for (let a = 0; a < n; a++) {
    for (let b = a + 1; b < n; b++) {
      const areaMm2 = f64(areas, a * n + b);
      if (first[a] === first[b] || !(areaMm2 >= minAreaMm2)) continue;
      const low = num(films, a);
      const high = num(films, b);
      let deltaE = deltas.delta(low, high);
      for (let k = 0; k < n; k++) {
        if (k === a || k === b || listed[i32(first, k)] === a * n + b) continue;
        if (!(f64(areas, a * n + k) >= minAreaMm2) || !(f64(areas, b * n + k) >= minAreaMm2)) continue;
        listed[i32(first, k)] = a * n + b;
        deltaE = Math.max(deltaE, deltas.delta(low, high, num(films, k)));
      }
      if (deltaE >= minDeltaE) edges.push({ a, b, areaMm2, deltaE });
    }
  }
  return edges;
}
