import { EngineError } from '../base/error.ts';
import { randomFrom } from '../base/random.ts';
import { classesOf, countClasses, type Graph, graphOf, orderGraph, type Overlap, SwapDeltas } from '../order/index.ts';
import { type CellMap, CellMapBuilder, copyCellMap, pairOverlapAreas, SpanCache } from '../stack/index.ts';
import type { Pull, RowGrid } from '../stack/types.ts';
import { arrange } from './arrange.ts';
import { drawHeldOrder, orient } from './draw-order.ts';
import { holdConstraints } from './holds.ts';
import { drawMoves, type MoveSource } from './moves.ts';
import { pictureKey } from './picture-key.ts';
import type { ExploreInput, OrderCount, Variant } from './types.ts';
import { Sight } from './visible.ts';

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
/** What takes longer to count, about a second, is told as more than can be counted. */
const COUNT_STEPS = 500_000;

/** Draws single variants; what it keeps between draws changes the time they take, not the result. */
export class Finder {
  readonly input: ExploreInput;
  private readonly source: MoveSource;
  private readonly deltas: SwapDeltas;
  private readonly spans: SpanCache;
  private readonly builder = new CellMapBuilder();
  private readonly grid: RowGrid;
  private readonly sight: Sight;
  /** Map and shared areas of all pulls that may appear, at rest, and where each is in them. */
  private rest: { at: Map<string, number>; map: CellMap; areas: Float64Array } | null = null;

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
    this.sight = new Sight((film) => this.deltas.film(film), this.minDeltaE);
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
    const laid = this.lay(pulls, moved.shifted);
    const keep = holdConstraints(pulls, base, holds);
    const order = moved.reorder
      ? drawHeldOrder(pulls.length, laid.edges, keep, ranks, random)
      : arrange(pulls.length, keep, ranks);
    return order === null ? null : this.variant(laid, order, index);
  }

  /**
   * All stacks that may be found, when only the order may change and there are few enough: one of
   * each order class that the holds admit, in an order drawn from the seed; else null.
   * @param enough longest list worth making
   */
  list(enough: number): ((index: number) => Variant)[] | null {
    const { settings, bench } = this.source;
    const { order, recolour, offsetRangeMm, leaveOut, bringIn, seed } = settings;
    if (!order || recolour || offsetRangeMm > 0 || leaveOut > 0 || bringIn > 0) return null;
    const laid = this.lay(bench, false);
    const pairs = pairsOf(laid);
    const graph = graphOf(bench.length, pairs);
    const classes = countFew(graph, LIST_COUNT_STEPS);
    if (classes === null || classes > BigInt(Math.min(enough, MAX_LISTED_CLASSES))) return null;
    return randomFrom(`${seed}:list`)
      .shuffle([...this.admitted(laid, graph, pairs)])
      .map((each) => (index: number) => this.variant(laid, each, index));
  }

  /**
   * How many pictures the orders of the base stack make by themselves, all else at rest: counted
   * one by one where there are at most 20,000 classes, so that the holds are kept and what is
   * hidden is not told apart; else the exact number of classes, holds or not.
   * @yields now and then, so that whoever runs it can stop it
   */
  *orders(): Generator<void, OrderCount> {
    const { bench } = this.source;
    const laid = this.lay(bench, false);
    const pairs = pairsOf(laid);
    const graph = graphOf(bench.length, pairs);
    const classes = countFew(graph, COUNT_STEPS);
    const told = { pulls: bench.length, overlaps: pairs.length };
    if (classes === null) return { ...told, count: null, oneByOne: false };
    if (classes > BigInt(MAX_LISTED_CLASSES)) return { ...told, count: String(classes), oneByOne: false };
    const keys = new Set<string>();
    let done = 0;
    for (const order of this.admitted(laid, graph, pairs)) {
      keys.add(this.variant(laid, order, 0).key);
      if (++done % 16 === 0) yield;
    }
    return { ...told, count: String(keys.size), oneByOne: true };
  }

  /** One order of each class that the holds admit. */
  private *admitted(laid: Laid, graph: Graph, pairs: readonly [number, number][]): Generator<number[]> {
    const { pulls } = laid;
    const keep = holdConstraints(pulls, pulls.length, this.source.settings.holds);
    const ranks = pulls.map((_, i) => i);
    for (const each of classesOf(graph)) {
      const fitted = arrange(pulls.length, { ...keep, arcs: [...keep.arcs, ...orient(pairs, each)] }, ranks);
      if (fitted !== null) yield fitted;
    }
  }

  private variant(laid: Laid, order: readonly number[], index: number): Variant {
    const { seed } = this.source.settings;
    const { map, pulls, edges } = laid;
    const seen = this.sight.of(map, order.map((pull) => laid.films[pull]), order.map((pull) => laid.bits[pull]));
    // What nothing shows of has no part in the picture's name.
    const shown = order.map((_, at) => at).filter((at) => seen.areaMm2[at] >= MIN_AREA_MM2);
    const place = new Int32Array(pulls.length).fill(-1);
    shown.forEach((at, i) => {
      place[order[at]] = i;
    });
    const at = new Int32Array(pulls.length);
    order.forEach((pull, i) => {
      at[pull] = i;
    });
    const told = edges.filter(({ a, b }) => {
      if (place[a] < 0 || place[b] < 0) return false;
      const [low, high] = at[a] < at[b] ? [at[a], at[b]] : [at[b], at[a]];
      return seen.pairMm2[high * pulls.length + low] >= MIN_AREA_MM2;
    });
    const key = pictureKey(
      shown.map((each) => pulls[order[each]]),
      told.map(({ a, b }) => ({ a: place[a], b: place[b] })),
    );
    return { id: `${seed}:${index}`, seed, index, pulls: order.map((pull) => ({ ...pulls[pull] })), key };
  }

  /** Where pulls lie, in what films, and whose order matters. */
  private lay(pulls: readonly Pull[], shifted: boolean): Laid {
    const films = pulls.map((pull) => this.deltas.filmOf(pull));
    const { map, areas, bits } = shifted ? this.mapOf(pulls) : this.atRest(pulls);
    return { pulls, films, map, bits, edges: orderGraph(areas, films, this.deltas, this.minDeltaE, MIN_AREA_MM2) };
  }

  private get minDeltaE(): number {
    return Math.max(this.input.explore.minDeltaE, ROUNDING_DELTA_E);
  }

  /** The map is written over by the next. */
  private mapOf(pulls: readonly Pull[]): { map: CellMap; areas: Float64Array; bits: number[] } {
    const map = this.builder.build(this.spans.place({ pulls }, this.grid), this.grid);
    return { map, areas: pairOverlapAreas(map), bits: pulls.map((_, i) => i) };
  }

  /** One map of all that may appear serves every variant without shifts. */
  private atRest(pulls: readonly Pull[]): { map: CellMap; areas: Float64Array; bits: number[] } {
    if (this.rest === null) {
      const { bench, spares, settings } = this.source;
      const all = settings.bringIn > 0 ? [...bench, ...spares] : [...bench];
      const { map, areas } = this.mapOf(all);
      this.rest = { at: new Map(all.map((pull, i) => [pull.id, i])), map: copyCellMap(map), areas };
    }
    const { at, map, areas } = this.rest;
    const bits = pulls.map((pull) => at.get(pull.id)!);
    const out = new Float64Array(pulls.length * pulls.length);
    bits.forEach((row, a) => {
      bits.forEach((column, b) => {
        out[a * pulls.length + b] = areas[row * at.size + column];
      });
    });
    return { map, areas: out, bits };
  }
}

/** Pulls with all that their order is drawn and named from, by their index. */
interface Laid {
  pulls: readonly Pull[];
  films: readonly number[];
  map: CellMap;
  /** Placed screen of the map that each pull prints. */
  bits: readonly number[];
  edges: readonly Overlap[];
}

function pairsOf({ edges }: Laid): [number, number][] {
  return edges.map(({ a, b }): [number, number] => [a, b]);
}

/** The number of classes, or null where it takes more steps to count. */
function countFew(graph: Graph, steps: number): bigint | null {
  try {
    return countClasses(graph, steps);
  } catch (error) {
    if (error instanceof EngineError && error.code === 'order.too-many') return null;
    throw error;
  }
}

function newId(screen: string, bench: readonly Pull[]): string {
  let id = `in-${screen}`;
  while (bench.some((pull) => pull.id === id)) id += '+';
  return id;
}
