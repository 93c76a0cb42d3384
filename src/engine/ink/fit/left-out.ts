import { f64 } from '../../base/at.ts';
import { choleskyFactor, type NormalEquations, solveFactored } from './least-squares.ts';
import type { SquareSlopes, StackProblem } from './stack-problem.ts';

/** Added to every unknown's own entry, so that one that nothing tells does no harm. */
const FAINT = 1e-9;
/** How many rows are thought to have told what is usual before. */
const USUAL_ROWS = 3;

/**
 * What each of some squares would be missed by, were it not among those fitted, without fitting anew.
 * @param problem whose unknowns x are at their least sum
 * @param squares places of the squares
 * @returns ΔE by the ruler of the fit, near ΔE00; null where nothing but the square itself tells its colour
 * Source: the left-out residual (I − H)⁻¹ r of linear least squares (Allen 1974, Technometrics 16, 125),
 * H = J (JᵀJ + prior)⁻¹ Jᵀ over the rows of the square.
 */
export function leftOutMisses(problem: StackProblem, x: Float64Array, squares: readonly number[]): (number | null)[] {
  const factor = factorAt(problem, x);
  return squares.map((square) => (factor === null ? null : leftOut(problem, square, factor)));
}

/**
 * What squares miss by, in what is usual, as the squares themselves tell it: their misses over those that
 * unknowns do not take up, held to 1 by as much as a few squares tell.
 * @param problem whose unknowns x are at their least sum; all its squares count
 * @param usual the sum of squares that those few rows have, in the problem's own measure
 * Source: MacKay (1992), Bayesian interpolation, Neural Computation 4, 415: β = (N − γ) / 2E, γ = tr H.
 */
export function noiseOf(problem: StackProblem, x: Float64Array, squares: number, usual: number): number {
  const factor = factorAt(problem, x);
  if (factor === null) return 1;
  let misses = 0;
  let open = 0;
  for (let square = 0; square < squares; square++) {
    const slopes = problem.slopesOf(square);
    const rest = restOf(problem, slopes, factor);
    const rows = slopes.misses.length;
    for (let row = 0; row < rows; row++) {
      misses += f64(slopes.misses, row) ** 2;
      open += f64(rest, row * rows + row);
    }
  }
  return Math.sqrt((misses + usual) / (open + USUAL_ROWS));
}

function factorAt(problem: StackProblem, x: Float64Array): Float64Array | null {
  const { size } = problem;
  const at: NormalEquations = { normal: new Float64Array(size * size), slope: new Float64Array(size) };
  problem.sum(x, at);
  for (let i = 0; i < size; i++) at.normal[i * size + i] = f64(at.normal, i * size + i) + FAINT;
  return choleskyFactor(at.normal, size) ? at.normal : null;
}

function leftOut(problem: StackProblem, place: number, factor: Float64Array): number | null {
  const square = problem.slopesOf(place);
  const rows = square.misses.length;
  const rest = restOf(problem, square, factor);
  if (!choleskyFactor(rest, rows)) return null;
  const left = square.misses.slice();
  solveFactored(rest, left, rows);
  return square.expected * Math.hypot(f64(left, 0), f64(left, 1), f64(left, 2));
}

/** I − H over the rows of a square. */
function restOf({ size }: StackProblem, { misses, unknowns, slopes }: SquareSlopes, factor: Float64Array): Float64Array {
  const rows = misses.length;
  const rest = new Float64Array(rows * rows);
  for (let row = 0; row < rows; row++) {
    const moved = new Float64Array(size);
    unknowns.forEach((unknown, i) => (moved[unknown] = f64(slopes, i * rows + row)));
    solveFactored(factor, moved, size);
    for (let other = 0; other < rows; other++) {
      let own = 0;
      unknowns.forEach((unknown, i) => (own += f64(slopes, i * rows + other) * f64(moved, unknown)));
      rest[other * rows + row] = (other === row ? 1 : 0) - own;
    }
  }
  return rest;
}
