import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { noteEveryWay } from '../../../../src/engine/pullorder/bound/every-way.ts';
import { SplitSearch } from '../../../../src/engine/pullorder/bound/split-search.ts';

const PLACES = 9;

function worthsOf(seed: string): Uint8Array {
  const random = randomFrom(seed);
  const triples = new Uint8Array(PLACES ** 3);
  for (let a = 0; a < PLACES; a++) {
    for (let b = 0; b < a; b++) {
      for (let c = 0; c < b; c++) noteEveryWay(triples, PLACES, [a, b, c], random.int(100));
    }
  }
  return triples;
}

/** What a split into groups of three is worth. */
function worth(triples: Uint8Array, split: readonly (readonly number[])[]): number {
  return split.reduce((sum, [a, b, c]) => sum + triples[(a! * PLACES + b!) * PLACES + c!]!, 0);
}

/** The most that any of the 280 splits of nine places into threes is worth. */
function mostOf(triples: Uint8Array, left: readonly number[]): number {
  if (left.length === 0) return 0;
  let most = 0;
  for (let i = 1; i < left.length; i++) {
    for (let j = 1; j < i; j++) {
      const rest = left.filter((_, at) => at !== 0 && at !== i && at !== j);
      most = Math.max(most, worth(triples, [[left[0]!, left[i]!, left[j]!]]) + mostOf(triples, rest));
    }
  }
  return most;
}

describe('SplitSearch', () => {
  it('should find the split that is worth most, as looking at all splits does', () => {
    for (let i = 0; i < 20; i++) {
      const triples = worthsOf(`worths ${i}`);
      const start = [
        [0, 1, 2],
        [3, 4, 5],
        [6, 7, 8],
      ];
      const search = new SplitSearch(start, { places: PLACES, triples }, randomFrom(`split ${i}`), { units: 0 });
      const best = search.best(200);
      expect(best.flat().sort()).toEqual(start.flat());
      expect(worth(triples, best), `case ${i}`).toBe(mostOf(triples, [0, 1, 2, 3, 4, 5, 6, 7, 8]));
    }
  });
});
