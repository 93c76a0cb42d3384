import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import type { Lab } from '../../../src/engine/colour/lab.ts';
import { curveFromColour, nearestPossible } from '../../../src/engine/ink/film/curves.ts';
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

/** What is given otherwise than published. */
export interface Perturbation {
  names?: (film: string) => string;
  /** The last square first. */
  reversed?: boolean;
  /** What an instrument reads of a colour. */
  read?: (lab: Lab) => Lab;
  /** As reflectance: the smoothest that has the colour. */
  asCurves?: boolean;
}

/**
 * Fits films to paper, four solids and some overprints of each published set, and predicts the rest.
 * @param trained keys of the overprints that are fitted to
 */
export function missesOfRest(trained: readonly string[], change: Perturbation = {}): Misses & { looMeans: number[] } {
  const out = { pairs: [] as number[], cmy: [] as number[], more: [] as number[], looMeans: [] as number[] };
  for (const set of Object.values(published.sets) as unknown as Record<string, Lab>[]) {
    const keys = Object.keys(set).filter((key) => key !== 'W');
    const known = keys.filter((key) => key.length === 1 || trained.includes(key));
    const { names = (film) => film, read = (lab) => lab } = change;
    const reading = (key: string) => {
      const lab = read(set[key]!);
      return change.asCurves === true ? { reflectance: curveFromColour(nearestPossible(lab)) } : { lab };
    };
    const given = change.reversed === true ? known.toReversed() : known;
    const fit = fitFilms({ samples: given.map((key) => ({ films: filmsOf(key).map(names), ...reading(key) })), paper: reading('W') });
    out.looMeans.push(fit.looMean);
    for (const key of keys) {
      if (known.includes(key)) continue;
      const miss = deltaE2000(set[key]!, fit.predict(filmsOf(key).map(names)));
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
