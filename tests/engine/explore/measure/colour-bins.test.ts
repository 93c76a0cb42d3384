import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { deltaE2000At } from '../../../../src/engine/colour/delta-e.ts';
import { WithinDeltaE } from '../../../../src/engine/colour/within-delta-e.ts';
import { ColourBins, MOST_ASKED } from '../../../../src/engine/explore/measure/colour-bins.ts';

/** Colours about a few middles all over Lab, bluish and grey ones among them. */
function colours(seed: string, count: number, spread: number): Float64Array {
  const random = randomFrom(seed);
  const at = (half: number): number => (random.int(2 ** 30) / 2 ** 29 - 1) * half;
  const middles = Array.from({ length: 9 }, () => [55 + at(55), at(100), at(100)]);
  return Float64Array.from({ length: count * 3 }, (_, i) => middles[Math.floor(i / 3) % 9]![i % 3]! + at(spread));
}

describe('ColourBins', () => {
  it.each([
    [2, 6],
    [0.1, 0.5],
    [5, 20],
  ])('should leave out no colour within ΔE00 %d, with lanes as without', (deltaE, spread) => {
    const [lanes, plain] = [new ColourBins(), new ColourBins(true)];
    let within = 0;
    let asked = 0;
    // More colours than fit in memory at first, then fewer in what is left of them.
    for (const count of [400, 60]) {
      const lab = colours(`bins ${deltaE} ${count}`, count + MOST_ASKED, spread);
      for (const bins of [lanes, plain]) {
        bins.start(new WithinDeltaE(deltaE));
        for (let i = 0; i < count; i++) bins.add(lab, i * 3, i);
        for (let i = 0; i < MOST_ASKED; i++) bins.ask(i, lab, (count + i) * 3, count + i);
      }
      const ends = lanes.find(MOST_ASKED).slice();
      expect(plain.find(MOST_ASKED)).toEqual(ends);
      const pairs = lanes.pairs.slice(0, ends.at(-1)! * 2);
      expect(plain.pairs.slice(0, pairs.length)).toEqual(pairs);
      for (let i = 0; i < MOST_ASKED; i++) {
        const answers = [...pairs.subarray((ends[i - 1] ?? 0) * 2, ends[i]! * 2)];
        const found = answers.filter((_, k) => k % 2 === 0);
        expect(answers.filter((_, k) => k % 2 === 1).every((name) => name === count + i)).toBe(true);
        const near = Array.from({ length: count }, (_, k) => k).filter((k) => deltaE2000At(lab, k * 3, lab, (count + i) * 3) <= deltaE);
        const known = new Set(found);
        expect(near.filter((k) => !known.has(k))).toEqual([]);
        expect(found.every((name, k) => k === 0 || found[k - 1]! < name)).toBe(true);
        within += near.length;
        asked += count;
      }
    }
    expect(within).toBeGreaterThan(100);
    expect(asked).toBeGreaterThan(within * 4);
  });
});
