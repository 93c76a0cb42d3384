import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { compile, wordCost } from '../../../../src/engine/pullorder/model.ts';
import type { SearchState } from '../../../../src/engine/pullorder/search/search.ts';
import { inStages } from '../../../../src/engine/pullorder/search/stages.ts';

/** Sheets that no search is done with in the work of these tests. */
function shuffledSheets(seed: string) {
  const random = randomFrom(seed);
  const sheets = Array.from({ length: 13 }, () => {
    const screens = random.shuffle([...Array(9).keys()]).slice(0, 7);
    const overlaps = screens.flatMap((_, b) =>
      screens.slice(0, b).flatMap((__, a): [number, number][] => (random.chance(2, 5) ? [[a, b]] : [])),
    );
    return { pulls: screens.map((s) => ({ screen: `S${s}`, ink: `I${s % 4}` })), overlaps };
  });
  return compile({ sheets });
}

const SIZES = [150_000, 100_000, 120_000, 100_000];

/** All that a search comes to, and the work until then. */
function course(seed: string, units: number, until: number): (SearchState & { spent: number })[] {
  const meter = { units: 0 };
  const states: (SearchState & { spent: number })[] = [];
  for (const state of inStages(shuffledSheets(seed), { seed, meter, from: [], units, sizes: SIZES })) {
    states.push({ ...state, spent: meter.units });
    if (meter.units >= until) break;
  }
  return states;
}

describe('inStages', () => {
  it('should go the same way whatever it is given beyond the first stage', () => {
    const short = course('way', 300_000, 330_000);
    expect(course('way', 5_000_000, 330_000)).toEqual(short);
    expect(short.at(-1)!.spent).toBeGreaterThan(330_000);
  });

  it('should never fall back with more work', () => {
    const { kindModel } = shuffledSheets('a');
    const states = course('a', 700_000, 500_000);
    for (const [i, { word, bound }] of states.entries()) {
      const before = states[Math.max(0, i - 1)]!;
      expect(wordCost(kindModel, word), `${i}`).toBeLessThanOrEqual(wordCost(kindModel, before.word));
      expect(bound.mounts, `${i}`).toBeGreaterThanOrEqual(before.bound.mounts);
      expect(bound.setUps, `${i}`).toBeGreaterThanOrEqual(before.bound.setUps);
    }
    expect(states.at(-1)!.spent).toBeGreaterThan(500_000);
  });
});
