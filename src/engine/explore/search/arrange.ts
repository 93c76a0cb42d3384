import { entryAt, i32, num } from '../../base/at.ts';

/** What an order must keep: arcs [low, high] by index, and fixed places (−1 = any). */
export interface Constraints {
  arcs: readonly (readonly [number, number])[];
  slots: readonly number[];
}

/**
 * An order of n pulls that keeps all arcs and places, found whenever there is one. Without places
 * in the middle it is the one nearest the ranks, pull by pull; else nearest deadlines go first.
 * @param ranks lower goes first where nothing else decides, one a pull
 * @returns pulls bottom to top, or null when no order keeps all
 * Source: unit jobs with release times, deadlines and precedence on one machine are solved by
 * earliest deadline once these agree with the precedence (Lawler 1973; Simons 1978).
 */
export function arrange(n: number, keep: Constraints, ranks: readonly number[]): number[] | null {
  const above: number[][] = Array.from({ length: n }, () => []);
  const waiting = new Int32Array(n);
  for (const [low, high] of keep.arcs) {
    entryAt(above, low).push(high);
    waiting[high] = i32(waiting, high) + 1;
  }
  const release = Int32Array.from({ length: n }, (_, i) => Math.max(num(keep.slots, i), 0));
  const due = Int32Array.from({ length: n }, (_, i) => (num(keep.slots, i) < 0 ? n - 1 : num(keep.slots, i)));
  const sorted = topological(above, waiting);
  if (sorted === null) return null;
  for (const low of sorted) {
    for (const high of entryAt(above, low)) release[high] = Math.max(i32(release, high), i32(release, low) + 1);
  }
  for (const low of sorted.reverse()) {
    for (const high of entryAt(above, low)) due[low] = Math.min(i32(due, low), i32(due, high) - 1);
    if (i32(release, low) > i32(due, low)) return null;
  }
  // Deadlines decide only where some pull has a place in the middle; else they just crowd out ranks.
  const tight = keep.slots.some((slot) => slot > 0 && slot < n - 1);
  const urgency = (i: number, place: number): number => (tight || due[i] === place ? i32(due, i) : n);
  const order: number[] = [];
  const left = Int32Array.from(waiting);
  for (let place = 0; place < n; place++) {
    let pick = -1;
    for (let i = 0; i < n; i++) {
      if (left[i] !== 0 || i32(release, i) > place) continue;
      const sooner = pick < 0 ? -1 : urgency(i, place) - urgency(pick, place);
      if (sooner < 0 || (sooner === 0 && num(ranks, i) < num(ranks, pick))) pick = i;
    }
    if (pick < 0 || i32(due, pick) < place) return null;
    left[pick] = -1;
    order.push(pick);
    for (const high of entryAt(above, pick)) left[high] = i32(left, high) - 1;
  }
  return order;
}

function topological(above: readonly number[][], waiting: Int32Array): number[] | null {
  const left = Int32Array.from(waiting);
  const order: number[] = [];
  left.forEach((count, i) => {
    if (count === 0) order.push(i);
  });
  for (let head = 0; head < order.length; head++) {
    for (const high of entryAt(above, num(order, head))) {
      left[high] = num(left, high) - 1;
      if (left[high] === 0) order.push(high);
    }
  }
  return order.length === above.length ? order : null;
}
