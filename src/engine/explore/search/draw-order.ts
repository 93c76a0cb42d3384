import { defined, num } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import { graphOf } from '../../order/graph.ts';
import { drawOrder } from '../../order/sample.ts';
import { walkOrientation } from '../../order/walk.ts';
import { arrange, type Constraints } from './arrange.ts';

/** Draws that may break a hold before the walk within the holds begins. */
const PLAIN_DRAWS = 24;
/** Thousands of draws a wall: exact in parts up to 12 pulls, short walks in larger ones. */
const EFFORT = { exactPulls: 12, walkSteps: (overlaps: number): number => 6 * overlaps };
/** Steps within the holds, for each overlap: this walk starts from one order, so it goes further. */
const HELD_STEPS = 60;
/** Walks that may break a held place before the base order is taken. */
const WALKS = 4;

type Pair = [number, number];

/**
 * An order whose class is drawn uniformly among those that the holds admit, as far as feasible:
 * exactly where no part that no clique cuts has more than 12 pulls and one of 24 draws fits the
 * holds; larger parts by a short random walk, tighter holds by a walk that keeps them.
 * @param overlaps pairs whose order matters
 * @param ranks lower goes first where neither overlaps nor holds decide
 * @returns bottom to top; null when the holds admit no order at all
 */
export function drawHeldOrder(
  overlaps: readonly { a: number; b: number }[],
  keep: Constraints,
  ranks: readonly number[],
  random: Random,
): number[] | null {
  const n = ranks.length;
  const pairs = overlaps.map(({ a, b }): Pair => [a, b]);
  const graph = graphOf(n, pairs);
  const first = keep.slots.indexOf(0);
  const last = n > 1 ? keep.slots.indexOf(n - 1) : -1;
  // A pull held first or last has no say: what is left is still drawn uniformly.
  const free = Array.from({ length: n }, (_, i) => i).filter((i) => i !== first && i !== last);
  const local = new Map(free.map((pull, i) => [pull, i]));
  const inner = graphOf(
    free.length,
    pairs.filter(([a, b]) => local.has(a) && local.has(b)).map(([a, b]): Pair => [defined(local.get(a)), defined(local.get(b))]),
  );
  const finish = (order: readonly number[]): number[] | null =>
    arrange(n, { arcs: [...keep.arcs, ...orient(pairs, order)], slots: keep.slots }, ranks);
  for (let draw = 0; draw < PLAIN_DRAWS; draw++) {
    const middle = drawOrder(inner, random, EFFORT).map((i) => num(free, i));
    const order = finish([first, ...middle, last].filter((pull) => pull >= 0));
    if (order !== null) return order;
  }
  const start = arrange(n, keep, ranks);
  if (start === null) return null;
  const arcs = new Map<string, Pair>();
  for (const [low, high] of keep.arcs) arcs.set(`${low} ${high}`, [low, high]);
  for (const [low, high] of orient(pairs, start)) {
    if (low === first || high === last) arcs.set(`${low} ${high}`, [low, high]);
  }
  for (let walk = 0; walk < WALKS; walk++) {
    const steps = HELD_STEPS * pairs.length;
    const order = finish(walkOrientation(graph, { fixed: [...arcs.values()], start, steps }, random));
    if (order !== null) return order;
  }
  return start;
}

/** Each overlap as [low, high] in an order. */
export function orient(pairs: readonly (readonly [number, number])[], order: readonly number[]): Pair[] {
  const place: number[] = [];
  order.forEach((pull, index) => {
    place[pull] = index;
  });
  return pairs.map(([a, b]): Pair => (num(place, a) < num(place, b) ? [a, b] : [b, a]));
}
