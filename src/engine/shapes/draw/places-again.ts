import { mapRings, shapeBounds, turnAbout } from '../../geometry/rings.ts';
import type { PlacedShape, Screen, Shape } from '../types.ts';

/**
 * Where a shape that was changed lies on the screens that carry it, so that what did not change of it
 * stays where it was printed.
 * @param after the shape as it is now, in the same coordinates and under the same id
 */
export function placesAgain(before: Shape, after: Shape, screens: readonly Screen[]): { screen: string; placed: PlacedShape[] }[] {
  const [from, to] = [before, after].map(({ rings }) => shapeBounds(rings));
  if (from === undefined || to === undefined) return [];
  const right = to.xMm + to.widthMm / 2 - (from.xMm + from.widthMm / 2);
  const down = to.yMm + to.heightMm / 2 - (from.yMm + from.heightMm / 2);
  return screens
    .filter(({ placed }) => placed.some(({ shape }) => shape === after.id))
    .map(({ id, placed }) => ({ screen: id, placed: placed.map((one) => (one.shape === after.id ? movedIn(one, right, down) : one)) }));
}

/** A place moved by a way given in the shape's own coordinates, mm. */
function movedIn(placed: PlacedShape, right: number, down: number): PlacedShape {
  const across = placed.mirrored === true ? -right : right;
  const [[x = 0, y = 0] = []] = mapRings([[across * placed.scale, down * placed.scale]], turnAbout(placed.turnDeg, 0, 0)).map((ring) => [...ring]);
  return { ...placed, xMm: placed.xMm + x, yMm: placed.yMm + y };
}
