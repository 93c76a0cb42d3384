import type { Random } from '../base/random.ts';
import type { Graph } from './graph.ts';

/** Largest block drawn by exact counting: 14! and all sums on the way stay whole in a double. */
export const MAX_EXACT_PULLS = 14;

/**
 * One order of a uniformly drawn class of a small graph, exactly uniform.
 * Counts the orientations a(V) of all subsets, then writes the lexicographically least order pull
 * by pull: the next pull is a source, and no smaller pull left out before it may be one until a
 * neighbour of its has gone down.
 * @param graph at most MAX_EXACT_PULLS pulls
 * Source of a(V) = Σ (−1)^(|I|+1) a(V∖I) over independent I ≠ ∅: inclusion and exclusion over the
 * sources (Robinson 1973; Stanley 1973).
 */
export function drawExact(graph: Graph, random: Random): number[] {
  const n = graph.pulls;
  const near = Int32Array.from(graph.neighbours, (list) => {
    let mask = 0;
    for (const other of list) mask |= 1 << other;
    return mask;
  });
  const counts = subsetCounts(n, near);
  const order: number[] = [];
  let left = (1 << n) - 1;
  let blocked = 0;
  while (left !== 0) {
    const ways = new Float64Array(n);
    let total = 0;
    for (let v = 0; v < n; v++) {
      if (((left & ~blocked) >> v) & 1) {
        ways[v] = withoutSources(counts, near, left & ~(1 << v), nextBlocked(v, left, blocked, near));
        total += ways[v];
      }
    }
    let at = intBelow(random, total);
    let pick = 0;
    while (at >= ways[pick]) at -= ways[pick++];
    blocked = nextBlocked(pick, left, blocked, near);
    left &= ~(1 << pick);
    order.push(pick);
  }
  return order;
}

/** Smaller pulls passed over stay blocked until a neighbour goes down. */
function nextBlocked(pick: number, left: number, blocked: number, near: Int32Array): number {
  return (blocked | ((1 << pick) - 1)) & left & ~near[pick];
}

/** a(V) for every subset V of the pulls. */
function subsetCounts(n: number, near: Int32Array): Float64Array {
  const counts = new Float64Array(1 << n);
  counts[0] = 1;
  const sum = (all: number, chosen: number, pool: number, sign: number): number => {
    // Every independent set is met once: its members are taken in ascending order.
    let total = 0;
    for (let rest = pool; rest !== 0; rest &= rest - 1) {
      const v = 31 - Math.clz32(rest & -rest);
      const next = chosen | (1 << v);
      total += sign * counts[all & ~next];
      const above = rest & (rest - 1) & ~near[v];
      if (above !== 0) total += sum(all, next, above, -sign);
    }
    return total;
  };
  for (let all = 1; all < counts.length; all++) counts[all] = sum(all, 0, all, 1);
  return counts;
}

/** Orientations of `all` in which none of `blocked` is a source. */
function withoutSources(
  counts: Float64Array,
  near: Int32Array,
  all: number,
  blocked: number,
): number {
  const sum = (chosen: number, pool: number, sign: number): number => {
    let total = sign * counts[all & ~chosen];
    for (let rest = pool; rest !== 0; rest &= rest - 1) {
      const v = 31 - Math.clz32(rest & -rest);
      total += sum(chosen | (1 << v), rest & (rest - 1) & ~near[v], -sign);
    }
    return total;
  };
  return sum(0, blocked, 1);
}

/** A whole number from 0 up to, not including, `below`, at most 2^52, each equally likely. */
function intBelow(random: Random, below: number): number {
  const limit = 2 ** 52 - (2 ** 52 % below);
  for (;;) {
    const draw = random.int(2 ** 26) * 2 ** 26 + random.int(2 ** 26);
    if (draw < limit) return draw % below;
  }
}
