import seedrandom from 'seedrandom';
import { say } from '../words/en/base/base.ts';
import { entryAt } from './at.ts';

/** A stream of integers that is the same on every machine for the same seed. */
export interface Random {
  /** An integer from 0 up to, not including, `below` (1 to 2^31). */
  int(below: number): number;
  /** One of the items. @throws RangeError when there are none */
  pick<T>(items: readonly T[]): T;
  /** A new array with the items in random order (Fisher–Yates). */
  shuffle<T>(items: readonly T[]): T[];
  /** True with probability `of` in `outOf`. */
  chance(of: number, outOf: number): boolean;
}

/**
 * A random stream from a seed; choices come from 32-bit integers only.
 * @param seed any text; the same text gives the same stream
 */
export function randomFrom(seed: string): Random {
  const next = seedrandom(seed);
  const int = (below: number): number => {
    if (!(below >= 1) || below > 2 ** 31 || !Number.isInteger(below)) {
      throw new RangeError(say.randomIntWantsWhole(below));
    }
    // Drop the incomplete last block so that every result is equally likely.
    const limit = 2 ** 32 - (2 ** 32 % below);
    let draw = next.int32() >>> 0;
    while (draw >= limit) draw = next.int32() >>> 0;
    return draw % below;
  };
  return {
    int,
    pick: (items) => {
      if (items.length === 0) throw new RangeError(say.nothingToPickFrom);
      return entryAt(items, int(items.length));
    },
    shuffle: (items) => {
      const out = [...items];
      for (let i = out.length - 1; i > 0; i--) {
        const j = int(i + 1);
        [out[i], out[j]] = [entryAt(out, j), entryAt(out, i)];
      }
      return out;
    },
    chance: (of, outOf) => int(outOf) < of,
  };
}
