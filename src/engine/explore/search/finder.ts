import { entryAt } from '../../base/at.ts';
import { type Random, randomFrom } from '../../base/random.ts';
import { SwapDeltas } from '../../order/swap-delta.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { shares } from '../../stack/overlap-areas.ts';
import { samePlacement } from '../../stack/placement.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { Pull } from '../../stack/types.ts';
import { Sight } from '../look/visible.ts';
import { prints } from '../measure/prints.ts';
import { holdConstraints } from '../settings/hold-constraints.ts';
import type { ExploreInput, OrderCount, Variant } from '../types.ts';
import { arrange, type Constraints } from './arrange.ts';
import { drawHeldOrder, orient } from './draw-order.ts';
import { inkArcs } from './ink-arcs.ts';
import { type Layout, Layouts, pairsOf } from './layout.ts';
import { LimitKeeper } from './limit-keeper.ts';
import { type MoveSource, moveSource } from './move-source.ts';
import { drawMoves, kindsOf, type Moved } from './moves.ts';
import { OrderClasses } from './order-classes.ts';
import { drawWithin, type OrderRange, orderRange, turnedShare } from './order-range.ts';
import { pictureOfOrder } from './picture-of-order.ts';

/** Rows of the map from which the explorer takes which pulls overlap. */
const ROWS = 256;
/** Below this two orders are the same but for rounding, ΔE00. */
const ROUNDING_DELTA_E = 1e-6;
/** At most so many order classes are listed in full. */
const MAX_LISTED_CLASSES = 20_000;
/** What takes longer to count is too many to list. */
const LIST_COUNT_STEPS = 20_000;

/** Draws single variants; what it keeps between draws changes the time they take, not the result. */
export class Finder {
  private readonly source: MoveSource;
  private readonly limits: LimitKeeper;
  private readonly layouts: Layouts;
  private readonly sight: Sight;
  private readonly range: OrderRange | null;

  constructor(input: ExploreInput) {
    const { drawer: studio, explore } = input;
    const spans = new SpanCache(studio);
    const builder = new CellMapBuilder();
    const deltas = new SwapDeltas(studio);
    const minDeltaE = Math.max(explore.minDeltaE, ROUNDING_DELTA_E);
    const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows: ROWS };
    this.range = orderRange(explore);
    this.source = moveSource(input, (pull) => prints(pull, studio, spans, builder));
    const { bench, spares, settings } = this.source;
    this.limits = new LimitKeeper(studio, settings, spans, grid);
    this.layouts = new Layouts({ deltas, spans, grid, minDeltaE }, settings.bringIn > 0 ? [...bench, ...spares] : bench);
    this.sight = new Sight((film) => deltas.thinnest(film), minDeltaE);
  }

  /**
   * The draw of a number and attempt: always the same for the same seed, whoever draws it.
   * @returns null when the draw came to nothing: holds that did not fit, no pull left
   */
  draw(index: number, attempt: number): Variant | null {
    const random = randomFrom(`${this.source.settings.seed}:${index}:${attempt}`);
    const { pulls, base, shifted, veil, reorder, ranks } = drawMoves(this.source, random);
    if (pulls.length === 0 || !this.limits.countsKept(pulls)) return null;
    const layout = this.layouts.of(pulls, shifted);
    const keep = this.orderKept(layout, base, veil);
    const order = this.drawOrder(layout, keep, { reorder, ranks }, random);
    const variant = order === null ? null : this.variant(layout, order, index);
    if (order === null || variant === null || this.range === null) return variant;
    return { ...variant, strays: turnedShare(pairsOf(layout), order, ranks) };
  }

  private drawOrder(
    layout: Layout,
    keep: Constraints,
    { reorder, ranks }: Pick<Moved, 'reorder' | 'ranks'>,
    random: Random,
  ): number[] | null {
    const { range } = this;
    // Where every order is to stray, none is left as it was.
    if (!reorder && !(this.source.settings.order && range !== null && range.from > 0)) return arrange(ranks.length, keep, ranks);
    if (range === null) return drawHeldOrder(layout.edges, keep, ranks, random);
    return drawWithin(pairsOf(layout), keep, { ranks, range }, random);
  }

  /** A pull at rest for each screen that is not in the base stack; inks are drawn. */
  get spares(): readonly Pull[] {
    return this.source.spares;
  }

  /**
   * A given stack as a variant, its free swaps made to fit the holds.
   * @returns null when it breaks a hold or a limit
   */
  fit(given: readonly Pull[], index: number): Variant | null {
    if (given.length === 0 || !this.limits.countsKept(given)) return null;
    const { bench, still } = this.source;
    if (bench.some((pull) => still.has(pull.id) && given.some((each) => each.id === pull.id && !samePlacement(each, pull)))) return null;
    const own = new Map(bench.map((pull, i) => [pull.id, i]));
    const pulls = [...given].sort((a, b) => (own.get(a.id) ?? bench.length) - (own.get(b.id) ?? bench.length));
    const base = pulls.filter(({ id }) => own.has(id)).length;
    const order = given.map((pull) => pulls.indexOf(pull));
    const ranks = pulls.map((pull) => given.indexOf(pull));
    const layout = this.layouts.of(pulls, true);
    const keep = this.orderKept(layout, base);
    const fitted = arrange(pulls.length, { ...keep, arcs: [...keep.arcs, ...orient(pairsOf(layout), order)] }, ranks);
    return fitted === null ? null : this.variant(layout, fitted, index);
  }

  /**
   * All stacks that may be found, when only the order may change and there are few enough: one of
   * each order class that the holds admit, in an order drawn from the seed; else null.
   * @param enough longest list worth making
   */
  list(enough: number): ((index: number) => Variant | null)[] | null {
    const { settings, bench } = this.source;
    if (kindsOf(this.source).join() !== 'order') return null;
    const layout = this.layouts.of(bench, false);
    const classes = new OrderClasses(layout);
    const count = classes.count(LIST_COUNT_STEPS);
    if (count === null || count > BigInt(Math.min(enough, MAX_LISTED_CLASSES))) return null;
    const { range } = this;
    const pairs = pairsOf(layout);
    const ranks = Array.from(bench.keys());
    const within = (order: readonly number[]): boolean => {
      const share = turnedShare(pairs, order, ranks);
      return range === null || (share >= range.from - 1e-9 && share <= range.to + 1e-9);
    };
    return randomFrom(`${settings.seed}:list`)
      .shuffle([...classes.admitted(this.orderKept(layout, bench.length))].filter(within))
      .map((order) => (index: number) => {
        const variant = this.variant(layout, order, index);
        return variant === null || range === null ? variant : { ...variant, strays: turnedShare(pairs, order, ranks) };
      });
  }

  /**
   * How many pictures the orders of the base stack make by themselves, all else at rest: counted
   * one by one where there are at most 20,000 classes, so that the holds are kept and what is
   * hidden is not told apart; else the exact number of classes, holds or not, or bounds of it.
   * @yields now and then, so that whoever runs it can stop it
   */
  *orders(): Generator<void, OrderCount> {
    const { bench, settings } = this.source;
    const layout = this.layouts.of(bench, false);
    const classes = new OrderClasses(layout);
    const { least, most } = yield* classes.bounds();
    const size = { pulls: bench.length, overlaps: classes.pairs.length };
    if (least !== most) return { ...size, count: null, oneByOne: false, least: String(least), most: String(most) };
    if (least > BigInt(MAX_LISTED_CLASSES)) return { ...size, count: String(least), oneByOne: false };
    const keys = new Set<string>();
    let done = 0;
    // Inks and limits speak of prints in which more may change, so holds alone count here.
    for (const order of classes.admitted(holdConstraints(bench, bench.length, settings.holds))) {
      keys.add(pictureOfOrder(layout, order, this.sight));
      if (++done % 16 === 0) yield;
    }
    return { ...size, count: String(keys.size), oneByOne: true };
  }

  /** What holds and inks ask of the order. */
  private orderKept({ pulls, shared }: Layout, base: number, veil = -1): Constraints {
    const { settings } = this.source;
    const { arcs, slots } = holdConstraints(pulls, base, settings.holds);
    return { arcs: [...arcs, ...inkArcs(pulls, settings, (a, b) => shares(shared, a, b), veil)], slots };
  }

  /** Null when the print breaks a limit. */
  private variant(layout: Layout, order: readonly number[], index: number): Variant | null {
    const pulls = order.map((pull) => ({ ...entryAt(layout.pulls, pull) }));
    if (!this.limits.kept(pulls)) return null;
    const { seed } = this.source.settings;
    return { id: `${seed}:${index}`, seed, index, pulls, key: pictureOfOrder(layout, order, this.sight) };
  }
}
