import { entryAt, num } from '../../../base/at.ts';
import { bitsAt } from '../../../base/bits.ts';
import type { Order } from '../../model.ts';
import { asks, implies, orderOn } from '../sets/letter-sets.ts';
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

/** Orders with only some places left, those that another one implies left out; places are numbered anew. */
export function restrictedTo(orders: readonly SetOrder[], places: readonly number[]): SetOrder[] {
  const found = new Map<string, SetOrder>();
  for (const order of orders) {
    const present = bitsAt(order.present, places);
    const preds = places.map((p) => ((order.present >> p) & 1 ? bitsAt(num(order.preds, p), places) : 0));
    // What asks for no order finishes of itself.
    if (preds.some((mask) => mask !== 0)) found.set(`${present},${preds.join()}`, { present, preds });
  }
  const list = [...found.values()];
  return list.filter((a, i) => !list.some((b, j) => i !== j && implies(b, a))).sort((a, b) => asks(b) - asks(a));
}
