import { mapRings, shapeBounds, turnAbout } from '../../geometry/rings.ts';
import type { PlacedShape, Screen, Shape } from '../types.ts';

/**
 * Where a shape that was changed lies on the screens that carry it, so that what did not change of it
 * stays where it was printed.
 * @param after the shape as it is now, in the same coordinates and under the same id
 */
export function placesAgain(before: Shape, after: Shape, screens: readonly Screen[]): { screen: string; placed: PlacedShape[] }[] {
  return piecesAgain(before, [after], screens);
}

/**
 * Where the pieces of a shape lie on the screens that carry it, so that these print as before.
 * @param pieces in the shape's coordinates
 */
export function piecesAgain(shape: Shape, pieces: readonly Shape[], screens: readonly Screen[]): { screen: string; placed: PlacedShape[] }[] {
  const from = middleOf(shape);
  const ways = pieces.map((piece) => {
    const to = middleOf(piece);
    return { shape: piece.id, right: to.xMm - from.xMm, down: to.yMm - from.yMm };
  });
  return screens
    .filter(({ placed }) => placed.some((one) => one.shape === shape.id))
    .map(({ id, placed }) => ({
      screen: id,
      placed: placed.flatMap((one) => (one.shape === shape.id ? ways.map((way) => ({ ...movedIn(one, way.right, way.down), shape: way.shape })) : [one])),
    }));
}

function middleOf({ rings }: Shape): { xMm: number; yMm: number } {
  const { xMm, yMm, widthMm, heightMm } = shapeBounds(rings);
  return { xMm: xMm + widthMm / 2, yMm: yMm + heightMm / 2 };
}

/** A place moved by a way given in the shape's own coordinates, mm. */
function movedIn(placed: PlacedShape, right: number, down: number): PlacedShape {
  const across = placed.mirrored === true ? -right : right;
  const [[x = 0, y = 0] = []] = mapRings([[across * placed.scale, down * placed.scale]], turnAbout(placed.turnDeg, 0, 0)).map((ring) => [...ring]);
  return { ...placed, xMm: placed.xMm + x, yMm: placed.yMm + y };
}
