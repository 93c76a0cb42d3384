import { f64 } from '../base/at.ts';
import { deltaE2000At } from './delta-e.ts';

/** What rounding may add to a difference or take from it, ΔE00; it stays far below. */
const SLACK = 1e-9;
const SIN_60 = Math.sin(Math.PI / 3);
/** Where neither colour is bluish the mean hue lies 95° from the rotation's middle or more: |R_T| < 2·10⁻⁶. */
const LEAST_ABOVE = 1 - 1e-6;
/** a′ is a, or up to half as much again. */
const MOST_G = 1.5;

/**
 * Asks whether colours are within a difference: the same answer as of deltaE2000At, which is mostly
 * not worked out. With ΔE00² = (ΔL/S_L)² + C² + H² + R_T·C·H:
 * ΔC′² + ΔH′² = Δa′² + Δb² (law of cosines), a′ = g·a with 1 ≤ g ≤ 1.5; 1 ≤ S_L ≤ 1 + 0.015·|L − 50|;
 * 1 ≤ S_H ≤ S_C = 1 + 0.045·C′, as T lies between 0.07 and 1.93;
 * |R_T| ≤ 2 sin 60° √(C′⁷ ÷ (C′⁷ + 25⁷)) ≤ 2 sin 60° (C′ ÷ 25)³ up to C′ = 25. So
 * ΔE00² ≤ ΔL² + (1 + sin 60°)(2.25·Δa² + Δb²), and
 * ΔE00² ≥ (ΔL ÷ greatest S_L)² + (1 − greatest |R_T| ÷ 2)(Δa² + Δb²) ÷ (greatest S_C)².
 * Source of the formula: see delta-e.ts; the bounds are ours.
 */
export class WithinDeltaE {
  private readonly deltaE: number;
  /** Squares below which a difference is within for sure, and above which it is not. */
  private readonly inside: number;
  private readonly outside: number;

  /** @param deltaE ΔE00, 0 or more */
  constructor(deltaE: number) {
    this.deltaE = deltaE;
    this.inside = Math.max(0, deltaE - SLACK) ** 2;
    this.outside = (deltaE + SLACK) ** 2;
  }

  /**
   * Whether ΔE00 of two colours is at most the difference.
   * @param i where the L of one colour lies, a and b behind it
   * @param j where that of the other lies
   */
  holds(one: Float64Array, i: number, two: Float64Array, j: number): boolean {
    const dL = f64(one, i) - f64(two, j);
    const a1 = f64(one, i + 1);
    const b1 = f64(one, i + 2);
    const a2 = f64(two, j + 1);
    const b2 = f64(two, j + 2);
    const da = (a1 - a2) * (a1 - a2);
    const db = (b1 - b2) * (b1 - b2);
    const byL = dL / (1 + 0.0075 * Math.abs(f64(one, i) + f64(two, j) - 100));
    // |a| and |b| together are no less than the chroma.
    const chroma = (MOST_G * (Math.abs(a1) + Math.abs(a2)) + Math.abs(b1) + Math.abs(b2)) / 2;
    const share = Math.min(1, chroma / 25);
    const least = b1 >= 0 && b2 >= 0 ? LEAST_ABOVE : 1 - SIN_60 * share * share * share;
    const sC = 1 + 0.045 * chroma;
    if (least * (da + db) > (this.outside - byL * byL) * sC * sC) return false;
    if (dL * dL + (1 + SIN_60) * (MOST_G * MOST_G * da + db) <= this.inside) return true;
    return deltaE2000At(one, i, two, j) <= this.deltaE;
  }

  /** How far apart in L two colours are at most of which one has this L, when they are within the difference. */
  reachL(l: number): number {
    // From ΔL ÷ (1 + 0.015·(|L − 50| + ΔL ÷ 2)) ≤ ΔE; of differences beyond 130 nothing is said.
    const slope = 1 - 0.0075 * this.deltaE;
    return slope > 0 ? ((this.deltaE + SLACK) * (1 + 0.015 * Math.abs(l - 50))) / slope : Infinity;
  }
}
