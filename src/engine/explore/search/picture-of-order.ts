import { entryAt, f64, i32, num } from '../../base/at.ts';
import { pictureKey } from '../look/picture-key.ts';
import type { Sight } from '../look/visible.ts';
import { type Layout, MIN_AREA_MM2 } from './layout.ts';

/**
 * The key of the picture that pulls print in an order. What nothing shows of has no part in it.
 * @param order first down first, by index in the layout
 */
export function pictureOfOrder({ map, pulls, films, bits, edges }: Layout, order: readonly number[], sight: Sight): string {
  const seen = sight.of(
    map,
    order.map((pull) => num(films, pull)),
    order.map((pull) => num(bits, pull)),
  );
  const shown = order.map((_, at) => at).filter((at) => f64(seen.areaMm2, at) >= MIN_AREA_MM2);
  /** Place of each pull in the order, and among those that show; −1 for none. */
  const at = new Int32Array(pulls.length);
  order.forEach((pull, i) => {
    at[pull] = i;
  });
  const place = new Int32Array(pulls.length).fill(-1);
  shown.forEach((from, i) => {
    place[num(order, from)] = i;
  });
  const showing = edges.filter(({ a, b }) => {
    if (i32(place, a) < 0 || i32(place, b) < 0) return false;
    const [low, high] = i32(at, a) < i32(at, b) ? [i32(at, a), i32(at, b)] : [i32(at, b), i32(at, a)];
    return f64(seen.pairMm2, high * pulls.length + low) >= MIN_AREA_MM2;
  });
  return pictureKey(
    shown.map((each) => entryAt(pulls, num(order, each))),
    showing.map(({ a, b }) => ({ a: i32(place, a), b: i32(place, b) })),
  );
}
