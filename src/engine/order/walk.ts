import type { Random } from '../base/random.ts';
import type { Graph } from './graph.ts';

/**
 * A random walk over order classes: each step picks an overlap and, unless that closes a circle,
 * turns it round with probability one half. Steps are symmetric and every class can be reached,
 * so the limit is uniform over the classes that keep the fixed arcs.
 * @param graph what must not change places freely
 * @param fixed [low, high] pairs that keep their order, whether they overlap or not
 * @param start an order of all pulls that keeps the fixed pairs
 * @param steps number of steps, 0 or more; each costs at most one search over the overlaps
 * @returns an order of the class reached
 * Reachability: classes are the regions of the hyperplanes x_a = x_b (Greene and Zaslavsky 1983);
 * fixed pairs cut out a convex part, and a straight way through it crosses one wall at a time.
 */
export function walkOrientation(
  graph: Graph,
  fixed: readonly (readonly [number, number])[],
  start: readonly number[],
  steps: number,
  random: Random,
): number[] {
  const n = graph.pulls;
  const place = new Int32Array(n);
  start.forEach((pull, index) => {
    place[pull] = index;
  });
  const over: number[][] = Array.from({ length: n }, () => []);
  const held = new Set(fixed.map(([low, high]) => low * n + high));
  for (const [low, high] of fixed) over[low].push(high);
  const turnable: [number, number][] = [];
  for (const [a, b] of graph.edges) {
    const [low, high] = place[a] < place[b] ? [a, b] : [b, a];
    if (held.has(low * n + high)) continue;
    over[low].push(high);
    turnable.push([low, high]);
  }
  const seen = new Int32Array(n);
  const stack = new Int32Array(n);
  for (let step = 1; step <= steps && turnable.length > 0; step++) {
    const edge = turnable[random.int(turnable.length)];
    if (random.int(2) === 0) continue;
    const [low, high] = edge;
    if (longWay(over, low, high, seen, stack, step)) continue;
    over[low].splice(over[low].indexOf(high), 1);
    over[high].push(low);
    edge[0] = high;
    edge[1] = low;
  }
  return topological(over);
}

/** Whether a way other than the direct one leads up from low to high. */
function longWay(
  over: readonly number[][],
  low: number,
  high: number,
  seen: Int32Array,
  stack: Int32Array,
  mark: number,
): boolean {
  let top = 0;
  for (const next of over[low]) {
    if (next === high || seen[next] === mark) continue;
    seen[next] = mark;
    stack[top++] = next;
  }
  while (top > 0) {
    for (const next of over[stack[--top]]) {
      if (next === high) return true;
      if (seen[next] === mark) continue;
      seen[next] = mark;
      stack[top++] = next;
    }
  }
  return false;
}

function topological(over: readonly number[][]): number[] {
  const waiting = new Int32Array(over.length);
  for (const list of over) for (const high of list) waiting[high]++;
  const order: number[] = [];
  while (order.length < over.length) {
    let pull = 0;
    while (waiting[pull] !== 0) pull++;
    waiting[pull] = -1;
    order.push(pull);
    for (const high of over[pull]) waiting[high]--;
  }
  return order;
}
