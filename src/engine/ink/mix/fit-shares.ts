import { f64, num } from '../../base/at.ts';
import type { MixColour } from './mix-colour.ts';

const MOST_STEPS = 40;
const MOST_TRIES = 8;
// Closer than any balance or eye.
const CLOSE_DELTA_E = 0.005;
const LEAST_GAIN = 2e-3;
const LEAST_SHARE = 1e-5;

/** A mix by volume and how far it is from the target. */
export interface Fitted {
  inks: number[];
  /** By volume, 0 or more, summing to 1. */
  shares: Float64Array;
  deltaE: number;
}

/**
 * The shares of some inks that come nearest the target, from where they are given.
 * @param start shares by volume, all above 0
 * Source: Levenberg–Marquardt on the residuals, with share = u² / Σu² so that none is below 0.
 */
export function fitShares(colour: MixColour, inks: readonly number[], start: ArrayLike<number>): Fitted {
  const n = inks.length;
  const shares = normalised(Array.from(start));
  const u = shares.map((share) => Math.sqrt(share));
  const tried = new Float64Array(n);
  const triedShares = new Float64Array(n);
  const slopeU = new Float64Array(3 * n);
  const matrix = new Float64Array(n * n);
  const step = new Float64Array(n);
  let deltaE = colour.deltaE(inks, shares);
  let damping = 0.01;
  for (let i = 0; i < MOST_STEPS && deltaE > CLOSE_DELTA_E && n > 1; i++) {
    colour.slopes(inks, shares);
    const { residual, slope } = colour;
    // d share_i / d u_j = 2 u_j (δ_ij − share_i) when Σu² = 1.
    for (let row = 0; row < 3; row++) {
      let mean = 0;
      for (let k = 0; k < n; k++) mean += f64(slope, row * 8 + k) * f64(shares, k);
      for (let k = 0; k < n; k++) slopeU[row * n + k] = 2 * f64(u, k) * (f64(slope, row * 8 + k) - mean);
    }
    const [r0, r1, r2] = residual as unknown as [number, number, number];
    const before = deltaE;
    for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
      for (let a = 0; a < n; a++) {
        step[a] = -(f64(slopeU, a) * r0 + f64(slopeU, n + a) * r1 + f64(slopeU, 2 * n + a) * r2);
        for (let b = 0; b < n; b++) {
          const sum =
            f64(slopeU, a) * f64(slopeU, b) + f64(slopeU, n + a) * f64(slopeU, n + b) + f64(slopeU, 2 * n + a) * f64(slopeU, 2 * n + b);
          matrix[a * n + b] = a === b ? sum * (1 + damping) + 1e-9 + damping : sum;
        }
      }
      solve(matrix, step, n);
      let size = 0;
      for (let k = 0; k < n; k++) {
        tried[k] = f64(u, k) + f64(step, k);
        size += f64(tried, k) * f64(tried, k);
      }
      for (let k = 0; k < n; k++) triedShares[k] = (f64(tried, k) * f64(tried, k)) / size;
      const reached = size > 0 ? colour.deltaE(inks, triedShares) : Infinity;
      if (reached < deltaE) {
        const scale = 1 / Math.sqrt(size);
        for (let k = 0; k < n; k++) {
          u[k] = f64(tried, k) * scale;
          shares[k] = f64(triedShares, k);
        }
        deltaE = reached;
        damping /= 6;
        break;
      }
      damping *= 5;
    }
    if (before - deltaE < LEAST_GAIN * (0.1 + before)) break;
  }
  return tidy(colour, inks, shares, deltaE);
}

/**
 * Goes downhill on ΔE00 itself by exchanging ever smaller amounts between two inks, for the last
 * bit that the residuals cannot give.
 */
export function polishShares(colour: MixColour, fitted: Fitted): Fitted {
  const { inks } = fitted;
  const shares = Float64Array.from(fitted.shares);
  let { deltaE } = fitted;
  for (let size = 0.3; size > 0.002 && deltaE > CLOSE_DELTA_E; size /= 2) {
    for (let from = 0; from < inks.length; from++) {
      for (let to = 0; to < inks.length; to++) {
        if (from === to || shares[from] === 0) continue;
        const [keptFrom, keptTo] = [f64(shares, from), f64(shares, to)];
        const amount = Math.min(keptFrom, size * Math.max(Math.min(keptFrom, keptTo), 0.02));
        shares[from] = keptFrom - amount;
        shares[to] = keptTo + amount;
        const reached = colour.deltaE(inks, shares);
        if (reached < deltaE) deltaE = reached;
        else {
          shares[from] = keptFrom;
          shares[to] = keptTo;
        }
      }
    }
  }
  return tidy(colour, inks, shares, deltaE);
}

/** Without the inks of which hardly anything is left. */
function tidy(colour: MixColour, inks: readonly number[], shares: Float64Array, deltaE: number): Fitted {
  const kept = inks.map((_, k) => k).filter((k) => f64(shares, k) >= LEAST_SHARE);
  if (kept.length === inks.length) return { inks: [...inks], shares, deltaE };
  const left = { inks: kept.map((k) => num(inks, k)), shares: normalised(kept.map((k) => f64(shares, k))) };
  return { ...left, deltaE: colour.deltaE(left.inks, left.shares) };
}

function normalised(values: number[]): Float64Array {
  const sum = values.reduce((all, value) => all + value, 0);
  return Float64Array.from(values, (value) => value / sum);
}

/** Solves a small positive definite system in place: Gauss without exchanging rows. */
function solve(a: Float64Array, b: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) {
    const pivot = f64(a, k * n + k);
    for (let row = k + 1; row < n; row++) {
      const factor = f64(a, row * n + k) / pivot;
      if (factor === 0) continue;
      for (let column = k; column < n; column++) a[row * n + column] = f64(a, row * n + column) - factor * f64(a, k * n + column);
      b[row] = f64(b, row) - factor * f64(b, k);
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    for (let column = k + 1; column < n; column++) b[k] = f64(b, k) - f64(a, k * n + column) * f64(b, column);
    b[k] = f64(b, k) / f64(a, k * n + k);
  }
}
