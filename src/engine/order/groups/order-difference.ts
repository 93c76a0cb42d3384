import { entryAt, f64, num, u16 } from '../../base/at.ts';
import { roundTo } from '../../base/units.ts';
import type { OrderPlace } from './order-places.ts';

/** From where on two orders print two pictures. */
export interface PictureLimits {
  /** ΔE00 that a place must exceed to differ. */
  minDeltaE: number;
  /** Area that must differ, mm²: all places that do, together. */
  minAreaMm2: number;
}

/**
 * How much two orders of a stack differ: the largest ΔE00 that more than minAreaMm2 of the sheet
 * differs by, or more; 0 when no more than that differs at all. Areas are summed over the sheet, not
 * taken one connected place at a time: a pattern of specks is seen as a whole, and a sum does not hang
 * on a bridge a hair wide between two places.
 * @param one index of an order, as `colourOf` counts them
 * @returns ΔE00, rounded to 9 decimals
 */
export function orderDifference(places: readonly OrderPlace[], one: number, other: number, minAreaMm2: number): number {
  const found: { deltaE: number; areaMm2: number }[] = [];
  for (const place of places) {
    const deltaE = deltaEAt(place, one, other);
    if (deltaE > 0) found.push({ deltaE, areaMm2: place.areaMm2 });
  }
  found.sort((a, b) => b.deltaE - a.deltaE);
  let areaMm2 = 0;
  for (const each of found) {
    areaMm2 += each.areaMm2;
    if (areaMm2 > minAreaMm2) return roundTo(each.deltaE, 9);
  }
  return 0;
}

/** The same as orderDifference when it is not above minDeltaE, else Infinity, which is found sooner. */
export function differenceWithin(places: readonly OrderPlace[], one: number, other: number, limits: PictureLimits): number {
  let areaMm2 = 0;
  // Plain indexes: this runs 259,000 times for six pulls.
  for (let i = 0; i < places.length; i++) {
    const place = entryAt(places, i);
    if (deltaEAt(place, one, other) > limits.minDeltaE) areaMm2 += place.areaMm2;
    if (areaMm2 > limits.minAreaMm2) return Infinity;
  }
  return orderDifference(places, one, other, limits.minAreaMm2);
}

/** Area over which two orders differ by more than a ΔE00, mm². */
export function areaBeyond(places: readonly OrderPlace[], one: number, other: number, deltaE: number): number {
  return places.reduce((sum, place) => sum + (deltaEAt(place, one, other) > deltaE ? place.areaMm2 : 0), 0);
}

function deltaEAt({ colourOf, colours, deltaE }: OrderPlace, one: number, other: number): number {
  return f64(deltaE, u16(colourOf, one) * colours.length + u16(colourOf, other));
}

/** Orders whose colours are the same in every place, as lists of their indexes; by their first order. */
export function equalOrders(places: readonly OrderPlace[], orders: number): number[][] {
  const byColours = new Map<string, number[]>();
  for (let order = 0; order < orders; order++) {
    const key = places.map(({ colourOf }) => num(colourOf, order)).join();
    const found = byColours.get(key);
    if (found === undefined) byColours.set(key, [order]);
    else found.push(order);
  }
  return [...byColours.values()];
}
