/** What rounding may add to a difference or take from it, ΔE00; it stays far below. */
export const SLACK = 1e-9;

/**
 * How far apart in L two colours are at most of which one has this L, when they are within a difference.
 * From ΔL ÷ S_L ≤ ΔE00 and 1 ≤ S_L ≤ 1 + 0.015·(|L − 50| + ΔL ÷ 2); of differences beyond 130 nothing is said. Source of the formula: see
 * delta-e.ts; the bound is ours.
 * @param deltaE ΔE00, 0 or more
 */
export function reachL(l: number, deltaE: number): number {
  const slope = 1 - 0.0075 * deltaE;
  return slope > 0 ? ((deltaE + SLACK) * (1 + 0.015 * Math.abs(l - 50))) / slope : Infinity;
}
