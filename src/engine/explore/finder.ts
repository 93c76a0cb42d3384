import { EngineError } from '../base/error.ts';
import { randomFrom } from '../base/random.ts';
import { classesOf, countClasses, type Graph, graphOf, orderGraph, type Overlap, SwapDeltas } from '../order/index.ts';
import { CellMapBuilder, pairOverlapAreas, SpanCache } from '../stack/index.ts';
import type { Pull, RowGrid } from '../stack/types.ts';
import { arrange } from './arrange.ts';
import { drawHeldOrder, orient } from './draw-order.ts';
import { holdConstraints } from './holds.ts';
import { drawMoves, type MoveSource } from './moves.ts';
import { pictureKey } from './picture-key.ts';
import type { ExploreInput, Variant } from './types.ts';

/** Rows of the map from which the explorer takes which pulls overlap. */
const ROWS = 256;
/** Pulls that share less than this are taken as only touching, mm². */
const MIN_AREA_MM2 = 1;
/** Below this two orders are the same but for rounding, ΔE00. */
const ROUNDING_DELTA_E = 1e-6;
/** At most so many order classes are listed in full. */
const MAX_LISTED_CLASSES = 20_000;
/** What takes longer to count is too many to list. */
const LIST_COUNT_STEPS = 20_000;

/** Draws single variants; what it keeps between draws changes the time they take, not the result. */
export class Finder {
  readonly input: ExploreInput;
  private readonly source: MoveSource;
  private readonly deltas: SwapDeltas;
  private readonly spans: SpanCache;
  private readonly builder = new CellMapBuilder();
  private readonly grid: RowGrid;
  /** Shared areas of all pulls that may appear, at rest, and where each is in them. */
  private rest: { at: Map<string, number>; size: number; areas: Float64Array } | null = null;

  constructor(input: ExploreInput) {
    this.input = input;
    const { drawer, bench, explore } = input;
    const ids = (kinds: readonly string[]): Set<string> =>
      new Set(explore.holds.filter((hold) => kinds.includes(hold.kind)).map((hold) => hold.pull));
    const out = ids(['out']);
    const used = new Set(bench.map((pull) => pull.screen));
    this.source = {
      settings: explore,
      bench: bench.filter((pull) => !out.has(pull.id)),
      spares: drawer.screens
        .filter((screen) => !used.has(screen.id))
        .map((screen) => ({ id: newId(screen.id, bench), screen: screen.id, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 })),
      kept: ids(['first', 'last', 'place']),
      inkHeld: ids(['ink']),
    };
    this.deltas = new SwapDeltas(drawer);
    this.spans = new SpanCache(drawer);
    this.grid = { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows: ROWS };
  }

  /**
   * The draw of a number and attempt: always the same for the same seed, whoever draws it.
   * @returns null when the draw came to nothing: holds that did not fit, no pull left
   */
  draw(index: number, attempt: number): Variant | null {
    const { seed, holds } = this.source.settings;
    const random = randomFrom(`${seed}:${index}:${attempt}`);
    const moved = drawMoves(this.source, random);
    const { pulls, base, ranks } = moved;
    if (pulls.length === 0) return null;
    const edges = this.edgesOf(pulls, moved.shifted);
    const keep = holdConstraints(pulls, base, holds);
    const order = moved.reorder
      ? drawHeldOrder(pulls.length, edges, keep, ranks, random)
      : arrange(pulls.length, keep, ranks);
    return order === null ? null : this.variant(pulls, order, edges, index);
  }

  /**
   * All stacks that may be found, when only the order may change and there are few enough: one of
   * each order class that the holds admit, in an order drawn from the seed; else null.
   * @param enough longest list worth making
   */
  list(enough: number): ((index: number) => Variant)[] | null {
    const { settings, bench } = this.source;
    const { order, recolour, offsetRangeMm, leaveOut, bringIn, seed, holds } = settings;
    if (!order || recolour || offsetRangeMm > 0 || leaveOut > 0 || bringIn > 0) return null;
    const edges = this.edgesOf(bench, false);
    const pairs = edges.map(({ a, b }): [number, number] => [a, b]);
    const graph = graphOf(bench.length, pairs);
    if (!fewClasses(graph, Math.min(enough, MAX_LISTED_CLASSES))) return null;
    const keep = holdConstraints(bench, bench.length, holds);
    const ranks = bench.map((_, i) => i);
    const found: number[][] = [];
    for (const each of classesOf(graph)) {
      const fitted = arrange(bench.length, { ...keep, arcs: [...keep.arcs, ...orient(pairs, each)] }, ranks);
      if (fitted !== null) found.push(fitted);
    }
    return randomFrom(`${seed}:list`)
      .shuffle(found)
      .map((each) => (index: number) => this.variant(bench, each, edges, index));
  }

  private variant(
    pulls: readonly Pull[],
    order: readonly number[],
    edges: readonly Overlap[],
    index: number,
  ): Variant {
    const { seed } = this.source.settings;
    const place: number[] = [];
    order.forEach((pull, i) => {
      place[pull] = i;
    });
    const stack = order.map((pull) => ({ ...pulls[pull] }));
    const key = pictureKey(stack, edges.map(({ a, b }) => ({ a: place[a], b: place[b] })));
    return { id: `${seed}:${index}`, seed, index, pulls: stack, key };
  }

  private edgesOf(pulls: readonly Pull[], shifted: boolean): Overlap[] {
    const areas = shifted ? this.mapAreas(pulls) : this.areasAtRest(pulls);
    const films = pulls.map((pull) => this.deltas.filmOf(pull));
    const minDeltaE = Math.max(this.source.settings.minDeltaE, ROUNDING_DELTA_E);
    return orderGraph(areas, films, this.deltas, minDeltaE, MIN_AREA_MM2);
  }

  private mapAreas(pulls: readonly Pull[]): Float64Array {
    return pairOverlapAreas(this.builder.build(this.spans.place({ pulls }, this.grid), this.grid));
  }

  /** One map of all that may appear serves every variant without shifts. */
  private areasAtRest(pulls: readonly Pull[]): Float64Array {
    if (this.rest === null) {
      const { bench, spares, settings } = this.source;
      const all = settings.bringIn > 0 ? [...bench, ...spares] : [...bench];
      this.rest = { at: new Map(all.map((pull, i) => [pull.id, i])), size: all.length, areas: this.mapAreas(all) };
    }
    const { at, size, areas } = this.rest;
    const rows = pulls.map((pull) => at.get(pull.id)! * size);
    const out = new Float64Array(pulls.length * pulls.length);
    rows.forEach((row, a) => {
      pulls.forEach((other, b) => {
        out[a * pulls.length + b] = areas[row + at.get(other.id)!];
      });
    });
    return out;
  }
}

function fewClasses(graph: Graph, enough: number): boolean {
  try {
    return countClasses(graph, LIST_COUNT_STEPS) <= BigInt(enough);
  } catch (error) {
    // Too entangled to count is too many to list.
    if (error instanceof EngineError && error.code === 'order.too-many') return false;
    throw error;
  }
}

function newId(screen: string, bench: readonly Pull[]): string {
  let id = `in-${screen}`;
  while (bench.some((pull) => pull.id === id)) id += '+';
  return id;
}
