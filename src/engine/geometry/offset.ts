import { BOOLEAN_GRID_MM, toPaths, toRings } from './booleans.ts';
import { simplifyRing } from './simplify.ts';
import type { Ring } from './types.ts';
import { widened } from './widened.ts';
import type { WorkBudget } from './work.ts';

/** How far a rounded corner may be from its circle, in steps of the boolean grid: 1 µm. */
const ARC_STEPS = 10;

/**
 * Corners that turn less than this are left out first, mm: of a curve of ten thousand edges each would be moved
 * by itself and cross its neighbours. A film printer's dot is ten times as large (2400 dpi).
 */
const SMOOTH_MM = 0.001;

/** Only for mitred corners, of which there are none here. */
const MITRE_LIMIT = 2;

/**
 * What lies within a distance of rings, or what lies farther than it from their edges and inside.
 * @param rings as `normalise` gives them
 * @param mm how far all edges move out, below 0 in; corners that open come round
 * @returns rings as `normalise` gives them, to 2 µm; none where everything is narrower than twice the way in
 * @throws EngineError 'geometry.too-much-work' when the work is more than the budget has left
 */
export function grownRings(rings: readonly Ring[], mm: number, budget: WorkBudget): Float64Array[] {
  const paths = toPaths(rings.map((ring) => simplifyRing(ring, SMOOTH_MM)));
  if (paths.length === 0) return [];
  if (Math.abs(mm) < BOOLEAN_GRID_MM) return toRings(toPaths(rings));
  const moved = budget.run(paths, () => widened(paths, mm / BOOLEAN_GRID_MM, { mitreLimit: MITRE_LIMIT, arcSteps: ARC_STEPS }));
  return toRings(moved);
}
