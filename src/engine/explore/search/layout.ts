import { defined } from '../../base/at.ts';
import { pairsThatShow } from '../../order/order-graph.ts';
import type { MeetingPair } from '../../order/overlaps.ts';
import type { SwapDeltas } from '../../order/swap-delta.ts';
import { CellMapBuilder, copyCellMap } from '../../stack/cell-map.ts';
import { sharedAmong, type SharedPairs, sharedPairs } from '../../stack/overlap-areas.ts';
import type { SpanCache } from '../../stack/screen-spans.ts';
import type { CellMap, Pull, RowGrid } from '../../stack/types.ts';

/** Pulls that share less than this are taken as only touching, mm². */
export const MIN_AREA_MM2 = 1;
/** A map of a whole drawer with more cells takes longer to go through than a new one of one print. */
const MOST_CELLS_AT_REST = 2000;

/** Where pulls lie on the sheet. */
interface Places {
  map: CellMap;
  /** Which pulls share area. */
  shared: SharedPairs;
  /** Placed screen of the map that each pull prints. */
  bits: readonly number[];
}

/** Pulls with all that their order is drawn and named from, by their index. */
export interface Layout extends Places {
  pulls: readonly Pull[];
  films: readonly number[];
  /** Pairs whose order shows. */
  edges: readonly MeetingPair[];
}

/** The pairs of a layout whose order shows. */
export function pairsOf({ edges }: Layout): [number, number][] {
  return edges.map(({ a, b }): [number, number] => [a, b]);
}

/** What layouts are worked out with. */
export interface LayoutTools {
  deltas: SwapDeltas;
  spans: SpanCache;
  grid: RowGrid;
  /** Orders that differ by less than this look the same, ΔE00. */
  minDeltaE: number;
}

/** Works out where pulls lie, in what films, and whose order matters. */
export class Layouts {
  private readonly tools: LayoutTools;
  private readonly resting: readonly Pull[];
  private readonly builder = new CellMapBuilder();
  /** Map of all pulls that may appear, at rest, which of them share area, and where each is in it. */
  private rest: { at: Map<string, number>; map: CellMap; shared: SharedPairs } | null = null;

  /** @param resting all pulls that may appear without a shift, at rest */
  constructor(tools: LayoutTools, resting: readonly Pull[]) {
    this.tools = tools;
    this.resting = resting;
  }

  /**
   * @param shifted whether some pull lies elsewhere than at rest, or is there twice
   * @returns a layout whose map the next may write over
   */
  of(pulls: readonly Pull[], shifted: boolean): Layout {
    const { deltas, minDeltaE } = this.tools;
    const films = pulls.map((pull) => deltas.filmOf(pull));
    const { map, shared, bits } = shifted ? this.placed(pulls) : this.atRest(pulls);
    return { pulls, films, map, shared, bits, edges: pairsThatShow(shared, films, deltas, minDeltaE) };
  }

  private placed(pulls: readonly Pull[]): Places {
    const { spans, grid } = this.tools;
    const map = this.builder.build(spans.place({ pulls }, grid), grid);
    return { map, shared: sharedPairs(map, MIN_AREA_MM2), bits: pulls.map((_, i) => i) };
  }

  /** One map of all that may appear serves every print without shifts. */
  private atRest(pulls: readonly Pull[]): Places {
    if (this.rest === null) {
      const { map, shared } = this.placed(this.resting);
      this.rest = { at: new Map(this.resting.map((pull, i) => [pull.id, i])), map: copyCellMap(map), shared };
    }
    const { at, map, shared } = this.rest;
    if (map.cells > MOST_CELLS_AT_REST && pulls.length < at.size) return this.placed(pulls);
    const bits = pulls.map((pull) => defined(at.get(pull.id)));
    return { map, shared: sharedAmong(shared, bits), bits };
  }
}
