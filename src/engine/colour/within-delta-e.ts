import { f64 } from '../base/at.ts';
import { deltaE2000At } from './delta-e.ts';

/** What rounding may add to a difference or take from it, ΔE00; it stays far below. */
export const SLACK = 1e-9;
export const SIN_60 = Math.sin(Math.PI / 3);
/** Where neither colour is bluish the mean hue lies 95° from the rotation's middle or more: |R_T| < 2·10⁻⁶. */
export const LEAST_TURN = 1e-6;
/** The most that a′ is of a. */
export const MOST_G = 1.5;
/** The most that (1 + G) times a mean chroma is more than that, which it is near 16.5. */
export const MOST_GAIN = 6.4;
/** Whole chromas for which the most is known that a′ is of a. */
const CHROMAS = 128;
/** By mean chroma, rounded down: 1 + G, which falls with it. */
const MOST_STRETCH = Float64Array.from({ length: CHROMAS }, (_, c) => 1.5 - 0.5 * Math.sqrt(c ** 7 / (c ** 7 + 25 ** 7)) + SLACK);

/** What bounds say of two colours and a difference. */
const OUTSIDE = -1;
const UNSURE = 0;
const INSIDE = 1;

/**
 * Asks whether colours are within a difference: the same answer as of deltaE2000At, which is mostly
 * not worked out. With ΔE00² = (ΔL/S_L)² + C² + H² + R_T·C·H:
 * ΔC′² + ΔH′² = Δa′² + Δb² (law of cosines), a′ = (1 + G)·a, 0 ≤ G ≤ 0.5 falls with the mean chroma;
 * 1 ≤ S_L ≤ 1 + 0.015·|L − 50|; 1 ≤ S_H ≤ S_C = 1 + 0.045·C′, as T lies between 0.07 and 1.93;
 * |R_T| ≤ 2 sin 60° √(C′⁷ ÷ (C′⁷ + 25⁷)) ≤ 2 sin 60° (C′ ÷ 25)³ up to C′ = 25. So
 * ΔE00² ≤ ΔL² + (1 + greatest |R_T| ÷ 2)(greatest (1 + G)²·Δa² + Δb²), and
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
    const known = this.judge(one, i, two, j);
    return known === UNSURE ? deltaE2000At(one, i, two, j) <= this.deltaE : known === INSIDE;
  }

  /** What the bounds say: INSIDE, OUTSIDE or UNSURE. Parameters as for `holds`. */
  private judge(one: Float64Array, i: number, two: Float64Array, j: number): number {
    const dL = f64(one, i) - f64(two, j);
    const a1 = f64(one, i + 1);
    const b1 = f64(one, i + 2);
    const a2 = f64(two, j + 1);
    const b2 = f64(two, j + 2);
    const da = (a1 - a2) * (a1 - a2);
    const db = (b1 - b2) * (b1 - b2);
    const byL = dL / (1 + 0.0075 * Math.abs(f64(one, i) + f64(two, j) - 100));
    const mean = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2;
    const stretch = f64(MOST_STRETCH, mean < CHROMAS ? Math.floor(mean) : CHROMAS - 1);
    const chroma = stretch * mean;
    const share = chroma < 25 ? chroma / 25 : 1;
    const turn = b1 >= 0 && b2 >= 0 ? LEAST_TURN : SIN_60 * share * share * share;
    const sC = 1 + 0.045 * chroma;
    if ((1 - turn) * (da + db) > (this.outside - byL * byL) * sC * sC) return OUTSIDE;
    return dL * dL + (1 + turn) * (stretch * stretch * da + db) <= this.inside ? INSIDE : UNSURE;
  }

  /** How far apart in L two colours are at most of which one has this L, when they are within the difference. */
  reachL(l: number): number {
    // From ΔL ÷ (1 + 0.015·(|L − 50| + ΔL ÷ 2)) ≤ ΔE; of differences beyond 130 nothing is said.
    const slope = 1 - 0.0075 * this.deltaE;
    return slope > 0 ? ((this.deltaE + SLACK) * (1 + 0.015 * Math.abs(l - 50))) / slope : Infinity;
  }
}
