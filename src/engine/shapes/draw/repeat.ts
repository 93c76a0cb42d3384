import { EngineError } from '../../base/error.ts';
import { mapRings, shapeBounds, turnAbout } from '../../geometry/rings.ts';
import type { Ring } from '../../geometry/types.ts';
import { say } from '../../words/en/shapes/draw.ts';

/** How often one shape may be repeated; more is taken for a mistake. */
export const MOST_TIMES = 200;

/**
 * Rings and their copies, each so far from the one before.
 * @param times how many there are in all, 1 to 200
 * @throws EngineError 'draw.times'
 */
export function repeatedAlong(rings: readonly Ring[], { times, rightMm, downMm }: { times: number; rightMm: number; downMm: number }): Float64Array[] {
  return copies(times, (i) => mapRings(rings, [1, 0, 0, 1, i * rightMm, i * downMm]));
}

/**
 * Rings and their copies, each turned by so much from the one before about a point below their middle.
 * @param radiusMm how far the point lies below the middle; 0 turns about the middle
 * @throws EngineError 'draw.times'
 */
export function repeatedAbout(rings: readonly Ring[], { times, turnDeg, radiusMm }: { times: number; turnDeg: number; radiusMm: number }): Float64Array[] {
  const box = shapeBounds(rings);
  const [x, y] = [box.xMm + box.widthMm / 2, box.yMm + box.heightMm / 2 + radiusMm];
  return copies(times, (i) => mapRings(rings, turnAbout(i * turnDeg, x, y)));
}

function copies(times: number, copy: (i: number) => Float64Array[]): Float64Array[] {
  if (!Number.isInteger(times) || times < 1 || times > MOST_TIMES)
    throw new EngineError('draw.times', say.shapeCanBeThere(MOST_TIMES));
  return Array.from({ length: times }, (_, i) => copy(i)).flat();
}
