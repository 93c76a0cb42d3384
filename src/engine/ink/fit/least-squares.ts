import { f64 } from '../../base/at.ts';

/** The normal equations at a place, gathered while a sum of squares is. */
export interface NormalEquations {
  /** JᵀJ, size × size, row by row, both halves. */
  normal: Float64Array;
  /** Jᵀr. */
  slope: Float64Array;
}

/** A sum of squares to be made small. */
export interface SquareSum {
  /** How many unknowns. */
  readonly size: number;
  /** No unknown may go below this. */
  readonly lowest: number;
  /**
   * The sum of squares at x.
   * @param into receives the normal equations, added to what is there; null when only the sum is wanted
   */
  sum(x: Float64Array, into: NormalEquations | null): number;
}

const MOST_ROUNDS = 40;
const MOST_TRIES = 10;
const LEAST_GAIN = 1e-5;

/**
 * Moves x downhill to a least sum of squares, yielding after each round so that it can be stopped; x is
 * never left at a larger sum than it began with.
 * @param x where to begin; changed in place
 * @returns the sum reached
 * Source: Levenberg–Marquardt; Nocedal and Wright (2006), Numerical Optimization, 10.3; unknowns at
 * their lowest that want to go lower are held, as in projected methods.
 */
export function* leastSquares(problem: SquareSum, x: Float64Array): Generator<number, number> {
  const { size } = problem;
  const at: NormalEquations = { normal: new Float64Array(size * size), slope: new Float64Array(size) };
  const damped = new Float64Array(size * size);
  const step = new Float64Array(size);
  const tried = new Float64Array(size);
  let damping = 1e-3;
  let reached = problem.sum(x, null);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    at.normal.fill(0);
    at.slope.fill(0);
    problem.sum(x, at);
    const before = reached;
    for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
      damped.set(at.normal);
      damp({ problem, x, at, damping }, damped, step);
      const sum = choleskySolve(damped, step, size) ? sumAfter(problem, x, step, tried) : Infinity;
      if (sum < reached) {
        x.set(tried);
        reached = sum;
        damping = Math.max(1e-9, damping / 5);
        break;
      }
      damping *= 6;
    }
    yield reached;
    if (!(before - reached > LEAST_GAIN * before)) break;
  }
  return reached;
}

interface Damping {
  problem: SquareSum;
  x: Float64Array;
  at: NormalEquations;
  damping: number;
}

/** Damps the normal equations and holds unknowns at their lowest that want to go lower. */
function damp({ problem: { size, lowest }, x, at: { slope }, damping }: Damping, damped: Float64Array, step: Float64Array): void {
  for (let i = 0; i < size; i++) {
    const held = f64(x, i) <= lowest && f64(slope, i) > 0;
    if (held) for (let k = 0; k < size; k++) damped[i * size + k] = damped[k * size + i] = 0;
    damped[i * size + i] = held ? 1 : f64(damped, i * size + i) * (1 + damping) + 1e-15;
    step[i] = held ? 0 : -f64(slope, i);
  }
}

/** The sum of squares a step from x, which is left in `tried`. */
function sumAfter(problem: SquareSum, x: Float64Array, step: Float64Array, tried: Float64Array): number {
  for (let i = 0; i < x.length; i++) tried[i] = Math.max(problem.lowest, f64(x, i) + f64(step, i));
  return problem.sum(tried, null);
}

/** Solves A·y = b for a positive definite A; A becomes its factor, b the solution; false when it is not. */
function choleskySolve(a: Float64Array, b: Float64Array, n: number): boolean {
  if (!choleskyFactor(a, n)) return false;
  solveFactored(a, b, n);
  return true;
}

/**
 * Turns a positive definite matrix into its Cholesky factor.
 * @param a n × n, row by row; its lower half is changed in place
 * @returns false when it is not positive definite
 */
export function choleskyFactor(a: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = f64(a, i * n + j);
      for (let k = 0; k < j; k++) sum -= f64(a, i * n + k) * f64(a, j * n + k);
      if (i === j) {
        if (!(sum > 0)) return false;
        a[i * n + i] = Math.sqrt(sum);
      } else {
        a[i * n + j] = sum / f64(a, j * n + j);
      }
    }
  }
  return true;
}

/**
 * Solves A·y = b.
 * @param a the factor of A that choleskyFactor left
 * @param b becomes the solution
 */
export function solveFactored(a: Float64Array, b: Float64Array, n: number): void {
  for (let i = 0; i < n; i++) {
    let sum = f64(b, i);
    for (let k = 0; k < i; k++) sum -= f64(a, i * n + k) * f64(b, k);
    b[i] = sum / f64(a, i * n + i);
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = f64(b, i);
    for (let k = i + 1; k < n; k++) sum -= f64(a, k * n + i) * f64(b, k);
    b[i] = sum / f64(a, i * n + i);
  }
}
