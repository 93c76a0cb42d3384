import { f64 } from '../../base/at.ts';
import { choleskyFactor, type NormalEquations, solveFactored } from './least-squares.ts';
import type { StackProblem } from './stack-problem.ts';

/** Added to every unknown's own entry, so that one that nothing tells does no harm. */
const FAINT = 1e-9;

/**
 * What each of some squares would be missed by, were it not among those fitted, without fitting anew.
 * @param problem whose unknowns x are at their least sum
 * @param squares places of the squares
 * @returns ΔE by the ruler of the fit, near ΔE00; null where nothing but the square itself tells its colour
 * Source: the left-out residual (I − H)⁻¹ r of linear least squares (Allen 1974, Technometrics 16, 125),
 * H = J (JᵀJ + prior)⁻¹ Jᵀ over the rows of the square.
 */
export function leftOutMisses(problem: StackProblem, x: Float64Array, squares: readonly number[]): (number | null)[] {
  const { size } = problem;
  const at: NormalEquations = { normal: new Float64Array(size * size), slope: new Float64Array(size) };
  problem.sum(x, at);
  for (let i = 0; i < size; i++) at.normal[i * size + i] = f64(at.normal, i * size + i) + FAINT;
  if (!choleskyFactor(at.normal, size)) return squares.map(() => null);
  return squares.map((square) => leftOut(problem, square, at.normal));
}

function leftOut(problem: StackProblem, place: number, factor: Float64Array): number | null {
  const { misses, unknowns, slopes, expected } = problem.slopesOf(place);
  const rows = misses.length;
  const rest = new Float64Array(rows * rows);
  for (let row = 0; row < rows; row++) {
    const moved = new Float64Array(problem.size);
    unknowns.forEach((unknown, i) => (moved[unknown] = f64(slopes, i * rows + row)));
    solveFactored(factor, moved, problem.size);
    for (let other = 0; other < rows; other++) {
      let own = 0;
      unknowns.forEach((unknown, i) => (own += f64(slopes, i * rows + other) * f64(moved, unknown)));
      rest[other * rows + row] = (other === row ? 1 : 0) - own;
    }
  }
  if (!choleskyFactor(rest, rows)) return null;
  const left = misses.slice();
  solveFactored(rest, left, rows);
  return expected * Math.hypot(f64(left, 0), f64(left, 1), f64(left, 2));
}
