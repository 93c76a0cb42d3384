import { defined, entryAt, f64, num } from '../../base/at.ts';
import { bestDispatch, type DispatchProblem, priorityOrder } from './dispatch.ts';

/** A piece of work bound to one machine, or to one frame, that waits for others. */
export interface ShopOperation {
  machine: string;
  minutes: number;
  /** Operations, by index, that must have ended so many minutes before; no cycles. */
  after: readonly { operation: number; lagMinutes: number }[];
}

/** When each operation can begin at the earliest, and what must follow its end, were machines never busy. */
interface Window {
  heads: number[];
  tails: number[];
}

/**
 * When all is done if operations are taken up in an order, each as soon as what it waits for has
 * ended and its machine is free.
 * @param order each operation once, none before one that it waits for
 */
export function shopMinutes(operations: readonly ShopOperation[], order: readonly number[]): number {
  const free = new Map<string, number>();
  const ends = new Float64Array(operations.length);
  let last = 0;
  for (const at of order) {
    const { machine, minutes, after } = entryAt(operations, at);
    let start = free.get(machine) ?? 0;
    for (const { operation, lagMinutes } of after) start = Math.max(start, f64(ends, operation) + lagMinutes);
    ends[at] = start + minutes;
    free.set(machine, f64(ends, at));
    last = Math.max(last, f64(ends, at));
  }
  return last;
}

function windowOf(operations: readonly ShopOperation[], order: readonly number[]): Window {
  const heads = operations.map(() => 0);
  const tails = operations.map(() => 0);
  for (const at of order) {
    for (const { operation, lagMinutes } of entryAt(operations, at).after) {
      heads[at] = Math.max(num(heads, at), num(heads, operation) + entryAt(operations, operation).minutes + lagMinutes);
    }
  }
  for (const at of [...order].reverse()) {
    for (const { operation, lagMinutes } of entryAt(operations, at).after) {
      tails[operation] = Math.max(num(tails, operation), lagMinutes + entryAt(operations, at).minutes + num(tails, at));
    }
  }
  return { heads, tails };
}

/** One machine when work may be broken off: what is there with the longest tail goes first. Source: J. R. Jackson, 1955. */
function oneMachine(work: { head: number; minutes: number; tail: number }[]): number {
  const byHead = [...work].sort((a, b) => a.head - b.head);
  const waiting: { left: number; tail: number }[] = [];
  let now = 0;
  let most = 0;
  for (let next = 0; next < byHead.length || waiting.length > 0;) {
    if (waiting.length === 0) now = Math.max(now, entryAt(byHead, next).head);
    while (next < byHead.length && entryAt(byHead, next).head <= now) {
      waiting.push({ left: entryAt(byHead, next).minutes, tail: entryAt(byHead, next).tail });
      next++;
    }
    let longest = 0;
    for (let i = 1; i < waiting.length; i++) if (entryAt(waiting, i).tail > entryAt(waiting, longest).tail) longest = i;
    const job = entryAt(waiting, longest);
    const until = next < byHead.length ? Math.min(now + job.left, entryAt(byHead, next).head) : now + job.left;
    job.left -= until - now;
    now = until;
    // A remainder of rounding would never be worked off.
    if (job.left <= 1e-9) {
      most = Math.max(most, now + job.tail);
      waiting.splice(longest, 1);
    }
  }
  return most;
}

/**
 * Minutes that no order of the operations beats: the longest chain, and for each machine what it
 * must do between what comes before and what must follow.
 * @param before every operation waits for so long, and @param behind so long must follow the last
 */
export function shopBound(operations: readonly ShopOperation[], before = 0, behind = 0): number {
  const { heads, tails } = windowOf(operations, orderOf(operations));
  const machines = new Map<string, { head: number; minutes: number; tail: number }[]>();
  for (const [at, { machine, minutes }] of operations.entries()) {
    const work = { head: before + num(heads, at), minutes, tail: num(tails, at) + behind };
    const list = machines.get(machine);
    if (list === undefined) machines.set(machine, [work]);
    else list.push(work);
  }
  return [...machines.values()].reduce((most, work) => Math.max(most, oneMachine(work)), 0);
}

function beforeOf(operations: readonly ShopOperation[]): number[][] {
  return operations.map(({ after }) => after.map(({ operation }) => operation));
}

function orderOf(operations: readonly ShopOperation[]): number[] {
  return priorityOrder(
    beforeOf(operations),
    operations.map(() => 0),
  );
}

/**
 * A short order of a job shop by the search that also lays set-ups out over the beds.
 * @param rounds orders tried
 */
export function shopOrder(operations: readonly ShopOperation[], seed: string, rounds: number): { order: number[]; minutes: number } {
  const before = beforeOf(operations);
  const { heads, tails } = windowOf(operations, orderOf(operations));
  const places = operations.map(() => 0);
  // Longest tail first, and earliest head first.
  const starts = [tails, heads.map((head) => -head)].map((priority) => ({ order: priorityOrder(before, priority), places }));
  const bound = shopBound(operations);
  const shop: DispatchProblem = {
    before,
    places: 1,
    cost: ({ order }) => [shopMinutes(operations, order)],
    enough: ([minutes]) => defined(minutes) <= bound,
  };
  const search = bestDispatch(shop, starts, { seed, rounds });
  let next = search.next();
  while (next.done !== true) next = search.next();
  const { dispatch, cost } = next.value;
  return { order: dispatch.order, minutes: num(cost, 0) };
}
