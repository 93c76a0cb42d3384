import { f64, num } from '../../base/at.ts';
import type { Xyz } from '../../colour/lab.ts';
import type { Solid } from '../film/solid.ts';

const NEWTON_STEPS = 40;
const HALVINGS = 40;

/**
 * The smoothest curve of shares t = (tanh z + 1) / 2, 0 < t < 1, with Σ weights · t = target:
 * among all z, the one whose steps from band to band have the least sum of squares.
 * @param solid of the weights
 * @param target inside the solid; how far inside is the caller's to check
 * @returns a share a band, or null when Newton's method found none (target outside, or so near the
 *   surface that the curve becomes a step)
 * Source: Burns (2020), Color Res. Appl. 45(1), "Numerical methods for smoothest reflectance
 * reconstruction", the least hyperbolic tangent slope squared method.
 */
export function leastSlopeShares(solid: Solid, target: Readonly<Xyz>): Float64Array | null {
  const n = solid.weights.length / 3;
  const state = new Float64Array(n + 3);
  if (newton(solid, target, state)) return shares(state, n);

  // Walk outwards from the middle, where z = 0 solves, each solution starting the next.
  state.fill(0);
  const held = new Float64Array(n + 3);
  let reached = 0;
  let step = 0.5;
  for (let tries = 0; tries < HALVINGS && reached < 1; tries++) {
    const next = Math.min(1, reached + step);
    const point = solid.centre.map((c, i) => c + next * (num(target, i) - c)) as Xyz;
    held.set(state);
    if (newton(solid, point, state)) {
      reached = next;
    } else {
      state.set(held);
      step /= 2;
    }
  }
  return reached === 1 ? shares(state, n) : null;
}

function shares(state: Float64Array, n: number): Float64Array {
  return Float64Array.from({ length: n }, (_, i) => (Math.tanh(f64(state, i)) + 1) / 2);
}

/** Improves z (n numbers) and the three multipliers behind it; false when it does not settle. */
function newton(solid: Solid, target: Readonly<Xyz>, state: Float64Array): boolean {
  const { weights } = solid;
  const n = weights.length / 3;
  const size = n + 3;
  const width = size + 1;
  const system = new Float64Array(size * width);
  const scale = Math.max(solid.centre[0], solid.centre[1], solid.centre[2]);
  for (let round = 0; round < NEWTON_STEPS; round++) {
    system.fill(0);
    for (let c = 0; c < 3; c++) system[(n + c) * width + size] = num(target, c);
    for (let i = 0; i < n; i++) {
      const tanh = Math.tanh(f64(state, i));
      const slope = (1 - tanh * tanh) / 2;
      const row = i * width;
      let pull = 0;
      for (let c = 0; c < 3; c++) {
        const w = f64(weights, 3 * i + c);
        pull += w * f64(state, n + c);
        system[row + n + c] = slope * w;
        system[(n + c) * width + i] = slope * w;
        system[(n + c) * width + size] = f64(system, (n + c) * width + size) - (w * (tanh + 1)) / 2;
      }
      const before = i > 0 ? 2 : 0;
      const after = i < n - 1 ? 2 : 0;
      system[row + i] = before + after - 2 * slope * tanh * pull;
      let force = (before + after) * f64(state, i) + slope * pull;
      if (i > 0) {
        system[row + i - 1] = -2;
        force -= 2 * f64(state, i - 1);
      }
      if (i < n - 1) {
        system[row + i + 1] = -2;
        force -= 2 * f64(state, i + 1);
      }
      system[row + size] = -force;
    }
    let miss = 0;
    for (let c = 0; c < 3; c++) miss = Math.max(miss, Math.abs(f64(system, (n + c) * width + size)));
    if (!solve(system, size)) return false;
    let moved = 0;
    for (let i = 0; i < size; i++) {
      const by = f64(system, i * width + size);
      if (!Number.isFinite(by)) return false;
      state[i] = f64(state, i) + by;
      if (i < n) moved = Math.max(moved, Math.abs(by));
    }
    if (moved < 1e-9 && miss < 1e-11 * scale) return true;
  }
  return false;
}

/** Gauss elimination with row exchange; the solution replaces the last column. */
function solve(system: Float64Array, size: number): boolean {
  const width = size + 1;
  for (let column = 0; column < size; column++) {
    let best = column;
    for (let row = column + 1; row < size; row++) {
      const here = Math.abs(f64(system, row * width + column));
      if (here > Math.abs(f64(system, best * width + column))) best = row;
    }
    const pivot = f64(system, best * width + column);
    if (!(Math.abs(pivot) > 1e-300)) return false;
    if (best !== column) {
      for (let k = column; k < width; k++) {
        const kept = f64(system, column * width + k);
        system[column * width + k] = f64(system, best * width + k);
        system[best * width + k] = kept;
      }
    }
    for (let row = column + 1; row < size; row++) {
      const factor = f64(system, row * width + column) / pivot;
      if (factor === 0) continue;
      for (let k = column; k < width; k++) {
        system[row * width + k] = f64(system, row * width + k) - factor * f64(system, column * width + k);
      }
    }
  }
  for (let row = size - 1; row >= 0; row--) {
    let sum = f64(system, row * width + size);
    for (let k = row + 1; k < size; k++) sum -= f64(system, row * width + k) * f64(system, k * width + size);
    system[row * width + size] = sum / f64(system, row * width + row);
  }
  return true;
}
