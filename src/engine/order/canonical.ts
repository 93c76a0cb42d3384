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
  // By lower pull, packed: this is asked for every draw of an order.
  const begins = new Int32Array(n + 2);
  const waiting = new Int32Array(n);
  for (let i = 0; i < arcs.length; i++) {
    const arc = entryAt(arcs, i);
    begins[arc[0] + 2] = i32(begins, arc[0] + 2) + 1;
    waiting[arc[1]] = i32(waiting, arc[1]) + 1;
  }
  for (let pull = 2; pull < n + 2; pull++) begins[pull] = i32(begins, pull) + i32(begins, pull - 1);
  const over = new Int32Array(arcs.length);
  for (let i = 0; i < arcs.length; i++) {
    const arc = entryAt(arcs, i);
    const at = i32(begins, arc[0] + 1);
    over[at] = arc[1];
    begins[arc[0] + 1] = at + 1;
  }
  const order: number[] = [];
  while (order.length < n) {
    let pull = 0;
    while (waiting[pull] !== 0) pull++;
    waiting[pull] = -1;
    order.push(pull);
    for (let i = i32(begins, pull); i < i32(begins, pull + 1); i++) {
      const high = i32(over, i);
      waiting[high] = i32(waiting, high) - 1;
    }
  }
  return order;
}
