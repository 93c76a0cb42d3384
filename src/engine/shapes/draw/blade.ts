import { num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { normalise } from '../../geometry/booleans.ts';
import { ringParts } from '../../geometry/parts.ts';
import { splitRings } from '../../geometry/split-rings.ts';
import { WorkBudget } from '../../geometry/work.ts';
import type { Shape } from '../types.ts';
import { MOST_PEN_POINTS } from './pen.ts';
import { shapeOf } from './shape-of.ts';
import { say } from '../../words/en/shapes/draw.ts';

/** More pieces than this make a list that nobody reads. */
const MOST_PIECES = 200;

/** Points of a line nearer to each other than this are one, mm: the grid of outlines. */
const SAME_MM = 0.001;

/**
 * The pieces of a shape that a blade goes through along an open line; each keeps its place, and together they are the shape.
 * @param line flat, mm, in the shape's coordinates; its ends lie outside the shape or on its edge, else the cut stops short of them
 * @returns largest first, named after the shape; ids are '', to be given
 * @throws EngineError 'draw.blade' where nothing comes apart, or into over 200 pieces, 'draw.pen-points' for more than
 *   10,000 points, 'geometry.too-much-work' when it would take over ten seconds
 */
export function bladePieces(shape: Shape, line: readonly number[]): Shape[] {
  if (line.length / 2 > MOST_PEN_POINTS) throw new EngineError('draw.pen-points', say.lineHasMoreThan);
  const blade = apartLine(line);
  if (blade.length < 4) throw new EngineError('draw.blade', say.drawLineOfTwo);
  const rings = normalise(shape, new WorkBudget());
  const parts = splitRings(rings, blade);
  if (parts.length <= ringParts(rings).length) {
    throw new EngineError('draw.blade', say.lineDoesNotCut);
  }
  if (parts.length > MOST_PIECES) throw new EngineError('draw.blade', say.shapeWouldComeTo(MOST_PIECES));
  const name = shape.name === '' ? 'unnamed' : shape.name;
  return parts.flatMap((part, i) => shapeOf(part, { id: '', name: say.piece(name.slice(0, 180), i + 1) }) ?? []);
}

function apartLine(line: readonly number[]): number[] {
  const out: number[] = [];
  for (let i = 0; i + 1 < line.length; i += 2) {
    const [x, y] = [num(line, i), num(line, i + 1)];
    if (out.length > 0 && Math.hypot(x - num(out, out.length - 2), y - num(out, out.length - 1)) < SAME_MM) continue;
    out.push(x, y);
  }
  return out;
}
