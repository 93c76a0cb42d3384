import { entryAt, i32 } from '../base/at.ts';

/**
 * The lexicographically least order of an order's class: two orders have the same one exactly
 * when free swaps lead from one to the other.
 * @param order every pull 0 … n − 1 once, first down first
 * @param neighbours for each pull, the pulls it may not change places with
 * Source: Anisimov and Knuth (1979), lexicographic normal form of partially commuting words.
 */
export function canonicalOrder(order: readonly number[], neighbours: readonly (readonly number[])[]): number[] {
  const n = order.length;
  const place = new Int32Array(n);
  order.forEach((pull, index) => {
    place[pull] = index;
  });
  const waiting = new Int32Array(n);
  for (let pull = 0; pull < n; pull++) {
    for (const other of entryAt(neighbours, pull)) if (i32(place, other) < i32(place, pull)) waiting[pull] = i32(waiting, pull) + 1;
  }
  const least: number[] = [];
  while (least.length < n) {
    let pull = 0;
    while (waiting[pull] !== 0) pull++;
    waiting[pull] = -1;
    least.push(pull);
    for (const other of entryAt(neighbours, pull)) if (i32(place, other) > i32(place, pull)) waiting[other] = i32(waiting, other) - 1;
  }
  return least;
}

/**
 * The lexicographically least order that keeps all arcs.
 * @param arcs [lower, upper], in no circle
 * @param n number of pulls
 */
export function leastOrder(arcs: readonly (readonly [number, number])[], n: number): number[] {
  const over: number[][] = Array.from({ length: n }, () => []);
  const waiting = new Int32Array(n);
  for (const [low, high] of arcs) {
    entryAt(over, low).push(high);
    waiting[high] = i32(waiting, high) + 1;
  }
  const order: number[] = [];
  while (order.length < n) {
    let pull = 0;
    while (waiting[pull] !== 0) pull++;
    waiting[pull] = -1;
    order.push(pull);
    for (const high of entryAt(over, pull)) waiting[high] = i32(waiting, high) - 1;
  }
  return order;
}
