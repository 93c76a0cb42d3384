import { entryAt, num } from '../base/at.ts';
import { randomFrom } from '../base/random.ts';
import type { GroupedOrders } from '../order/first-down.ts';
import type { PairOrder } from '../order/groups/pair-reasons.ts';

/** All orders of a lesson, which of them print one picture, and how pairs of pulls meet. */
export type SortedOrders = GroupedOrders & { pairs: readonly PairOrder[] };

/** An order that is hidden until someone asks. */
export interface HiddenOrder {
  /** Index of the order. */
  order: number;
  /** Its picture, counted from 0. */
  picture: number;
}

/** Two pulls of a print, and which of them lies on top. */
export interface TopQuestion extends HiddenOrder {
  /** Places of the two in the lesson, the lower first. */
  pair: readonly [number, number];
  top: number;
}

/**
 * An order to be found back from its print.
 * @param name the same name gives the same order
 * @returns null where all orders print one picture, so that there is nothing to find
 */
export function hiddenOrder({ orders, groups }: GroupedOrders, name: string): HiddenOrder | null {
  if (groups.length < 2) return null;
  const order = randomFrom(`order ${name}`).int(orders.length);
  return { order, picture: groups.findIndex((group) => group.includes(order)) };
}

/**
 * Two pulls of a print of which one can tell by looking which lies on top: it is the same in every order
 * that prints it, and they meet.
 * @param name the same name gives the same question
 * @returns null where no print tells of any two
 */
export function topQuestion(sorted: SortedOrders, name: string): TopQuestion | null {
  const all = sorted.groups.flatMap((group, picture) => tellingPairs(sorted, group).map((each) => ({ ...each, picture })));
  if (all.length === 0) return null;
  const random = randomFrom(`top ${name}`);
  const { picture, pair, top } = random.pick(all);
  return { order: random.pick(entryAt(sorted.groups, picture)), picture, pair, top };
}

function tellingPairs({ orders, pairs }: SortedOrders, group: readonly number[]): Pick<TopQuestion, 'pair' | 'top'>[] {
  return pairs
    .filter(({ reason }) => reason === 'shows' || reason === 'hidden')
    .flatMap(({ a, b }) => {
      const tops = new Set(group.map((index) => topOf(entryAt(orders, index), a, b)));
      return tops.size === 1 ? [{ pair: [a, b] as const, top: num([...tops], 0) }] : [];
    });
}

function topOf(order: readonly number[], a: number, b: number): number {
  return order.indexOf(a) > order.indexOf(b) ? a : b;
}

/** Whether two orders are different ones that print one picture. */
export function alike({ orders, groups }: GroupedOrders, one: readonly number[], other: readonly number[]): boolean {
  const picture = (order: readonly number[]): number => {
    const index = orders.findIndex((each) => each.join() === order.join());
    return groups.findIndex((group) => group.includes(index));
  };
  return one.join() !== other.join() && picture(one) >= 0 && picture(one) === picture(other);
}
