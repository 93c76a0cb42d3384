import { defined, entryAt, num } from '../../base/at.ts';
import { randomFrom } from '../../base/random.ts';

/** An order in which tasks are taken up, and on which of several equal places each is done. */
export interface Dispatch {
  order: number[];
  /** By task, from 0. */
  places: number[];
}

/** What is searched: tasks that wait for others, places, and what an arrangement costs. */
export interface DispatchProblem {
  /** For each task those that must be taken up before it. */
  before: readonly (readonly number[])[];
  /** Equal places that a task may be done on. */
  places: number;
  /** Lower is better, the first number counts most; of whole numbers or rounded. */
  cost: (dispatch: Dispatch) => readonly number[];
  /** True for a cost that nothing can beat; the search ends there. */
  enough?: (cost: readonly number[]) => boolean;
}

/** A worse arrangement is measured against the one so many steps ago: this share of all rounds. */
const MEMORY_SHARE = 60;

/** Tasks in order of a priority, the highest first among those that wait for none; ties by number. */
export function priorityOrder(before: readonly (readonly number[])[], priority: readonly number[]): number[] {
  const open = before.map((list) => new Set(list).size);
  const after: number[][] = before.map(() => []);
  for (const [task, list] of before.entries()) for (const other of new Set(list)) entryAt(after, other).push(task);
  const ready = open.flatMap((count, task) => (count === 0 ? [task] : []));
  const order: number[] = [];
  while (ready.length > 0) {
    let best = 0;
    for (let i = 1; i < ready.length; i++) {
      const gain = num(priority, num(ready, i)) - num(priority, num(ready, best));
      if (gain > 0 || (gain === 0 && num(ready, i) < num(ready, best))) best = i;
    }
    const [task] = ready.splice(best, 1);
    order.push(defined(task));
    for (const next of entryAt(after, defined(task))) {
      open[next] = num(open, next) - 1;
      if (open[next] === 0) ready.push(next);
    }
  }
  return order;
}

/** Below 0 when the first cost is less. */
export function compareCosts(a: readonly number[], b: readonly number[]): number {
  for (const [i, value] of a.entries()) if (value !== b[i]) return value - num(b, i);
  return 0;
}

/**
 * Searches for a cheap arrangement: the cheapest of those given, then better ones by moving single
 * tasks within what they wait for and by giving them other places. A worse one is taken for a while
 * when it is no worse than the one so many steps ago (late acceptance, Burke and Bykov 2017).
 * @param starts at least one, each an order that keeps to `before`
 * @param rounds arrangements tried
 * @yields the share that is done, 0–1
 * @returns the cheapest found; the same for the same seed and rounds
 */
export function* bestDispatch(
  problem: DispatchProblem,
  starts: readonly Dispatch[],
  { seed, rounds }: { seed: string; rounds: number },
): Generator<number, { dispatch: Dispatch; cost: readonly number[] }> {
  const { before, places } = problem;
  const random = randomFrom(`dispatch ${seed}`);
  const waits = before.map((list) => new Set(list));
  let best = entryAt(starts, 0);
  let least = problem.cost(best);
  for (const start of starts.slice(1)) {
    const cost = problem.cost(start);
    if (compareCosts(cost, least) < 0) [best, least] = [start, cost];
    yield 0;
  }
  const count = best.order.length;
  if (count < 2 && places < 2) return { dispatch: best, cost: least };
  let now = best;
  let nowCost = least;
  const memory = Array.from({ length: Math.max(1, Math.round(rounds / MEMORY_SHARE)) }, () => least);
  for (let round = 0; round < rounds && problem.enough?.(least) !== true; round++) {
    const next = { order: [...now.order], places: [...now.places] };
    // A task, its place, or both: a frame that changes beds is often better off earlier or later too.
    const kind = places > 1 ? random.int(3) : 0;
    const task = random.int(count);
    if (kind > 0) next.places[task] = (num(next.places, task) + 1 + random.int(places - 1)) % places;
    if (kind < 2) {
      const moved = count > 1 && move(next.order, waits, next.order.indexOf(task), random.int(count));
      if (!moved && kind === 0) continue;
    }
    const cost = problem.cost(next);
    const slot = round % memory.length;
    if (compareCosts(cost, entryAt(memory, slot)) <= 0 || compareCosts(cost, nowCost) <= 0) [now, nowCost] = [next, cost];
    memory[slot] = nowCost;
    if (compareCosts(nowCost, least) < 0) [best, least] = [now, nowCost];
    yield (round + 1) / rounds;
  }
  return { dispatch: best, cost: least };
}

/** Moves the task at `from` as far towards `to` as what waits for what allows; false when it stays. */
function move(order: number[], waits: readonly ReadonlySet<number>[], from: number, to: number): boolean {
  const task = num(order, from);
  let at = from;
  while (at > to && !entryAt(waits, task).has(num(order, at - 1))) at--;
  while (at < to && !entryAt(waits, num(order, at + 1)).has(task)) at++;
  if (at === from) return false;
  order.splice(from, 1);
  order.splice(at, 0, task);
  return true;
}
