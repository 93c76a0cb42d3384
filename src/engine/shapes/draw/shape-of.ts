import { EngineError } from '../../base/error.ts';
import { roundTo } from '../../base/units.ts';
import { normalise } from '../../geometry/booleans.ts';
import { ringArea, shapeBounds } from '../../geometry/rings.ts';
import type { Ring } from '../../geometry/types.ts';
import { WorkBudget } from '../../geometry/work.ts';
import type { Shape } from '../types.ts';
import { apartPoints, type DrawPoint, outlineThrough } from './curve.ts';
import { fewPoints } from './pen.ts';
import { say } from '../../words/en/shapes/draw.ts';

/** Areas of an outline that differ by less are the same, mm², beside the hundredth of a mm along its edges. */
const SAME_MM2 = 0.01;

/** Work of closing an outline, in steps of `WorkBudget`: about a second, since it is done while one draws. */
const MOST_WORK = 10_000_000;

/** A shape that was drawn, and whether its outline crosses itself. */
export interface Drawn {
  shape: Shape;
  /** All that the outline encloses is the shape then. */
  crosses: boolean;
}

/**
 * The shape that points enclose.
 * @throws EngineError 'draw.few-points', 'draw.nothing' for an outline that encloses nothing,
 *   'draw.too-fine' for one of so many turns that it takes over a second to close
 */
export function drawnShape(points: readonly DrawPoint[], head: { id: string; name: string }): Drawn {
  const apart = apartPoints(points);
  const least = apart.some(({ handles }) => handles !== undefined) ? 2 : 3;
  if (apart.length < least) throw fewPoints();
  const ring = outlineThrough(apart);
  const rings = enclosedBy(ring);
  const shape = shapeOf(rings, head);
  if (shape === null) throw new EngineError('draw.nothing', say.outlineEnclosesNothingSet);
  const filled = rings.reduce((sum, one) => sum + ringArea(one), 0);
  // A loop counts against the rest, or twice, in the area of the ring as it runs.
  return { shape, crosses: Math.abs(Math.abs(ringArea(ring)) - filled) > SAME_MM2 };
}

function enclosedBy(ring: Ring): Float64Array[] {
  try {
    return normalise({ rings: [ring], fillRule: 'nonzero' }, new WorkBudget(MOST_WORK));
  } catch (error) {
    if (!(error instanceof EngineError) || error.code !== 'geometry.too-much-work') throw error;
    throw new EngineError('draw.too-fine', say.outlineHasTooMany);
  }
}

/**
 * A shape of outlines, to a micrometre.
 * @param rings as `normalise` gives them
 * @returns null where nothing is enclosed
 */
export function shapeOf(rings: readonly Ring[], { id, name }: { id: string; name: string }): Shape | null {
  const kept = rings.map((ring) => Array.from(ring, (value) => roundTo(value, 3))).filter((ring) => Math.abs(ringArea(ring)) > 0);
  const { widthMm, heightMm } = shapeBounds(kept);
  if (kept.length === 0 || widthMm <= 0 || heightMm <= 0) return null;
  return { id, name, rings: kept, fillRule: 'nonzero', widthMm: roundTo(widthMm, 3), heightMm: roundTo(heightMm, 3) };
}
