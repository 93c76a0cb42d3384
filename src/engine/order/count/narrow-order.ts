import { defined, entryAt, i32, num, u32 } from '../../base/at.ts';
import { bitCount } from '../../base/bits.ts';
import type { Graph } from '../graph.ts';

/**
 * An order in which few pulls at a time have both earlier and later neighbours: greedy from
 * every start, the best by an upper bound on the states.
 * @returns each pull once
 */
export function greedyOrder(graph: Graph): number[] {
  let best: number[] = [];
  let least = Infinity;
  const starts = Math.min(graph.pulls, 80);
  const beside = neighbourBits(graph);
  for (let s = 0; s < starts; s++) {
    const start = Math.floor((s * graph.pulls) / starts);
    const order = greedyFrom(graph, start);
    const cost = stateBound(graph, beside, order, least);
    // Of a large tangle no cost may be a number.
    if (cost < least || best.length === 0) {
      least = cost;
      best = order;
    }
  }
  return best;
}

function greedyFrom(graph: Graph, start: number): number[] {
  const n = graph.pulls;
  const waiting = Int32Array.from(graph.neighbours, (list) => list.length);
  const done = new Uint8Array(n);
  /** Of each pull how many neighbours are done, and how many of these wait for it alone. */
  const earlier = new Int32Array(n);
  const alone = new Int32Array(n);
  const order: number[] = [];
  const waitsForOne = (pull: number): void => {
    if (done[pull] !== 1 || waiting[pull] !== 1) return;
    const last = defined(entryAt(graph.neighbours, pull).find((other) => done[other] === 0));
    alone[last] = i32(alone, last) + 1;
  };
  let pick = start;
  while (order.length < n) {
    done[pick] = 1;
    order.push(pick);
    for (const other of entryAt(graph.neighbours, pick)) {
      waiting[other] = i32(waiting, other) - 1;
      earlier[other] = i32(earlier, other) + 1;
      waitsForOne(other);
    }
    waitsForOne(pick);
    let leastGrowth = Infinity;
    pick = -1;
    for (let v = 0; v < n; v++) {
      if (done[v]) continue;
      // The frontier gains v if v has later neighbours, and loses those waiting only for v.
      const growth = (i32(waiting, v) > 0 ? 1 : 0) - i32(alone, v);
      if (growth < leastGrowth || (growth === leastGrowth && i32(earlier, v) > i32(earlier, pick))) {
        leastGrowth = growth;
        pick = v;
      }
    }
  }
  return order;
}

/** Row v, of as many words as 32 pulls each take, holds the neighbours of v as bits. */
function neighbourBits({ pulls, neighbours }: Graph): Uint32Array {
  const words = (pulls + 31) >> 5;
  const bits = new Uint32Array(pulls * words);
  neighbours.forEach((list, v) => {
    for (const other of list) bits[v * words + (other >> 5)] = u32(bits, v * words + (other >> 5)) | (1 << (other & 31));
  });
  return bits;
}

/** Sum over the steps of an upper bound on the ways to part the frontier into colour classes. */
function stateBound(graph: Graph, beside: Uint32Array, order: readonly number[], giveUpAt: number): number {
  const words = (graph.pulls + 31) >> 5;
  const waiting = Int32Array.from(graph.neighbours, (list) => list.length);
  const before = new Uint32Array(words);
  let frontier: number[] = [];
  let sum = 0;
  for (const pull of order) {
    for (const other of entryAt(graph.neighbours, pull)) waiting[other] = i32(waiting, other) - 1;
    frontier.push(pull);
    frontier = frontier.filter((v) => i32(waiting, v) > 0);
    before.fill(0);
    let ways = 1;
    for (let i = 0; i < frontier.length; i++) {
      const v = num(frontier, i);
      let free = 1 + i;
      for (let word = 0; word < words; word++) free -= bitCount(u32(before, word) & u32(beside, v * words + word));
      ways *= free;
      before[v >> 5] = u32(before, v >> 5) | (1 << (v & 31));
    }
    sum += ways;
    if (sum >= giveUpAt) return sum;
  }
  return sum;
}

/** As greedyOrder, taken out from its end: the same pulls wait, counted from the other side. */
export function narrowOrder(graph: Graph): number[] {
  return greedyOrder(graph).reverse();
}
