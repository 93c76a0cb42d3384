import { defined, f64, i32, num } from '../base/at.ts';
import type { Random } from '../base/random.ts';
import type { Graph } from './graph.ts';

/** Largest block drawn by exact counting: 14! and all sums on the way stay whole in a double. */
export const MAX_EXACT_PULLS = 14;

/** Subset counts kept, least recently made first: the same small graphs come again and again. */
const KEPT_COUNTS = 24;
const kept = new Map<string, Float64Array>();

/**
 * One order of a uniformly drawn class of a small graph, exactly uniform.
 * Counts the orientations a(V) of all subsets, then writes the lexicographically least order pull
 * by pull: the next pull is a source, and no smaller pull left out before it may be one until a
 * neighbour of its has gone down.
 * @param graph at most MAX_EXACT_PULLS pulls
 * @param chain pulls that all overlap each other and must come in this order. Every order of a
 * clique is in equally many classes (Cauchy and Schwarz on two copies glued along it), so given the
 * chain, subset V has a(V) / |V ∩ chain|!
 * Source of a(V) = Σ (−1)^(|I|+1) a(V∖I) over independent I ≠ ∅: inclusion and exclusion over the
 * sources (Robinson 1973; Stanley 1973).
 */
export function drawExact(graph: Graph, random: Random, chain: readonly number[] = []): number[] {
  const n = graph.pulls;
  const near = Int32Array.from(graph.neighbours, (list) => {
    let mask = 0;
    for (const other of list) mask |= 1 << other;
    return mask;
  });
  const counts = keptCounts(n, near);
  const order: number[] = [];
  let left = (1 << n) - 1;
  let blocked = 0;
  while (left !== 0) {
    // Of the chain only the lowest left can be a source.
    let shut = 0;
    for (const pull of chain.filter((each) => (left >> each) & 1).slice(1)) shut |= 1 << pull;
    const ways = new Float64Array(n);
    let total = 0;
    for (let v = 0; v < n; v++) {
      if (((left & ~blocked & ~shut) >> v) & 1) {
        const rest = left & ~(1 << v);
        ways[v] = withoutSources({ counts, near, chain }, rest, nextBlocked(v, left, blocked, near));
        total += f64(ways, v);
      }
    }
    let at = intBelow(random, total);
    let pick = 0;
    while (at >= f64(ways, pick)) at -= f64(ways, pick++);
    blocked = nextBlocked(pick, left, blocked, near);
    left &= ~(1 << pick);
    order.push(pick);
  }
  return order;
}

function keptCounts(n: number, near: Int32Array): Float64Array {
  const key = near.join();
  let counts = kept.get(key);
  if (counts === undefined) {
    counts = subsetCounts(n, near);
    if (kept.size === KEPT_COUNTS) kept.delete(defined(kept.keys().next().value));
    kept.set(key, counts);
  }
  return counts;
}

/** Smaller pulls passed over stay blocked until a neighbour goes down. */
function nextBlocked(pick: number, left: number, blocked: number, near: Int32Array): number {
  return (blocked | ((1 << pick) - 1)) & left & ~i32(near, pick);
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
      total += sign * f64(counts, all & ~next);
      const above = rest & (rest - 1) & ~i32(near, v);
      if (above !== 0) total += sum(all, next, above, -sign);
    }
    return total;
  };
  for (let all = 1; all < counts.length; all++) counts[all] = sum(all, 0, all, 1);
  return counts;
}

/** A small graph to count orientations of. */
interface Counted {
  /** Orientations of each subset of the pulls. */
  counts: Float64Array;
  /** Neighbours of each pull, as bits. */
  near: Int32Array;
  /** Pulls whose order is given. */
  chain: readonly number[];
}

/** Orientations of `all` that keep the chain and in which none of `blocked` is a source. */
function withoutSources({ counts, near, chain }: Counted, all: number, blocked: number): number {
  const inChain = chain.filter((pull) => (all >> pull) & 1);
  let later = 0;
  for (const pull of inChain.slice(1)) later |= 1 << pull;
  let orders = 1;
  for (let k = 2; k <= inChain.length; k++) orders *= k;
  const sum = (chosen: number, pool: number, sign: number): number => {
    // Taking the lowest of the chain away leaves a shorter chain.
    const lowest = inChain.length > 0 && (chosen >> num(inChain, 0)) & 1;
    let total = (sign * f64(counts, all & ~chosen)) / (lowest ? orders / inChain.length : orders);
    for (let rest = pool; rest !== 0; rest &= rest - 1) {
      const v = 31 - Math.clz32(rest & -rest);
      total += sum(chosen | (1 << v), rest & (rest - 1) & ~i32(near, v), -sign);
    }
    return total;
  };
  return sum(0, blocked & ~later, 1);
}

/** A whole number from 0 up to, not including, `below`, at most 2^52, each equally likely. */
function intBelow(random: Random, below: number): number {
  const limit = 2 ** 52 - (2 ** 52 % below);
  for (;;) {
    const draw = random.int(2 ** 26) * 2 ** 26 + random.int(2 ** 26);
    if (draw < limit) return draw % below;
  }
}
