import { entryAt, i32, num } from '../../base/at.ts';
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
  for (let s = 0; s < starts; s++) {
    const start = Math.floor((s * graph.pulls) / starts);
    const order = greedyFrom(graph, start);
    const cost = stateBound(graph, order, least);
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
  const order: number[] = [];
  let pick = start;
  while (order.length < n) {
    done[pick] = 1;
    order.push(pick);
    for (const other of entryAt(graph.neighbours, pick)) waiting[other] = i32(waiting, other) - 1;
    let leastGrowth = Infinity;
    let mostDone = -1;
    pick = -1;
    for (let v = 0; v < n; v++) {
      if (done[v]) continue;
      // The frontier gains v if v has later neighbours, and loses those waiting only for v.
      let growth = i32(waiting, v) > 0 ? 1 : 0;
      let earlier = 0;
      for (const other of entryAt(graph.neighbours, v)) {
        if (!done[other]) continue;
        earlier++;
        if (waiting[other] === 1) growth--;
      }
      if (growth < leastGrowth || (growth === leastGrowth && earlier > mostDone)) {
        leastGrowth = growth;
        mostDone = earlier;
        pick = v;
      }
    }
  }
  return order;
}

/** Sum over the steps of an upper bound on the ways to part the frontier into colour classes. */
function stateBound(graph: Graph, order: readonly number[], giveUpAt: number): number {
  const waiting = Int32Array.from(graph.neighbours, (list) => list.length);
  const adjacent = graph.neighbours.map((list) => new Set(list));
  let frontier: number[] = [];
  let sum = 0;
  for (const pull of order) {
    for (const other of entryAt(graph.neighbours, pull)) waiting[other] = i32(waiting, other) - 1;
    frontier.push(pull);
    frontier = frontier.filter((v) => i32(waiting, v) > 0);
    let ways = 1;
    for (let i = 1; i < frontier.length; i++) {
      let free = 1;
      for (let j = 0; j < i; j++) if (!entryAt(adjacent, num(frontier, i)).has(num(frontier, j))) free++;
      ways *= free;
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
