import { entryAt, u32 } from '../../base/at.ts';
import type { LaidFilm } from '../../ink/film/laid-film.ts';
import type { Layer } from '../layers.ts';
import { FilmSums } from './film-sums.ts';
import { type CoveredCells, STEP } from './film-tree.ts';

const films = new FilmSums();

/** The piles of films that lie on a map's cells. */
export interface LaidPiles {
  /** Pile of each cell. */
  pileOf: Uint32Array;
  /** Piles × 36. */
  reflectance: Float64Array;
  /** By pile its topmost film; null for bare paper. */
  tops: readonly (LaidFilm | null)[];
}

/**
 * What lies on every cell under a stack, and what it reflects; of its own, for keeping.
 * @param paper 36 bands
 * @throws EngineError 'stack.bad-bands'
 */
export function laidPiles(map: CoveredCells, layers: readonly Layer[], paper: ArrayLike<number>): LaidPiles {
  const reflectance = films.reflectances(map, layers, paper).slice();
  const { count, steps, leaf } = films.lower;
  const tops: (LaidFilm | null)[] = Array.from({ length: count }, () => null);
  for (let at = 0; at < steps.length; at += STEP) tops[u32(steps, at + 2)] = entryAt(layers, u32(steps, at)).laid;
  return { pileOf: leaf.slice(), reflectance, tops };
}
