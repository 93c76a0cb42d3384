import { defined, entryAt, num, u16 } from '../../base/at.ts';
import type { Order } from '../model.ts';

/**
 * How often a group of letters must come, seen from each pull on.
 *
 * With `runs`: the most times that a chain starting with the pull enters the group. Why it is a
 * bound on mounts: take x < y < z on a sheet with x and z of screen s and y of another. The three
 * are printed in three set-ups in this order, so s leaves the press between x and z; each entry of
 * a chain into s is a mount of its own. The same holds for ink changes.
 * Without `runs`: the most pulls of the letter on a chain; no two of them share a set-up, because
 * the second's turn comes only after the first is down.
 * @param groupOf group of each letter
 * @returns row-major, pulls × groups
 */
export function multiplicities(order: Order, groupOf: (letter: number) => number, groups: number, runs: boolean): Uint16Array {
  const count = order.letters.length;
  const own = order.letters.map(groupOf);
  const most = new Uint16Array(count * groups);
  for (let p = count - 1; p >= 0; p--) {
    const group = num(own, p);
    // Pulls after p have already added themselves below; now p itself enters its group.
    const at = p * groups;
    if (!runs) most[at + group] = u16(most, at + group) + 1;
    else most[at + group] = Math.max(u16(most, at + group), 1);
    for (const q of entryAt(order.preds, p)) {
      const to = q * groups;
      for (let g = 0; g < groups; g++) {
        // Entering the group of q again counts only when a pull of another group lies between.
        const value = u16(most, at + g) + (runs && g === num(own, q) && g !== group ? 1 : 0);
        if (value > u16(most, to + g)) most[to + g] = value;
      }
    }
  }
  return most;
}

/** For each group the most that any order forces, from the start. */
export function forcedCounts(orders: readonly Order[], groupOf: (letter: number) => number, groups: number, runs: boolean): number[] {
  const forced = new Array<number>(groups).fill(0);
  for (const order of orders) {
    const own = [...new Set(order.letters.map(groupOf))];
    const place = new Map(own.map((g, i) => [g, i]));
    const most = multiplicities(order, (l) => defined(place.get(groupOf(l))), own.length, runs);
    for (let i = 0; i < most.length; i++) {
      const g = num(own, i % own.length);
      forced[g] = Math.max(num(forced, g), u16(most, i));
    }
  }
  return forced;
}
