import { f64 } from '../../base/at.ts';
import { choleskyFactor, solveFactored } from '../../ink/fit/least-squares.ts';

/** Newton's steps; far more than a fit with a ridge takes, and always as many at most. */
const MOST_STEPS = 40;
/** A step that changes no weight by more is the last. */
const SMALL = 1e-10;
const MOST_HALVINGS = 30;

/** Pairs in which one was chosen over the other. */
export interface Pairs {
  /** Numbers of a pair: traits of the chosen minus those of the other. */
  size: number;
  /** Pairs × size. */
  differences: Float64Array;
  /** How many times each pair counts. */
  counts: Float64Array;
}

/** What was fitted. */
export interface LogisticFit {
  weights: Float64Array;
  /** Cholesky factor of the curvature at the weights, size × size: its inverse is the weights' covariance. */
  factor: Float64Array;
}

/**
 * Weights w under which a pair goes the way it went with the chance 1 ÷ (1 + exp(−w·difference)), with a
 * Gaussian prior round 0: the most likely ones, by Newton's method (iteratively reweighted least squares).
 * @param ridge how much is known before of each weight: 1 ÷ its variance; above 0, or the pairs must settle it
 * @returns null when neither pairs nor ridge settle the weights
 * Source: R. A. Bradley and M. E. Terry, Biometrika 39 (1952) 324–345; the covariance is Laplace's
 * approximation.
 */
export function fitPairs(pairs: Pairs, ridge: Float64Array): LogisticFit | null {
  const { size } = pairs;
  const weights = new Float64Array(size);
  const trial = new Float64Array(size);
  let loss = lossOf(pairs, ridge, weights);
  for (let step = 0; step < MOST_STEPS; step++) {
    const { gradient, curvature } = slopeOf(pairs, ridge, weights);
    if (!choleskyFactor(curvature, size)) return null;
    solveFactored(curvature, gradient, size);
    let part = 1;
    let next = Infinity;
    for (let halving = 0; halving < MOST_HALVINGS; halving++, part /= 2) {
      for (let i = 0; i < size; i++) trial[i] = f64(weights, i) - part * f64(gradient, i);
      next = lossOf(pairs, ridge, trial);
      if (next <= loss) break;
    }
    // No step that is not uphill in the last digits.
    if (!(next <= loss)) break;
    weights.set(trial);
    loss = next;
    if (gradient.every((change) => Math.abs(change) < SMALL)) break;
  }
  const { curvature: factor } = slopeOf(pairs, ridge, weights);
  return choleskyFactor(factor, size) ? { weights, factor } : null;
}

/** Variance of w·x under the fit. @param x size numbers */
export function varianceOf({ factor }: LogisticFit, x: Float64Array): number {
  // With A = L·Lᵀ, x·A⁻¹·x is the square of L⁻¹·x.
  const size = x.length;
  const solved = new Float64Array(size);
  let sum = 0;
  for (let i = 0; i < size; i++) {
    let left = f64(x, i);
    for (let k = 0; k < i; k++) left -= f64(factor, i * size + k) * f64(solved, k);
    solved[i] = left / f64(factor, i * size + i);
    sum += f64(solved, i) ** 2;
  }
  return sum;
}

/**
 * How likely the pairs are under a ridge, whatever the weights: the logarithm, but for what is the same for every ridge.
 * Source: D. J. C. MacKay, Neural Computation 4 (1992) 415–447, by Laplace's approximation.
 */
export function evidenceOf(pairs: Pairs, ridge: Float64Array, { weights, factor }: LogisticFit): number {
  let sum = -lossOf(pairs, ridge, weights);
  for (let i = 0; i < pairs.size; i++) sum += Math.log(f64(ridge, i)) / 2 - Math.log(f64(factor, i * pairs.size + i));
  return sum;
}

function lossOf({ size, differences, counts }: Pairs, ridge: Float64Array, weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < size; i++) sum += (f64(ridge, i) * f64(weights, i) ** 2) / 2;
  counts.forEach((count, pair) => {
    const margin = dot(differences, pair * size, weights);
    // log(1 + exp(−margin)) without overflow.
    sum += count * (Math.max(0, -margin) + Math.log1p(Math.exp(-Math.abs(margin))));
  });
  return sum;
}

function slopeOf({ size, differences, counts }: Pairs, ridge: Float64Array, weights: Float64Array) {
  const gradient = Float64Array.from(weights, (weight, i) => weight * f64(ridge, i));
  const curvature = new Float64Array(size * size);
  for (let i = 0; i < size; i++) curvature[i * size + i] = f64(ridge, i);
  counts.forEach((count, pair) => {
    const base = pair * size;
    const missed = 1 / (1 + Math.exp(dot(differences, base, weights)));
    const bend = count * missed * (1 - missed);
    for (let i = 0; i < size; i++) {
      const at = f64(differences, base + i);
      if (at === 0) continue;
      gradient[i] = f64(gradient, i) - count * missed * at;
      for (let k = 0; k <= i; k++) curvature[i * size + k] = f64(curvature, i * size + k) + bend * at * f64(differences, base + k);
    }
  });
  return { gradient, curvature };
}

function dot(list: Float64Array, from: number, weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += f64(list, from + i) * f64(weights, i);
  return sum;
}
