import { entryAt, i32, num } from '../base/at.ts';
import { type Random, randomFrom } from '../base/random.ts';
import { atomsOf } from './atoms.ts';
import { leastOrder } from './canonical.ts';
import { drawExact, MAX_EXACT_PULLS } from './exact-draw.ts';
import { type Graph, graphOf, stripSimplicial, subgraph } from './graph.ts';
import { walkOrientation } from './walk.ts';

/** How much work a draw may take. */
export interface DrawEffort {
  /** Largest part drawn by exact counting, pulls; up to 14. */
  exactPulls: number;
  /** Steps of the random walk in larger parts, given their number of overlaps. */
  walkSteps: (overlaps: number) => number;
}

const THOROUGH: DrawEffort = {
  exactPulls: MAX_EXACT_PULLS,
  walkSteps: (m) => Math.ceil(30 * m * Math.log2(m)),
};

/**
 * One order, bottom to top, of a class drawn uniformly among all order classes.
 * The graph is cut along its cliques. It is exactly uniform when no part that no clique cuts has
 * more than 14 pulls (so for all chordal graphs). A larger part is drawn by a random walk that
 * turns one overlap at a time, from the class of a random order: 30·m·log2(m) steps for m overlaps,
 * whose limit is uniform; how near it comes is not proven.
 * @param pulls number of pulls, 0 to 2,000
 * @param overlaps pairs of pulls whose order matters, either way round
 * @param seed any text; the same seed gives the same order
 * @returns the lexicographically least order of the class
 * @throws EngineError 'order.pulls' | 'order.overlaps' | 'order.range' | 'order.loop'
 */
export function sampleOrder(pulls: number, overlaps: readonly (readonly [number, number])[], seed: string): number[] {
  return drawOrder(graphOf(pulls, overlaps), randomFrom(String(seed)));
}

/** As sampleOrder, for a graph already checked, a stream of random numbers and a chosen effort. */
export function drawOrder(graph: Graph, random: Random, effort: DrawEffort = THOROUGH): number[] {
  const under: Set<number>[] = Array.from({ length: graph.pulls }, () => new Set());
  const { steps, core } = stripSimplicial(graph);
  const rest = subgraph(graph, core);
  // An atom meets only those after it, in a clique: last first, each keeps the order found there.
  for (const atom of atomsOf(rest).reverse()) {
    const part = subgraph(rest, atom.pulls);
    const pulls = atom.pulls.map((each) => num(core, each));
    const chain = climb(
      atom.clique.map((each) => num(core, each)),
      under,
    ).map((each) => pulls.indexOf(each));
    const place = placesOf(drawPart(part, chain, random, effort));
    for (const [a, b] of part.edges) {
      const [low, high] = i32(place, a) < i32(place, b) ? [a, b] : [b, a];
      entryAt(under, num(pulls, high)).add(num(pulls, low));
    }
  }
  for (const { pull, clique } of steps.reverse()) {
    const chain = climb(clique, under);
    const gap = random.int(chain.length + 1);
    chain.forEach((other, i) => {
      if (i < gap) entryAt(under, pull).add(other);
      else entryAt(under, other).add(pull);
    });
  }
  return leastOrder(
    under.flatMap((lower, high) => Array.from(lower, (low): [number, number] => [low, high])),
    graph.pulls,
  );
}

/** A clique has one order only. */
function climb(clique: readonly number[], under: readonly ReadonlySet<number>[]): number[] {
  return [...clique].sort((a, b) => (entryAt(under, b).has(a) ? -1 : 1));
}

function drawPart(part: Graph, chain: readonly number[], random: Random, effort: DrawEffort): number[] {
  if (part.pulls <= Math.min(effort.exactPulls, MAX_EXACT_PULLS)) return drawExact(part, random, chain);
  const fixed: [number, number][] = [];
  chain.forEach((high, i) => chain.slice(0, i).forEach((low) => fixed.push([low, high])));
  const start = random.shuffle(Array.from({ length: part.pulls }, (_, i) => i));
  // The chain takes the places that its members drew.
  const inChain = new Set(chain);
  let next = 0;
  const kept = start.map((pull) => (inChain.has(pull) ? num(chain, next++) : pull));
  return walkOrientation(part, { fixed, start: kept, steps: effort.walkSteps(part.edges.length) }, random);
}

function placesOf(order: readonly number[]): Int32Array {
  const place = new Int32Array(order.length);
  order.forEach((pull, index) => {
    place[pull] = index;
  });
  return place;
}
