import type { PageSize } from '../../../engine/shapes/place/lay-out.ts';
import type { Shape } from '../../../engine/shapes/types.ts';
import type { FilesRead } from '../read-files.ts';

/** A shape that was drawn or cut, and the sheet that it keeps its place on; null for none. */
export interface MadeShape {
  shape: Shape;
  page: PageSize | null;
}

/** A shape that was made here as a file that was read. */
export function drawnFiles({ shape, page }: MadeShape): FilesRead {
  return { shapes: [shape], pages: [page], sized: [true], whites: [], divided: [], remarks: [] };
}
