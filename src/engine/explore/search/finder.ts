import { defined, entryAt, f64, i32, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { randomFrom } from '../../base/random.ts';
import { labD50 } from '../../colour/lab.ts';
import { overFilm } from '../../ink/film/film.ts';
import { countClasses } from '../../order/count.ts';
import { classesOf } from '../../order/enumerate.ts';
import { type Graph, graphOf } from '../../order/graph.ts';
import { orderGraph } from '../../order/order-graph.ts';
import type { Overlap } from '../../order/overlaps.ts';
import { SwapDeltas } from '../../order/swap-delta.ts';
import { cellLab } from '../../stack/appearance.ts';
import { CellMapBuilder, copyCellMap } from '../../stack/cell-map.ts';
import { stackLayers } from '../../stack/layers.ts';
import { pairOverlapAreas } from '../../stack/overlap-areas.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { CellMap } from '../../stack/types.ts';
import type { Pull, RowGrid } from '../../stack/types.ts';
import { pictureKey } from '../look/picture-key.ts';
import { Sight } from '../look/visible.ts';
import { thirdColourArea } from '../measure/measures.ts';
import { holdConstraints } from '../settings/holds.ts';
import { edgeShare, inksMeet, THIRD_DELTA_E, withinCounts } from '../settings/limits.ts';
import { prints as printsSomething } from '../settings/notes.ts';
import type { ExploreInput, OrderCount, Variant } from '../types.ts';
import { veilPulls } from '../veil/veil-move.ts';
import { arrange, type Constraints } from './arrange.ts';
import { drawHeldOrder, orient } from './draw-order.ts';
import { inkArcs } from './ink-arcs.ts';
import { drawMoves, kindsOf, type MoveSource } from './moves.ts';

/** Rows of the map from which the explorer takes which pulls overlap. */
const ROWS = 256;
/** Pulls that share less than this are taken as only touching, mm². */
const MIN_AREA_MM2 = 1;
/** Below this two orders are the same but for rounding, ΔE00. */
const ROUNDING_DELTA_E = 1e-6;
/** At most so many order classes are listed in full. */
const MAX_LISTED_CLASSES = 20_000;
/** A map of a whole drawer with more cells takes longer to go through than a new one of one print. */
const MOST_CELLS_AT_REST = 2000;
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
  private readonly caps = new CellMapBuilder();
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
    const not = new Set(explore.notScreens);
    const kept = ids(['first', 'last', 'place']);
    for (const pull of bench) if (explore.mustScreens?.includes(pull.screen) === true) kept.add(pull.id);
    const resting = drawer.screens
      .filter((screen) => !not.has(screen.id))
      .map((screen) => ({ id: newId(screen.id, bench), screen: screen.id, ink: '', dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 }));
    this.spans = new SpanCache(drawer);
    const prints = (pull: Pull): boolean => explore.bringIn === 0 || printsSomething(pull, drawer, this.spans, this.builder);
    this.source = {
      // A screen that is no longer in the drawer asks for nothing.
      settings: { ...explore, mustScreens: explore.mustScreens?.filter((id) => drawer.screens.some((screen) => screen.id === id)) },
      bench: bench.filter((pull) => !out.has(pull.id) && !not.has(pull.screen)),
      spares: resting.filter((pull) => !used.has(pull.screen) && prints(pull)),
      kept,
      inkHeld: ids(['ink']),
      veils: explore.veil === true ? veilPulls(resting, drawer, explore) : [],
    };
    this.deltas = new SwapDeltas(drawer);
    this.sight = new Sight((film) => this.deltas.film(film), this.minDeltaE);
    this.grid = { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows: ROWS };
  }

  /**
   * The draw of a number and attempt: always the same for the same seed, whoever draws it.
   * @returns null when the draw came to nothing: holds that did not fit, no pull left
   */
  draw(index: number, attempt: number): Variant | null {
    const { seed } = this.source.settings;
    const random = randomFrom(`${seed}:${index}:${attempt}`);
    const moved = drawMoves(this.source, random);
    const { pulls, base, ranks } = moved;
    if (pulls.length === 0) return null;
    if (!withinCounts(pulls, this.source.settings)) return null;
    const laid = this.lay(pulls, moved.shifted);
    const keep = this.keepOf(laid, base, moved.veil);
    const order = moved.reorder ? drawHeldOrder(pulls.length, laid.edges, keep, ranks, random) : arrange(pulls.length, keep, ranks);
    return order === null ? null : this.variant(laid, order, index);
  }

  /** A pull at rest for each screen that is not in the base stack; inks are drawn. */
  get spares(): readonly Pull[] {
    return this.source.spares;
  }

  /**
   * A given stack as a variant, its free swaps made to fit the holds.
   * @returns null when it breaks a hold or a cap
   */
  fit(given: readonly Pull[], index: number): Variant | null {
    const { bench, settings } = this.source;
    if (given.length === 0 || !withinCounts(given, settings)) return null;
    const own = new Map(bench.map((pull, i) => [pull.id, i]));
    const pulls = [...given].sort((a, b) => (own.get(a.id) ?? bench.length) - (own.get(b.id) ?? bench.length));
    const base = pulls.filter(({ id }) => own.has(id)).length;
    const order = given.map((pull) => pulls.indexOf(pull));
    const ranks = pulls.map((pull) => given.indexOf(pull));
    const laid = this.lay(pulls, true);
    const keep = this.keepOf(laid, base);
    const fitted = arrange(pulls.length, { ...keep, arcs: [...keep.arcs, ...orient(pairsOf(laid), order)] }, ranks);
    return fitted === null ? null : this.variant(laid, fitted, index);
  }

  /**
   * All stacks that may be found, when only the order may change and there are few enough: one of
   * each order class that the holds admit, in an order drawn from the seed; else null.
   * @param enough longest list worth making
   */
  list(enough: number): ((index: number) => Variant | null)[] | null {
    const { settings, bench } = this.source;
    if (kindsOf(this.source).join() !== 'order') return null;
    const { seed } = settings;
    const laid = this.lay(bench, false);
    const pairs = pairsOf(laid);
    const graph = graphOf(bench.length, pairs);
    const classes = countFew(graph, LIST_COUNT_STEPS);
    if (classes === null || classes > BigInt(Math.min(enough, MAX_LISTED_CLASSES))) return null;
    return randomFrom(`${seed}:list`)
      .shuffle([...admitted(laid, graph, pairs, this.keepOf(laid, bench.length))])
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
    // Inks and caps speak of prints in which more may change, so holds alone count here.
    const keep = holdConstraints(bench, bench.length, this.source.settings.holds);
    for (const order of admitted(laid, graph, pairs, keep)) {
      keys.add(this.named(laid, order, 0).key);
      if (++done % 16 === 0) yield;
    }
    return { ...told, count: String(keys.size), oneByOne: true };
  }

  /** What holds and inks ask of the order. */
  private keepOf({ pulls, areas }: Laid, base: number, veil = -1): Constraints {
    const { settings } = this.source;
    const { arcs, slots } = holdConstraints(pulls, base, settings.holds);
    const shared = (a: number, b: number): boolean => f64(areas, a * pulls.length + b) >= MIN_AREA_MM2;
    return { arcs: [...arcs, ...inkArcs(pulls, settings, shared, veil)], slots };
  }

  /** Whether the caps that ask for the sheet itself are kept. */
  private withinCaps(pulls: readonly Pull[]): boolean {
    const { apart = [], maxEdgeShare = 1, maxThirdShare = 1 } = this.source.settings;
    if (!withinCounts(pulls, this.source.settings)) return false;
    if (apart.length === 0 && maxEdgeShare >= 1 && maxThirdShare >= 1) return true;
    const { drawer } = this.input;
    const map = this.caps.build(this.spans.place({ pulls }, this.grid), this.grid);
    if (maxEdgeShare < 1 && edgeShare(map) > maxEdgeShare) return false;
    if (
      apart.length > 0 &&
      inksMeet(
        map,
        pulls.map((pull) => pull.ink),
        apart,
        MIN_AREA_MM2,
      )
    )
      return false;
    if (maxThirdShare >= 1) return true;
    const paper = drawer.paper.reflectance;
    const lab = cellLab(map, stackLayers({ pulls }, drawer), paper);
    const swatches = [...new Set(pulls.map((pull) => this.deltas.filmOf(pull)))].map((film) =>
      labD50(overFilm(this.deltas.film(film), paper, new Float64Array(paper.length))),
    );
    const third = thirdColourArea(map, lab, [labD50(paper), ...swatches], undefined, THIRD_DELTA_E);
    return third <= maxThirdShare * map.widthMm * map.heightMm;
  }

  /** Null when the print is beyond a cap. */
  private variant(laid: Laid, order: readonly number[], index: number): Variant | null {
    return this.withinCaps(order.map((pull) => entryAt(laid.pulls, pull))) ? this.named(laid, order, index) : null;
  }

  private named(laid: Laid, order: readonly number[], index: number): Variant {
    const { seed } = this.source.settings;
    const { map, pulls, edges } = laid;
    const seen = this.sight.of(
      map,
      order.map((pull) => num(laid.films, pull)),
      order.map((pull) => num(laid.bits, pull)),
    );
    // What nothing shows of has no part in the picture's name.
    const shown = order.map((_, at) => at).filter((at) => f64(seen.areaMm2, at) >= MIN_AREA_MM2);
    const place = new Int32Array(pulls.length).fill(-1);
    shown.forEach((at, i) => {
      place[num(order, at)] = i;
    });
    const at = new Int32Array(pulls.length);
    order.forEach((pull, i) => {
      at[pull] = i;
    });
    const told = edges.filter(({ a, b }) => {
      if (i32(place, a) < 0 || i32(place, b) < 0) return false;
      const [low, high] = i32(at, a) < i32(at, b) ? [i32(at, a), i32(at, b)] : [i32(at, b), i32(at, a)];
      return f64(seen.pairMm2, high * pulls.length + low) >= MIN_AREA_MM2;
    });
    const key = pictureKey(
      shown.map((each) => entryAt(pulls, num(order, each))),
      told.map(({ a, b }) => ({ a: i32(place, a), b: i32(place, b) })),
    );
    return { id: `${seed}:${index}`, seed, index, pulls: order.map((pull) => ({ ...entryAt(pulls, pull) })), key };
  }

  /** Where pulls lie, in what films, and whose order matters. */
  private lay(pulls: readonly Pull[], shifted: boolean): Laid {
    const films = pulls.map((pull) => this.deltas.filmOf(pull));
    const { map, areas, bits } = shifted ? this.mapOf(pulls) : this.atRest(pulls);
    return {
      pulls,
      films,
      map,
      areas,
      bits,
      edges: orderGraph(areas, films, this.deltas, { minDeltaE: this.minDeltaE, minAreaMm2: MIN_AREA_MM2 }),
    };
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
    if (map.cells > MOST_CELLS_AT_REST && pulls.length < at.size) return this.mapOf(pulls);
    const bits = pulls.map((pull) => defined(at.get(pull.id)));
    const out = new Float64Array(pulls.length * pulls.length);
    bits.forEach((row, a) => {
      bits.forEach((column, b) => {
        out[a * pulls.length + b] = num(areas, row * at.size + column);
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
  /** pulls × pulls, mm². */
  areas: Float64Array;
  /** Placed screen of the map that each pull prints. */
  bits: readonly number[];
  edges: readonly Overlap[];
}

/** One order of each class that is left by what must be kept. */
function* admitted({ pulls }: Laid, graph: Graph, pairs: readonly [number, number][], keep: Constraints): Generator<number[]> {
  const ranks = pulls.map((_, i) => i);
  for (const each of classesOf(graph)) {
    const fitted = arrange(pulls.length, { ...keep, arcs: [...keep.arcs, ...orient(pairs, each)] }, ranks);
    if (fitted !== null) yield fitted;
  }
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
