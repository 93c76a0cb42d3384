import { num } from '../base/at.ts';
import { buildCellMap } from '../stack/cell-map.ts';
import { pairOverlapAreas } from '../stack/overlap-areas.ts';
import { SpanCache } from '../stack/screen-spans.ts';
import type { Stack } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { orderGraph } from './order-graph.ts';
import type { Overlap } from './overlaps.ts';
import { SwapDeltas } from './swap-delta.ts';

/** Height of a row of the map, mm; parts of an overlap that no row goes through are too small to look at. */
const ROW_MM = 0.5;
const MOST_ROWS = 2000;
/** Pulls that share less are taken as only touching, mm². */
const LEAST_MM2 = 2;

/**
 * All pairs of pulls that share area as `overlapsOf` with a ΔE of 0 gives them, but of one look at the sheet
 * in rows of half a millimetre: a tenth of the time, where exact areas of 80 pulls all over each other take half a minute. Pairs of one
 * ink, whose order never shows, have a ΔE of 0.
 * @param spans of this studio, used again; made anew when left out
 * @throws what `SpanCache` and `SwapDeltas` throw
 */
export function mapOverlaps(stack: Stack, studio: Studio, spans: SpanCache = new SpanCache(studio)): Overlap[] {
  const { widthMm, heightMm } = studio.paper;
  const grid = { widthMm, heightMm, rows: Math.min(MOST_ROWS, Math.max(1, Math.ceil(heightMm / ROW_MM))) };
  const areas = pairOverlapAreas(buildCellMap(spans.place(stack, grid), grid));
  const deltas = new SwapDeltas(studio);
  const films = stack.pulls.map((pull) => deltas.filmOf(pull));
  const seen = orderGraph(areas, films, deltas, { minDeltaE: 0, minAreaMm2: LEAST_MM2 });
  const count = films.length;
  const alike = films.flatMap((film, a) =>
    films.slice(a + 1).flatMap((other, i): Overlap[] => {
      const areaMm2 = num(areas, a * count + a + 1 + i);
      return film === other && areaMm2 >= LEAST_MM2 ? [{ a, b: a + 1 + i, areaMm2, deltaE: 0 }] : [];
    }),
  );
  return [...seen, ...alike].sort((one, two) => one.a - two.a || one.b - two.b);
}
