import type { PlainCode } from '../../../base/code/plain-code.ts';
import { Real, type RealVariable } from '../../../base/code/values.ts';
import { POW25_7 } from '../../../colour/delta-e.ts';
import { SLACK } from '../../../colour/reach.ts';

export const SIN_60 = Math.sin(Math.PI / 3);
/** Where neither colour is bluish the mean hue lies 95° from the rotation's middle or more: |R_T| < 2·10⁻⁶. */
export const LEAST_TURN = 1e-6;
/** The most that a′ is of a. */
export const MOST_G = 1.5;
/** The most that (1 + G) times a mean chroma is more than that, which it is near 16.5. */
export const MOST_GAIN = 6.4;
/** Differences above this have no reach in a and b that is worked out here. */
export const MOST_DELTA_E = 5;

/**
 * Writes how far a colour's reach goes: how far apart colours are at most that are within a difference of it, of at most MOST_DELTA_E.
 * In L as `reachL` says. With ΔE00² = (ΔL/S_L)² + C² + H² + R_T·C·H: ΔC′² + ΔH′² = Δa′² + Δb² (law of cosines), a′ = (1 + G)·a,
 * 0 ≤ G ≤ 0.5; 1 ≤ S_H ≤ S_C = 1 + 0.045·C′, as T lies between 0.07 and 1.93; |R_T| ≤ 2 sin 60° √(C′⁷ ÷ (C′⁷ + 25⁷)). So the distance D in a
 * and b as the crow flies has (1 − |R_T| ÷ 2)·D² ≤ ΔE²·S_C² with S_C of a mean chroma of at most C + D ÷ 2 before a is stretched. With a
 * difference in L as well they lie nearer: within a distance, S_L and S_C are at most what they are at these reaches, which
 * are ΔE times these, so that (ΔL ÷ reach in L)² + (D ÷ reach in a and b)² ≤ 1. The bounds are ours.
 */
export class ReachCode {
  private readonly code: PlainCode;
  private readonly deltaE: RealVariable;

  constructor(code: PlainCode, deltaE: Real) {
    this.code = code;
    this.deltaE = code.real(deltaE.plus(SLACK));
  }

  inL(l: Real): Real {
    const slope = Real.of(1).minus(this.deltaE.times(0.0075));
    return this.deltaE.times(l.minus(50).size().times(0.015).plus(1)).over(slope);
  }

  /** Where no colour has a b below 0, and where one has. */
  inAb(a: RealVariable, b: RealVariable): { near: RealVariable; far: RealVariable } {
    const { code } = this;
    const chroma = code.real(a.times(a).plus(b.times(b)).root());
    const near = code.real(this.turned(chroma, Real.of(Math.sqrt(1 - LEAST_TURN))));
    const first = this.turned(chroma, Real.of(Math.sqrt(1 - SIN_60)));
    // No pair's mean chroma is more than at that distance, nor what greys leave of R_T.
    const most = code.real(chroma.plus(first.times(0.5)).plus(MOST_GAIN));
    const c3 = code.real(most.times(most).times(most));
    const c7 = code.real(c3.times(c3).times(most));
    const turn = c7.over(c7.plus(POW25_7)).root().times(SIN_60).plus(SLACK);
    const root = code.real(Real.of(1).minus(turn).root());
    return { near, far: code.real(this.turned(chroma, root)) };
  }

  private turned(chroma: Real, root: Real): Real {
    const { deltaE } = this;
    const times = (share: number, from: number): Real =>
      deltaE
        .times(
          chroma
            .plus(from)
            .times(0.045 * share)
            .plus(1),
        )
        .over(root.minus(deltaE.times(0.0225 * share)));
    return times(MOST_G, 0).least(times(1, MOST_GAIN));
  }
}
