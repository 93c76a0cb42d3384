import { entryAt, num } from '../../../base/at.ts';
import type { Order } from '../../model.ts';
import { orderOn } from '../sets/letter-sets.ts';
import type { SetOrder } from '../sets/set-order.ts';

/** Which pull of a letter stands for it, of those on a sheet, by the place of the letter. */
const CHOICES: ((own: readonly number[], place: number) => number)[] = [
  (own) => num(own, 0),
  (own) => num(own, own.length - 1),
  (own, place) => num(own, place % 2 === 0 ? 0 : own.length - 1),
  (own, place) => num(own, place % 2 === 0 ? own.length - 1 : 0),
];

/**
 * Sheets with all but some letters struck out, as bits of places in `letters`. Where a letter comes
 * several times on a sheet one of its pulls stands for it, chosen in some ways that make sheets of
 * their own: a word that finishes the sheet finishes what is left when pulls are struck out.
 * @param letters at most 20
 */
export function ordersOn(orders: readonly Order[], letters: readonly number[]): SetOrder[] {
  const place = new Map(letters.map((l, i) => [l, i]));
  const found = new Map<string, SetOrder>();
  for (const { letters: own, preds } of orders) {
    const pulls: number[][] = letters.map(() => []);
    own.forEach((l, p) => {
      const at = place.get(l);
      if (at !== undefined) entryAt(pulls, at).push(p);
    });
    for (const choose of pulls.some((list) => list.length > 1) ? CHOICES : CHOICES.slice(0, 1)) {
      const order = orderOn(
        pulls.map((list, i) => (list.length === 0 ? -1 : choose(list, i))),
        preds,
      );
      found.set(`${order.present},${order.preds.join()}`, order);
    }
  }
  return [...found.values()];
}
