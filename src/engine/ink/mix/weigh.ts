import { defined, f64, num } from '../../base/at.ts';
import type { Fitted } from './fit-shares.ts';
import type { MixColour } from './mix-colour.ts';

/** A mix as a balance lets it be weighed. */
export interface Weighed extends Fitted {
  /** g, one an ink, multiples of what the balance reads to, above 0. */
  amounts: number[];
}

/** How a mix is weighed. */
export interface Weighing {
  /** g/cm³, of all stocks. */
  density: readonly number[];
  /** How much to mix. */
  grams: number;
  /** What the balance reads to, g. */
  balanceG: number;
}

/**
 * Rounds a mix to what a balance reads to: of all ways to round each weight up or down that keep
 * the whole within half a step an ink, the one that comes nearest the target.
 * @returns without inks that round to nothing
 */
export function weighed(colour: MixColour, fitted: Fitted, { density, grams, balanceG }: Weighing): Weighed {
  const { inks, shares } = fitted;
  const weights = inks.map((ink, i) => f64(shares, i) * num(density, ink));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const steps = weights.map((weight) => ((weight / all) * grams) / balanceG);
  let best: Weighed | null = null;
  for (let ups = 0; ups < 1 << inks.length; ups++) {
    const whole = steps.map((step, i) => Math.floor(step + 1e-9) + ((ups >> i) & 1));
    const total = whole.reduce((sum, step) => sum + step, 0);
    if (total === 0 || Math.abs(total - grams / balanceG) > inks.length / 2) continue;
    const left = whole.map((_, i) => i).filter((i) => num(whole, i) > 0);
    const volumes = left.map((i) => num(whole, i) / num(density, num(inks, i)));
    const volume = volumes.reduce((sum, each) => sum + each, 0);
    const kept = left.map((i) => num(inks, i));
    const keptShares = Float64Array.from(volumes, (each) => each / volume);
    const deltaE = colour.deltaE(kept, keptShares);
    if (best !== null && !(deltaE < best.deltaE)) continue;
    // Divided by a whole number where there is one, so that 0.3 is not 0.30000000000000004.
    const perG = Math.round(1 / balanceG);
    const exact = Math.abs(perG * balanceG - 1) < 1e-9;
    const amounts = left.map((i) => (exact ? num(whole, i) / perG : num(whole, i) * balanceG));
    best = { inks: kept, shares: keptShares, deltaE, amounts };
  }
  return defined(best);
}
