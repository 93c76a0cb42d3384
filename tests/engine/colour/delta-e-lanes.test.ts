import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { DeltaELanes, type WeighedPairs } from '../../../src/engine/colour/delta-e-lanes.ts';
import { deltaE2000At } from '../../../src/engine/colour/delta-e.ts';
import table from '../../published/colour/ciede2000-sharma34.json' with { type: 'json' };

/** Colours with greys, equal ones and ones of exactly opposite hue among them, and pairs of them. */
function listOf(seed: string, colours: number, count: number): { lab: Float64Array; pairs: Uint32Array } {
  const random = randomFrom(seed);
  const lab = new Float64Array(colours * 3);
  for (let i = 0; i < lab.length; i += 3) {
    lab.set([random.int(10_001) / 100, random.int(2001) / 10 - 100, random.int(2001) / 10 - 100], i);
    if (i % 15 === 0) lab.fill(0, i + 1, i + 3);
    if (i % 21 === 0 && i > 0) lab.set([lab[i]!, -lab[i - 2]!, -lab[i - 1]!], i);
  }
  const pairs = Uint32Array.from({ length: count * 2 }, () => random.int(colours));
  for (let i = 2; i < pairs.length; i += 10) pairs[i] = Math.min(colours - 1, pairs[i + 1]! + (i % 20 === 2 ? 1 : 0));
  return { lab, pairs };
}

describe('DeltaELanes', () => {
  it('should give every bit as plain code does, one list after another', () => {
    const lanes = new DeltaELanes(0.01);
    const plain = new DeltaELanes(0.01, true);
    const random = randomFrom('weights');
    for (const [colours, count] of [
      [5, 1],
      [700, 2501],
      [90, 90],
      [3000, 9000],
      [3, 0],
    ] as const) {
      const { lab, pairs } = listOf(`lanes ${colours}`, colours, count);
      lanes.hold(lab, colours);
      plain.hold(lab, colours);
      const weights = Float64Array.from({ length: count }, () => random.int(2 ** 20) / 2 ** 10);
      const found = lanes.weigh(pairs, weights);
      expect(found).toEqual(plain.weigh(pairs, weights));
      const wanted: WeighedPairs = [0, 0];
      weights.forEach((weight, i) => {
        const deltaE = deltaE2000At(lab, pairs[i * 2]! * 3, lab, pairs[i * 2 + 1]! * 3);
        const alone = lanes.weigh(pairs.subarray(i * 2, i * 2 + 2), Float64Array.of(1));
        expect(alone[0] === (deltaE < 0.01 ? 0 : 1) && Object.is(alone[1], deltaE < 0.01 ? 0 : deltaE)).toBe(true);
        wanted[0] += alone[0] * weight;
        wanted[1] += alone[1] * weight;
      });
      found.forEach((sum, i) => expect(Math.abs(sum - wanted[i]!)).toBeLessThanOrEqual(1e-12 * wanted[i]!));
    }
  });

  it('should give the 34 published differences', () => {
    const lab = Float64Array.from(table.pairs.flatMap((row) => row.slice(0, 6)));
    const lanes = new DeltaELanes(0);
    lanes.hold(lab, 68);
    table.pairs.forEach((row, i) => {
      const [weight, weighted] = lanes.weigh(Uint32Array.of(i * 2, i * 2 + 1), Float64Array.of(4));
      expect(weight).toBe(4);
      expect(Math.abs(weighted / 4 - row[6]!)).toBeLessThan(table.tolerance);
    });
  });
});
