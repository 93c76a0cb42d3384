import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import type { Lab } from '../../../src/engine/colour/lab.ts';
import { fitFilms } from '../../../src/engine/ink/fit/fit-stacks.ts';
import published from '../colour/process-overprints.json';

/** Misses of overprints that no fit has seen, ΔE00. */
export interface Misses {
  pairs: number[];
  cmy: number[];
  more: number[];
}

/** Print order of the sets, first down first. */
const ORDER = published.order;

const filmsOf = (key: string): string[] => ORDER.filter((film) => key.includes(film));

/**
 * Fits films to paper, four solids and some overprints of each published set, and predicts the rest.
 * @param trained keys of the overprints that are fitted to
 */
export function missesOfRest(trained: readonly string[]): Misses & { looMeans: number[] } {
  const out = { pairs: [] as number[], cmy: [] as number[], more: [] as number[], looMeans: [] as number[] };
  for (const set of Object.values(published.sets) as unknown as Record<string, Lab>[]) {
    const keys = Object.keys(set).filter((key) => key !== 'W');
    const known = keys.filter((key) => key.length === 1 || trained.includes(key));
    const fit = fitFilms({ samples: known.map((key) => ({ films: filmsOf(key), lab: set[key]! })), paper: { lab: set['W']! } });
    out.looMeans.push(fit.looMean);
    for (const key of keys) {
      if (known.includes(key)) continue;
      const miss = deltaE2000(set[key]!, fit.predict(filmsOf(key)));
      (key === 'CMY' ? out.cmy : key.length === 2 ? out.pairs : out.more).push(miss);
    }
  }
  return out;
}

/** The value below which a share of a list lies. */
export function quantile(list: readonly number[], share: number): number {
  const sorted = list.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
}
