import { roundTo } from '../../../engine/base/units.ts';
import { mapRings, shapeBounds } from '../../../engine/geometry/rings.ts';
import type { PageSize } from '../../../engine/shapes/place/lay-out.ts';
import type { Shape } from '../../../engine/shapes/types.ts';
import type { FilesRead } from '../read-files.ts';

/** What came of a shape, in its coordinates. */
export interface ShapePieces {
  shape: Shape;
  pieces: Shape[];
}

/** A shape that was drawn or cut, and the sheet that it keeps its place on; null for none. */
export interface MadeShape {
  shape: Shape;
  page: PageSize | null;
}

/** The pieces of a shape as one drawing that was read: side by side as they were. */
export function pieceFiles({ shape, pieces }: ShapePieces): FilesRead {
  const { xMm, yMm, widthMm, heightMm } = shapeBounds(shape.rings);
  const shapes = pieces.map((piece) => ({
    ...piece,
    rings: mapRings(piece.rings, [1, 0, 0, 1, -xMm, -yMm]).map((ring) => Array.from(ring, (mm) => roundTo(mm, 3))),
  }));
  const page = { widthMm: roundTo(widthMm, 3), heightMm: roundTo(heightMm, 3) };
  return { shapes, pages: shapes.map(() => page), sized: shapes.map(() => true), whites: [], divided: [], remarks: [] };
}

/** A shape that was made here as a file that was read. */
export function drawnFiles({ shape, page }: MadeShape): FilesRead {
  return { shapes: [shape], pages: [page], sized: [true], whites: [], divided: [], remarks: [] };
}
