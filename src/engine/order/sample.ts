import { type Random, randomFrom } from '../base/random.ts';
import { blocksOf } from './blocks.ts';
import { drawExact, MAX_EXACT_PULLS } from './exact-draw.ts';
import { type Graph, graphOf, stripSimplicial, subgraph } from './graph.ts';
import { walkOrientation } from './walk.ts';

/** Steps of the random walk per overlap of a block, times log2 of its overlaps. */
export const WALK_STEPS = 30;

/**
 * One order, bottom to top, of a class drawn uniformly among all order classes.
 * Exactly uniform when every block that is left after taking away pulls whose neighbours all
 * overlap each other has at most 14 pulls (so for all chordal graphs). A larger block is drawn by
 * a random walk that turns one overlap at a time: 30·m·log2(m) steps for m overlaps, whose
 * limit is uniform; how near it comes is not proven.
 * @param pulls number of pulls, 0 to 2,000
 * @param overlaps pairs of pulls whose order matters, each pair once, either way round
 * @param seed any text; the same seed gives the same order
 * @returns the lexicographically least order of the class
 * @throws EngineError 'order.pulls' | 'order.range' | 'order.loop' | 'order.duplicate'
 */
export function sampleOrder(
  pulls: number,
  overlaps: readonly (readonly [number, number])[],
  seed: string,
): number[] {
  return drawOrder(graphOf(pulls, overlaps), randomFrom(String(seed)));
}

/** As sampleOrder, for a graph already checked and a stream of random numbers. */
export function drawOrder(graph: Graph, random: Random): number[] {
  const n = graph.pulls;
  const under: Set<number>[] = Array.from({ length: n }, () => new Set());
  const { steps, core } = stripSimplicial(graph);
  const rest = subgraph(graph, core);
  for (const block of blocksOf(rest)) {
    const part = subgraph(rest, block);
    const order =
      part.pulls <= MAX_EXACT_PULLS ? drawExact(part, random) : drawByWalk(part, random);
    const place = placesOf(order);
    for (const [a, b] of part.edges) {
      const [low, high] = place[a] < place[b] ? [a, b] : [b, a];
      under[core[block[high]]].add(core[block[low]]);
    }
  }
  for (const { pull, clique } of steps.reverse()) {
    // A clique has one order only, so the pull goes into one of its gaps.
    const sorted = clique.sort((a, b) => (under[b].has(a) ? -1 : 1));
    const gap = random.int(sorted.length + 1);
    sorted.forEach((other, i) => {
      if (i < gap) under[pull].add(other);
      else under[other].add(pull);
    });
  }
  return leastOrder(under);
}

function drawByWalk(part: Graph, random: Random): number[] {
  const start = random.shuffle(Array.from({ length: part.pulls }, (_, i) => i));
  const m = part.edges.length;
  return walkOrientation(part, [], start, Math.ceil(WALK_STEPS * m * Math.log2(m)), random);
}

function placesOf(order: readonly number[]): Int32Array {
  const place = new Int32Array(order.length);
  order.forEach((pull, index) => {
    place[pull] = index;
  });
  return place;
}

/** Lexicographically least order in which every pull comes after those under it. */
function leastOrder(under: readonly ReadonlySet<number>[]): number[] {
  const waiting = Int32Array.from(under, (set) => set.size);
  const over: number[][] = under.map(() => []);
  under.forEach((set, pull) => {
    for (const low of set) over[low].push(pull);
  });
  const order: number[] = [];
  while (order.length < under.length) {
    let pull = 0;
    while (waiting[pull] !== 0) pull++;
    waiting[pull] = -1;
    order.push(pull);
    for (const other of over[pull]) waiting[other]--;
  }
  return order;
}
