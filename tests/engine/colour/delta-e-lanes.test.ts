import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { DeltaELanes } from '../../../src/engine/colour/delta-e-lanes.ts';
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
    const lanes = new DeltaELanes();
    const plain = new DeltaELanes(true);
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
      const one = lanes.differences(pairs, count).slice(0, count);
      expect(one).toEqual(plain.differences(pairs, count).slice(0, count));
      const single = one.map((_, i) => deltaE2000At(lab, pairs[i * 2]! * 3, lab, pairs[i * 2 + 1]! * 3));
      expect(one.every((deltaE, i) => Object.is(deltaE, single[i]))).toBe(true);
    }
  });

  it('should give the 34 published differences', () => {
    const lab = Float64Array.from(table.pairs.flatMap((row) => row.slice(0, 6)));
    const pairs = Uint32Array.from({ length: 68 }, (_, i) => i);
    const lanes = new DeltaELanes();
    lanes.hold(lab, 68);
    const found = lanes.differences(pairs, 34);
    table.pairs.forEach((row, i) => expect(Math.abs(found[i]! - row[6]!)).toBeLessThan(table.tolerance));
  });
});
