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
    above[low].push(high);
    waiting[high]++;
  }
  const release = Int32Array.from({ length: n }, (_, i) => Math.max(keep.slots[i], 0));
  const due = Int32Array.from({ length: n }, (_, i) => (keep.slots[i] < 0 ? n - 1 : keep.slots[i]));
  const sorted = topological(above, waiting);
  if (sorted === null) return null;
  for (const low of sorted) {
    for (const high of above[low]) release[high] = Math.max(release[high], release[low] + 1);
  }
  for (const low of sorted.reverse()) {
    for (const high of above[low]) due[low] = Math.min(due[low], due[high] - 1);
    if (release[low] > due[low]) return null;
  }
  // Deadlines decide only where some pull has a place in the middle; else they just crowd out ranks.
  const tight = keep.slots.some((slot) => slot > 0 && slot < n - 1);
  const urgency = (i: number, place: number): number => (tight || due[i] === place ? due[i] : n);
  const order: number[] = [];
  const left = Int32Array.from(waiting);
  for (let place = 0; place < n; place++) {
    let pick = -1;
    for (let i = 0; i < n; i++) {
      if (left[i] !== 0 || release[i] > place) continue;
      const sooner = pick < 0 ? -1 : urgency(i, place) - urgency(pick, place);
      if (sooner < 0 || (sooner === 0 && ranks[i] < ranks[pick])) pick = i;
    }
    if (pick < 0 || due[pick] < place) return null;
    left[pick] = -1;
    order.push(pick);
    for (const high of above[pick]) left[high]--;
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
    for (const high of above[order[head]]) if (--left[high] === 0) order.push(high);
  }
  return order.length === above.length ? order : null;
}
