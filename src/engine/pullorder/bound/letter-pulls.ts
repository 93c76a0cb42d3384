import { defined, num } from '../../base/at.ts';
import type { Order } from '../model.ts';

/** For each order the pulls of each of its letters, ascending. */
export function pullsByLetter(orders: readonly Order[]): Map<number, number[]>[] {
  return orders.map((order) => {
    const pulls = new Map<number, number[]>();
    order.letters.forEach((l, p) => {
      if (!pulls.has(l)) pulls.set(l, []);
      defined(pulls.get(l)).push(p);
    });
    return pulls;
  });
}

/** Whether an ascending list holds a number. */
export function holds(list: readonly number[], value: number): boolean {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (num(list, middle) < value) low = middle + 1;
    else high = middle;
  }
  return list[low] === value;
}
