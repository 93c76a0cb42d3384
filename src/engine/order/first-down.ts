import { entryAt, num } from '../base/at.ts';

/** Orders of some pulls, and which of them print one picture. */
export interface GroupedOrders {
  /** Places of the pulls, first down first. */
  orders: readonly (readonly number[])[];
  /** Places of the orders that print one picture. */
  groups: readonly (readonly number[])[];
}

/** Pulls that can have gone down first in the picture of a group, ascending. */
export function possibleFirsts({ orders, groups }: GroupedOrders, group: number): number[] {
  return [...new Set(entryAt(groups, group).map((order) => num(entryAt(orders, order), 0)))].sort((a, b) => a - b);
}

/** Groups whose first pull can be told from the picture; all of them when there are no such. */
export function tellingGroups(grouped: GroupedOrders): number[] {
  const all = grouped.groups.map((_, group) => group);
  const certain = all.filter((group) => possibleFirsts(grouped, group).length === 1);
  return certain.length > 0 ? certain : all;
}
