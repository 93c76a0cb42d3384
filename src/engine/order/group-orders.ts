import { EngineError } from '../base/error.ts';
import type { Stack } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { canonicalOrder } from './canonical.ts';
import { graphOf } from './graph.ts';
import { type Overlap, type OverlapOptions, overlapsOf } from './overlaps.ts';

/** All orders of a few pulls, and which of them print the same image. */
export interface OrderGroups {
  /** Every order, lexicographic, as positions in the stack given, first down first. */
  orders: number[][];
  /** Indexes into `orders`; a group prints one image; groups by their first order. */
  groups: number[][];
  edges: Overlap[];
  /** Number of groups. */
  count: number;
}

/**
 * Groups all orders of two to five pulls into the images that really differ.
 * @throws EngineError 'order.lesson-size' for fewer or more pulls, and as overlapsOf
 */
export function groupOrders(stack: Stack, studio: Studio, options: OverlapOptions): OrderGroups {
  const n = stack.pulls.length;
  if (n < 2 || n > 5) {
    throw new EngineError(
      'order.lesson-size',
      `${n === 1 ? 'One pull was' : `${n} pulls were`} chosen; choose two to five to see all their orders.`,
    );
  }
  const edges = overlapsOf(stack, studio, options);
  const { neighbours } = graphOf(
    n,
    edges.map(({ a, b }): [number, number] => [a, b]),
  );
  const orders = permutations(n);
  const byClass = new Map<string, number[]>();
  orders.forEach((order, index) => {
    const key = canonicalOrder(order, neighbours).join();
    const group = byClass.get(key);
    if (group === undefined) byClass.set(key, [index]);
    else group.push(index);
  });
  const groups = [...byClass.values()];
  return { orders, groups, edges, count: groups.length };
}

function permutations(n: number): number[][] {
  const out: number[][] = [];
  const extend = (taken: number[]): void => {
    if (taken.length === n) out.push(taken);
    for (let next = 0; next < n; next++) if (!taken.includes(next)) extend([...taken, next]);
  };
  extend([]);
  return out;
}
