import { defined, entryAt, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/order/order.ts';

/** More pulls than this on one sheet is taken for a mistake. */
const MAX_GRAPH_PULLS = 2000;

/** Pulls as points 0 … pulls − 1, and a line where two of them may not change places freely. */
export interface Graph {
  pulls: number;
  /** Each [a, b] with a < b, sorted, each pair once. */
  edges: [number, number][];
  /** Sorted neighbours of each pull. */
  neighbours: number[][];
}

/**
 * Checks a list of overlaps and makes it a graph; [a, b] and [b, a] name the same overlap, and one
 * named twice counts once.
 * @param pulls number of pulls, whole, 0 to 2,000
 * @param overlaps pairs of pulls, each 0 … pulls − 1
 * @throws EngineError 'order.pulls' | 'order.overlaps' | 'order.range' | 'order.loop'
 */
export function graphOf(pulls: number, overlaps: readonly (readonly [number, number])[]): Graph {
  if (!Number.isInteger(pulls) || pulls < 0 || pulls > MAX_GRAPH_PULLS) {
    throw new EngineError('order.pulls', say.numberOfPullsIs(pulls, MAX_GRAPH_PULLS));
  }
  if (!Array.isArray(overlaps)) {
    throw new EngineError('order.overlaps', say.overlapsMustBeList);
  }
  const neighbours: number[][] = Array.from({ length: pulls }, () => []);
  const seen = new Uint8Array(pulls * pulls);
  const edges: [number, number][] = [];
  const known = (end: number): boolean => Number.isInteger(end) && end >= 0 && end < pulls;
  // Every draw of an order makes two graphs, so nothing is made for a pair but what is kept.
  for (let index = 0; index < overlaps.length; index++) {
    const pair = overlaps[index];
    if (!Array.isArray(pair) || pair.length !== 2 || !known(pair[0]) || !known(pair[1])) {
      throw wrongOverlap('order.range', index, pair, say.giveTwoPullsBy(pulls - 1));
    }
    const a = Math.min(pair[0], pair[1]);
    const b = Math.max(pair[0], pair[1]);
    if (a === b) throw wrongOverlap('order.loop', index, pair, say.pullCannotOverlapItself);
    if (seen[a * pulls + b] === 1) continue;
    seen[a * pulls + b] = 1;
    edges.push([a, b]);
    entryAt(neighbours, a).push(b);
    entryAt(neighbours, b).push(a);
  }
  edges.sort((e, f) => e[0] - f[0] || e[1] - f[1]);
  for (const list of neighbours) list.sort((a, b) => a - b);
  return { pulls, edges, neighbours };
}

function wrongOverlap(code: string, index: number, pair: unknown, what: string): EngineError {
  return new EngineError(code, say.overlapIs(index, String(pair), what), { path: ['overlaps', index] });
}

/**
 * The part of a graph between some of its pulls, renumbered 0 … in the order given.
 * @param graph the whole
 * @param kept pulls of the graph, each once
 */
export function subgraph(graph: Graph, kept: readonly number[]): Graph {
  const local = new Int32Array(graph.pulls).fill(-1);
  kept.forEach((pull, index) => {
    local[pull] = index;
  });
  const edges: [number, number][] = [];
  const neighbours: number[][] = [];
  for (let a = 0; a < kept.length; a++) {
    const near = entryAt(graph.neighbours, num(kept, a));
    const list: number[] = [];
    for (let i = 0; i < near.length; i++) {
      const other = num(local, num(near, i));
      if (other >= 0) list.push(other);
    }
    list.sort((p, q) => p - q);
    for (let i = 0; i < list.length; i++) if (a < num(list, i)) edges.push([a, num(list, i)]);
    neighbours.push(list);
  }
  return { pulls: kept.length, edges, neighbours };
}

/** A pull whose neighbours (of those then left) all overlap each other, and these neighbours. */
export interface SimplicialStep {
  pull: number;
  clique: number[];
}

/**
 * Takes away, one after the other, every pull whose remaining neighbours all overlap each other.
 * Such a pull fits in deg + 1 places among them, whatever the rest does: exact for counting and
 * for sampling, and for a chordal graph nothing is left.
 * @returns the steps in the order taken, and what is left (sorted)
 * Source: Dirac (1961); Rose (1970), perfect elimination.
 */
export function stripSimplicial(graph: Graph): { steps: SimplicialStep[]; core: number[] } {
  const left = graph.neighbours.map((list) => new Set(list));
  const gone = new Uint8Array(graph.pulls);
  const steps: SimplicialStep[] = [];
  const queue = Array.from({ length: graph.pulls }, (_, pull) => pull);
  const queued = new Uint8Array(graph.pulls).fill(1);
  const sure = new Uint8Array(graph.pulls);
  for (let head = 0; head < queue.length; head++) {
    const pull = num(queue, head);
    queued[pull] = 0;
    if (gone[pull]) continue;
    const clique = [...entryAt(left, pull)];
    const complete = sure[pull] === 1 || clique.every((a, i) => clique.every((b, j) => j <= i || defined(left[a]).has(b)));
    if (!complete) continue;
    gone[pull] = 1;
    steps.push({ pull, clique: clique.sort((a, b) => a - b) });
    for (const other of clique) {
      defined(left[other]).delete(pull);
      // It has no neighbours outside the clique, so they overlap each other now and later.
      if (defined(left[other]).size === clique.length - 1) sure[other] = 1;
      // Only neighbours of what was taken can newly become simplicial.
      if (!queued[other]) {
        queued[other] = 1;
        queue.push(other);
      }
    }
  }
  const core = Array.from(left.keys()).filter((pull) => !gone[pull]);
  return { steps, core };
}
