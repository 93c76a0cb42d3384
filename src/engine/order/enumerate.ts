import { entryAt, num } from '../base/at.ts';
import { type Graph, graphOf } from './graph.ts';

/**
 * One order, bottom to top, of each order class, each class once, the lexicographically least of
 * its class; the first is 0, 1, 2, … Lazy: the next one costs about pulls² small steps.
 * @param pulls number of pulls, 0 to 2,000
 * @param overlaps pairs of pulls whose order matters, either way round
 * @throws EngineError 'order.pulls' | 'order.overlaps' | 'order.range' | 'order.loop'
 * Source: Barbosa and Szwarcfiter (1999): pulls are put in one by one, and one fits exactly
 * above every down-closed part of its earlier neighbours, so that no branch ends empty.
 */
export function* orderClasses(pulls: number, overlaps: readonly (readonly [number, number])[]): Generator<number[]> {
  yield* classesOf(graphOf(pulls, overlaps));
}

/** As orderClasses, for a graph already checked. */
export function* classesOf(graph: Graph): Generator<number[]> {
  yield* extend(graph, 0, []);
}

/** `below[i]`: bits of all pulls that lie under pull i, in the orientation of pulls 0 … k − 1. */
function* extend(graph: Graph, k: number, below: readonly bigint[]): Generator<number[]> {
  if (k === graph.pulls) {
    yield leastOrder(below);
    return;
  }
  const earlier = entryAt(graph.neighbours, k).filter((other) => other < k);
  const depth = (pull: number): number => earlier.filter((o) => has(entryAt(below, pull), o)).length;
  earlier.sort((a, b) => depth(a) - depth(b) || a - b);
  let all = 0n;
  for (const other of earlier) all |= 1n << BigInt(other);
  for (const under of downSets({ earlier, all, below }, 0, 0n)) {
    yield* extend(graph, k + 1, insert(k, under, all & ~under, below));
  }
}

/** Pulls sorted bottom to top, the same as bits, and what lies below each pull. */
interface Sorted {
  earlier: readonly number[];
  all: bigint;
  below: readonly bigint[];
}

/** Every part of `earlier` that holds all of `earlier` below its members: `taken` and choices from place `from` on. */
function* downSets(sorted: Sorted, from: number, taken: bigint): Generator<bigint> {
  const { earlier, all, below } = sorted;
  if (from === earlier.length) {
    yield taken;
    return;
  }
  const pull = num(earlier, from);
  if ((entryAt(below, pull) & all & ~taken) === 0n) {
    yield* downSets(sorted, from + 1, taken | (1n << BigInt(pull)));
  }
  yield* downSets(sorted, from + 1, taken);
}

/** Puts pull k over the pulls `under` and below the pulls `over`. */
function insert(k: number, under: bigint, over: bigint, below: readonly bigint[]): bigint[] {
  let own = under;
  for (let i = 0; i < k; i++) if (has(under, i)) own |= entryAt(below, i);
  const gained = own | (1n << BigInt(k));
  const next = below.map((set, i) => (has(over, i) || (set & over) !== 0n ? set | gained : set));
  next.push(own);
  return next;
}

function leastOrder(below: readonly bigint[]): number[] {
  const order: number[] = [];
  let placed = 0n;
  while (order.length < below.length) {
    let pull = 0;
    while (has(placed, pull) || (entryAt(below, pull) & ~placed) !== 0n) pull++;
    placed |= 1n << BigInt(pull);
    order.push(pull);
  }
  return order;
}

function has(set: bigint, member: number): boolean {
  return ((set >> BigInt(member)) & 1n) === 1n;
}
