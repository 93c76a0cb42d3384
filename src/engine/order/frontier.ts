import { entryAt, i32, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import type { Graph } from './graph.ts';

/** Work after which counting gives up, steps; some seconds on a 2020s laptop core. */
export const MAX_COUNT_STEPS = 2_000_000;

/**
 * Number of acyclic orientations of a graph, as |P(−1)| of its chromatic polynomial P, summed
 * pull by pull along an order with a narrow frontier. A colour class matters only by the later
 * pulls it shuts out, so a state is the sorted list of these sets; with q = −1 colours, a pull
 * may join a class that does not shut it out, or take one of the q − classes others.
 * @param graph connected or not
 * @param budget steps left, counted down across calls
 * @throws EngineError 'order.too-many' when the budget is used up
 * Source: Stanley (1973), Acyclic orientations of graphs, Discrete Mathematics 5, 171–178.
 */
export function countByFrontier(graph: Graph, budget: { steps: number }): bigint {
  const n = graph.pulls;
  const bit = Array.from({ length: n }, (_, pull) => 1n << BigInt(pull));
  let later = (1n << BigInt(n)) - 1n;
  let states = new Map<string, bigint>([['', 1n]]);
  let shutOut: bigint[] = [];
  for (const pull of narrowOrder(graph)) {
    later ^= entryAt(bit, pull);
    let own = 0n;
    for (const other of entryAt(graph.neighbours, pull)) own |= entryAt(bit, other);
    own &= later;

    const nextShutOut: bigint[] = [];
    const ids = new Map<bigint, number>();
    // −1: shuts nobody out, so it is like any colour not yet used.
    const intern = (set: bigint): number => {
      if (set === 0n) return -1;
      let id = ids.get(set);
      if (id === undefined) {
        id = nextShutOut.length;
        if (id > 0xffff) throw tooMany(graph);
        ids.set(set, id);
        nextShutOut.push(set);
      }
      return id;
    };
    const ownId = intern(own);
    const kept = shutOut.map((set) => intern(set & later));
    const joined = shutOut.map((set) => ((set & entryAt(bit, pull)) === 0n ? intern((set | own) & later) : -2));

    const next = new Map<string, bigint>();
    const add = (classes: number[], skip: number, extra: number, value: bigint): void => {
      const list: number[] = [];
      for (let i = 0; i < classes.length; i++) {
        if (i !== skip && num(kept, num(classes, i)) >= 0) list.push(num(kept, num(classes, i)));
      }
      if (extra >= 0) list.push(extra);
      const key = String.fromCharCode(...list.sort((a, b) => a - b));
      next.set(key, (next.get(key) ?? 0n) + value);
      if (--budget.steps < 0) throw tooMany(graph);
    };
    for (const [key, value] of states) {
      if (value === 0n) continue;
      const classes = Array.from(key, (_, i) => key.charCodeAt(i));
      add(classes, -1, ownId, value * BigInt(-1 - classes.length));
      for (let i = 0; i < classes.length;) {
        let end = i + 1;
        while (end < classes.length && classes[end] === classes[i]) end++;
        const id = num(joined, num(classes, i));
        if (id !== -2) add(classes, i, id, value * BigInt(end - i));
        i = end;
      }
    }
    states = next;
    shutOut = nextShutOut;
  }
  const value = states.get('') ?? 0n;
  return value < 0n ? -value : value;
}

function tooMany(graph: Graph): EngineError {
  return new EngineError(
    'order.too-many',
    `${graph.pulls} pulls that overlap in ${graph.edges.length} places are too entangled to count ` +
      'their orders exactly in some seconds; leave pulls out, ' +
      'or raise the ΔE under which a swap is free.',
    { details: { pulls: graph.pulls, overlaps: graph.edges.length } },
  );
}

/**
 * An order in which few pulls at a time have both earlier and later neighbours: greedy from
 * every start, the best by an upper bound on the states.
 * @returns each pull once
 */
function narrowOrder(graph: Graph): number[] {
  let best: number[] = [];
  let least = Infinity;
  const starts = Math.min(graph.pulls, 80);
  for (let s = 0; s < starts; s++) {
    const start = Math.floor((s * graph.pulls) / starts);
    const order = greedyFrom(graph, start);
    const cost = stateBound(graph, order, least);
    if (cost < least) {
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
