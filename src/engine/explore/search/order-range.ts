import { entryAt, f64, i32, num } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { ExploreSettings } from '../types.ts';
import { arrange, type Constraints } from './arrange.ts';
import { drawHeldOrder, orient } from './draw-order.ts';

/** Shares of pairs are drawn in so many steps. */
const STEPS = 1000;
/** Halvings of the way between two orders: more than there are pairs of 200 pulls. */
const HALVINGS = 20;

/** How far orders may stray: shares of overlapping pairs that change places, 0–1. */
export interface OrderRange {
  from: number;
  to: number;
}

/** A wall goes round so many parts of its range, from one to the next but one, so that none is left out. */
const PARTS = 5;

/** Whether a print lies in the part of the range that is next for the print with a number. */
export function isNext(strays: number | undefined, { from, to }: OrderRange, number: number): boolean {
  const part = (2 * number) % PARTS;
  const share = to > from ? ((strays ?? 0) - from) / (to - from) : 0;
  return to === from || Math.min(PARTS - 1, Math.max(0, Math.floor(share * PARTS))) === part;
}

/** The range that settings ask for; null where all orders are alike likely. */
export function orderRange({ orderFrom, orderTo }: Pick<ExploreSettings, 'orderFrom' | 'orderTo'>): OrderRange | null {
  return orderFrom === undefined && orderTo === undefined ? null : { from: orderFrom ?? 0, to: orderTo ?? 1 };
}

/**
 * Share of pairs that lie the other way round in an order than by rank; 0 where there are none.
 * @param order bottom to top
 * @param ranks of each pull, lower further down
 */
export function turnedShare(pairs: readonly (readonly [number, number])[], order: readonly number[], ranks: readonly number[]): number {
  if (pairs.length === 0) return 0;
  return turnedBy(ends(pairs), Float64Array.from(placesOf(order)), Float64Array.from(ranks)) / pairs.length;
}

/**
 * An order that strays by a share drawn evenly from a range: on the way from the base order to one drawn
 * from all that the holds admit, and on from that to the base order upside down. Pairs change places one
 * after another on this way, so any share can be met that the holds leave open.
 * @param pairs those whose order matters
 * @param ranks the base order
 * @returns bottom to top; null when the holds admit no order, or none within the range
 */
export function drawWithin(
  pairs: readonly (readonly [number, number])[],
  keep: Constraints,
  { ranks, range }: { ranks: readonly number[]; range: OrderRange },
  random: Random,
): number[] | null {
  const n = ranks.length;
  const target = range.from + ((range.to - range.from) * random.int(STEPS + 1)) / STEPS;
  const base = arrange(n, keep, ranks);
  const drawn = drawHeldOrder(
    pairs.map(([a, b]) => ({ a, b })),
    keep,
    ranks,
    random,
  );
  const upside = arrange(
    n,
    keep,
    ranks.map((rank) => -rank),
  );
  if (base === null || drawn === null || upside === null) return null;
  const legs = [base, drawn, upside].map(placesOf);
  const order = strayed(pairs, { legs, ranks, target });
  const fitted = arrange(n, { arcs: [...keep.arcs, ...orient(pairs, order)], slots: keep.slots }, ranks);
  if (fitted === null) return null;
  const share = turnedShare(pairs, fitted, ranks);
  // Half a pair either way is as near as a share can be met.
  const near = 0.5 / Math.max(1, pairs.length) + 1e-9;
  return pairs.length > 0 && (share < range.from - near || share > range.to + near) ? null : fitted;
}

/** What a way through orders is walked by. */
interface Way {
  /** Place of each pull in the orders that the way leads through. */
  legs: readonly (readonly number[])[];
  ranks: readonly number[];
  /** Share of pairs to be turned. */
  target: number;
}

/** The order on a way at which a share of pairs is turned. */
function strayed(pairs: readonly (readonly [number, number])[], { legs, ranks, target }: Way): number[] {
  const wanted = Math.round(target * pairs.length);
  const flat = ends(pairs);
  const ways = legs.map((places) => Float64Array.from(places));
  const base = Float64Array.from(ranks);
  const under = new Float64Array(ranks.length);
  const over = new Float64Array(ranks.length);
  let low = 0;
  let high = legs.length - 1;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    scoresAt(ways, middle, under);
    if (turnedBy(flat, under, base) < wanted) low = middle;
    else high = middle;
  }
  scoresAt(ways, low, under);
  scoresAt(ways, high, over);
  const missed = (scores: Float64Array): number => Math.abs(turnedBy(flat, scores, base) - wanted);
  const scores = missed(under) <= missed(over) ? under : over;
  return Array.from(ranks.keys()).sort((a, b) => f64(scores, a) - f64(scores, b) || num(ranks, a) - num(ranks, b));
}

/**
 * Between the places of two orders.
 * @param at counts the legs of the way
 * @param out receives the place of each pull
 */
function scoresAt(ways: readonly Float64Array[], at: number, out: Float64Array): void {
  const leg = Math.min(ways.length - 2, Math.floor(at));
  const [from, to] = [entryAt(ways, leg), entryAt(ways, leg + 1)];
  for (let pull = 0; pull < out.length; pull++) out[pull] = f64(from, pull) + (at - leg) * (f64(to, pull) - f64(from, pull));
}

/** Both ends of each pair in one list: pairs taken apart in a loop leave much behind them, and this is asked for every draw. */
function ends(pairs: readonly (readonly [number, number])[]): Int32Array {
  const flat = new Int32Array(pairs.length * 2);
  pairs.forEach((pair, i) => {
    flat[2 * i] = pair[0];
    flat[2 * i + 1] = pair[1];
  });
  return flat;
}

function turnedBy(pairs: Int32Array, scores: Float64Array, ranks: Float64Array): number {
  let turned = 0;
  for (let i = 0; i < pairs.length; i += 2) {
    const a = i32(pairs, i);
    const b = i32(pairs, i + 1);
    const now = f64(scores, a) - f64(scores, b) || f64(ranks, a) - f64(ranks, b);
    if (now > 0 !== f64(ranks, a) - f64(ranks, b) > 0) turned++;
  }
  return turned;
}

function placesOf(order: readonly number[]): number[] {
  const places: number[] = [];
  order.forEach((pull, place) => {
    places[pull] = place;
  });
  return places;
}
