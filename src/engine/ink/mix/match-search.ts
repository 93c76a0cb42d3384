import { defined, entryAt } from '../../base/at.ts';
import { fitShares, polishShares, type Fitted } from './fit-shares.ts';
import type { MixColour } from './mix-colour.ts';

// Shares of all inks together at which a fit may begin, the rest base.
const INK_TOTALS = [1, 0.3, 0.06];
// A fourth ink cannot mend what is as good as met.
const MET_DELTA_E = 0.03;
const EXTENDED = 60;
const POLISHED = 40;
const FITS_A_STEP = 24;

/**
 * Mixes near the target, of every choice of up to three inks and of the best with a fourth, each
 * with whatever base there is.
 * @param isBase which stocks are base
 * @param most inks beside the base, 1–4
 * @yields the share of the work that is done
 * @returns the best of them, in no order, at least one
 */
export function* searchMixes(colour: MixColour, isBase: readonly boolean[], most: number): Generator<number, Fitted[]> {
  const inks = isBase.map((_, i) => i).filter((i) => !isBase[i]);
  const bases = isBase.map((_, i) => i).filter((i) => isBase[i]);
  const all: Fitted[] =
    bases.length > 0
      ? [
          fitShares(
            colour,
            bases,
            bases.map(() => 1),
          ),
        ]
      : [];
  const sets = subsets(inks, Math.min(3, most));
  const smaller = new Map<string, Fitted>();
  for (const [i, set] of sets.entries()) {
    const fitted = fitFromBest(colour, set, bases, smaller);
    smaller.set(set.join(), fitted);
    all.push(fitted);
    if (i % FITS_A_STEP === FITS_A_STEP - 1) yield (0.7 * i) / sets.length;
  }
  if (most > 3) {
    const best = [...all].sort((a, b) => a.deltaE - b.deltaE).slice(0, EXTENDED);
    for (const [i, fitted] of best.entries()) {
      const used = fitted.inks.filter((ink) => !isBase[ink]);
      if (fitted.deltaE < MET_DELTA_E || used.length < 3) continue;
      for (const more of inks) if (!used.includes(more)) all.push(fitShares(colour, [...fitted.inks, more], [...fitted.shares, 0.03]));
      yield 0.7 + (0.25 * i) / best.length;
    }
  }
  const kept = bestOf(all, isBase);
  const polished: Fitted[] = [];
  for (const [i, fitted] of kept.entries()) {
    polished.push(polishShares(colour, fitted));
    if (i % FITS_A_STEP === FITS_A_STEP - 1) yield 0.95;
  }
  return polished;
}

/** Fits from the best two of several beginnings: even mixes more or less let down, and a smaller set that is one ink short. */
function fitFromBest(colour: MixColour, set: readonly number[], bases: readonly number[], smaller: ReadonlyMap<string, Fitted>): Fitted {
  const all = [...bases, ...set];
  const starts: number[][] = [];
  for (const total of bases.length > 0 ? INK_TOTALS : [1]) {
    const left = Math.max(1e-3, 1 - total) / Math.max(1, bases.length);
    starts.push(all.map((_, i) => (i < bases.length ? left : total / set.length)));
  }
  if (set.length > 1) {
    let best: Fitted | null = null;
    for (const ink of set) {
      const held = smaller.get(set.filter((other) => other !== ink).join());
      if (held !== undefined && (best === null || held.deltaE < best.deltaE)) best = held;
    }
    if (best !== null) {
      const held = best;
      starts.push(all.map((ink) => Math.max(0.01, held.shares[held.inks.indexOf(ink)] ?? 0)));
    }
  }
  const ranked = starts
    .map((start) => {
      const total = start.reduce((a, b) => a + b, 0);
      const shares = start.map((share) => share / total);
      return { shares, deltaE: colour.deltaE(all, shares) };
    })
    .sort((a, b) => a.deltaE - b.deltaE);
  const first = fitShares(colour, all, entryAt(ranked, 0).shares);
  if (first.deltaE < MET_DELTA_E || ranked.length === 1) return first;
  const second = fitShares(colour, all, entryAt(ranked, 1).shares);
  return second.deltaE < first.deltaE ? second : first;
}

/** The nearest mixes, and the nearest of each number of inks. */
function bestOf(all: readonly Fitted[], isBase: readonly boolean[]): Fitted[] {
  const sorted = [...all].sort((a, b) => a.deltaE - b.deltaE);
  const kept = new Map<string, Fitted>();
  const keep = (fitted: Fitted): void => {
    const key = [...fitted.inks].sort((a, b) => a - b).join();
    if (!kept.has(key)) kept.set(key, fitted);
  };
  for (const fitted of sorted.slice(0, POLISHED)) keep(fitted);
  for (let count = 1; count <= 4; count++) {
    sorted
      .filter(({ inks }) => inks.filter((ink) => !isBase[ink]).length === count)
      .slice(0, 6)
      .forEach(keep);
  }
  return [...kept.values()];
}

function subsets(items: readonly number[], most: number): number[][] {
  let level: number[][] = [[]];
  const out: number[][] = [];
  for (let size = 1; size <= most; size++) {
    level = level.flatMap((set) => items.filter((item) => set.length === 0 || item > defined(set.at(-1))).map((item) => [...set, item]));
    out.push(...level);
  }
  return out;
}
