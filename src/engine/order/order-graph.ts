import { f64, i32, num, u32 } from '../base/at.ts';
import { sharedByBoth, sharedOf, type SharedPairs, shares } from '../stack/overlap-areas.ts';
import type { MeetingPair, Overlap } from './overlaps.ts';
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
  const shared = sharedOf(areas, films.length, minAreaMm2);
  return pairsThatShow(shared, films, deltas, minDeltaE).map(({ a, b, deltaE }) => ({
    a,
    b,
    areaMm2: f64(areas, a * films.length + b),
    deltaE,
  }));
}

/** The same where it is known only which pulls share area, and not how much. */
export function pairsThatShow(
  shared: SharedPairs,
  films: readonly number[],
  deltas: SwapDeltas,
  minDeltaE: number,
): (MeetingPair & { deltaE: number })[] {
  const n = films.length;
  const edges: (MeetingPair & { deltaE: number })[] = [];
  const first = Int32Array.from(films, (film) => films.indexOf(film));
  /** By the first pull of a film, the last pair under which it lies. */
  const listed = new Int32Array(n).fill(-1);
  const unders = new Uint32Array(n);
  for (let a = 0; a < n; a++) {
    for (let b = a + 1; b < n; b++) {
      if (first[a] === first[b] || !shares(shared, a, b)) continue;
      const low = num(films, a);
      const high = num(films, b);
      let deltaE = deltas.delta(low, high);
      const count = sharedByBoth(shared, a, b, unders);
      for (let i = 0; i < count; i++) {
        const k = u32(unders, i);
        if (k === a || k === b || listed[i32(first, k)] === a * n + b) continue;
        listed[i32(first, k)] = a * n + b;
        deltaE = Math.max(deltaE, deltas.delta(low, high, num(films, k)));
      }
      if (deltaE >= minDeltaE) edges.push({ a, b, deltaE });
    }
  }
  return edges;
}
