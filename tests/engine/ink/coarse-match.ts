import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../src/engine/colour/lab.ts';
import { stackReflectance } from '../../../src/engine/ink/film/film.ts';
import type { Ink } from '../../../src/engine/ink/types.ts';

/**
 * A match without any method of its own: every four of the inks with the base, on a coarse grid of
 * shares by volume, then the best places refined by exchanging ever smaller amounts.
 * @returns the least ΔE00 found
 */
export function coarseMatch(target: Lab, stocks: readonly Ink[], ground: ArrayLike<number>, keep = 25): number {
  const inks = stocks.filter((ink) => ink.role !== 'base');
  const bases = stocks.filter((ink) => ink.role === 'base');
  const difference = (used: readonly Ink[], shares: readonly number[]): number => {
    const sum = (of: 'kx' | 'sx'): number[] =>
      Array.from({ length: 36 }, (_, band) => used.reduce((all, ink, i) => all + shares[i]! * ink[of][band]!, 0));
    return deltaE2000(target, labD50(stackReflectance([{ kx: sum('kx'), sx: sum('sx') }], ground)));
  };
  const best: { used: Ink[]; shares: number[]; deltaE: number }[] = [];
  const size = Math.min(4, inks.length);
  for (const set of choose(inks, size)) {
    const used = [...bases, ...set];
    for (const shares of grid(used.length)) {
      const deltaE = difference(used, shares);
      if (best.length < keep || deltaE < best.at(-1)!.deltaE) {
        best.push({ used, shares, deltaE });
        best.sort((a, b) => a.deltaE - b.deltaE);
        best.length = Math.min(best.length, keep);
      }
    }
  }
  for (const place of best) {
    for (let step = 0.1; step > 5e-5;) {
      let moved = false;
      for (let from = 0; from < place.shares.length; from++) {
        for (let to = 0; to < place.shares.length; to++) {
          if (from === to || place.shares[from] === 0) continue;
          const amount = Math.min(step, place.shares[from]!);
          const shares = place.shares.map((share, i) => share + (i === to ? amount : i === from ? -amount : 0));
          const deltaE = difference(place.used, shares);
          if (deltaE < place.deltaE) {
            place.shares = shares;
            place.deltaE = deltaE;
            moved = true;
          }
        }
      }
      if (!moved) step /= 2;
    }
  }
  return Math.min(...best.map(({ deltaE }) => deltaE));
}

function choose<T>(items: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return items.flatMap((item, i) => choose(items.slice(i + 1), size - 1).map((rest) => [item, ...rest]));
}

/** Shares in steps of a quarter, summing to 1. */
function grid(count: number, left = 4): number[][] {
  if (count === 1) return [[left / 4]];
  return Array.from({ length: left + 1 }, (_, n) => grid(count - 1, left - n).map((rest) => [n / 4, ...rest])).flat();
}
