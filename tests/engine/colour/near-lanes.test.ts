import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { deltaE2000At } from '../../../src/engine/colour/delta-e.ts';
import { NearLanes } from '../../../src/engine/colour/near-lanes.ts';
import table from '../../published/colour/ciede2000-sharma34.json' with { type: 'json' };

/** Pairs of neighbours all over Lab and beyond, some of them grey, opposite in hue or equal, the second up to `far` away either way. */
function neighbours(seed: string, count: number, far: number): Float64Array {
  const random = randomFrom(seed);
  const at = (least: number, most: number): number => least + ((most - least) * random.int(2 ** 30)) / 2 ** 30;
  const lab = new Float64Array(count * 6);
  for (let i = 0; i < lab.length; i += 6) {
    const wide = i % 24 === 0 ? 2 : 120;
    lab.set([at(-2, 125), at(-wide, wide), at(-wide, wide)], i);
    for (let k = 0; k < 3; k++) lab[i + 3 + k] = lab[i + k]! + at(-far, far);
    if (i % 42 === 0) lab.set([-lab[i + 1]! * at(0, 2), -lab[i + 2]!], i + 4);
    if (i % 54 === 0) lab.fill(0, i + 1, i + 3);
    if (i % 66 === 0) lab.copyWithin(i + 3, i, i + 3);
  }
  return lab;
}

const pairsOf = (count: number): Uint32Array => Uint32Array.from({ length: count * 2 }, (_, i) => i);

describe('NearLanes', () => {
  // Differences just below and above that of each pair, where single precision cannot decide, and further away, where it may.
  it.each([0.01, 1, 6, 40])('should know what is within a difference as it is without lanes, pairs up to %d apart', (far) => {
    const count = 1501;
    const lab = neighbours(`near ${far}`, count, far);
    const [lanes, plain] = [new NearLanes(), new NearLanes(true)];
    lanes.hold(lab, 7);
    lanes.hold(lab.subarray(21), count * 2 - 7, 7);
    plain.hold(lab, count * 2);
    const exact = Array.from({ length: count }, (_, i) => deltaE2000At(lab, i * 6, lab, i * 6 + 3));
    const sorted = exact.toSorted((a, b) => a - b);
    for (const deltaE of [0, sorted[300]!, sorted[750]!, sorted[1400]! * (1 - 1e-12), 2, 10]) {
      const expected = exact.map((each) => (each <= deltaE ? 1 : 0));
      expect([...lanes.within(pairsOf(count), count, deltaE).subarray(0, count)]).toEqual(expected);
      expect([...plain.within(pairsOf(count), count, deltaE).subarray(0, count)]).toEqual(expected);
    }
    // Each with the four that begin at its neighbour.
    const rows = Uint32Array.from({ length: 2 * (count - 2) }, (_, i) => i + (i & 1) * (i % 3 === 0 ? 1 : 0));
    for (const deltaE of [sorted[300]!, 10]) {
      const expected = Array.from({ length: count - 2 }, (_, row) => {
        const [one, first] = [rows[row * 2]!, rows[row * 2 + 1]!];
        return [0, 1, 2, 3].some((next) => deltaE2000At(lab, one * 3, lab, (first + next) * 3) <= deltaE) ? 1 : 0;
      });
      expect(new Set(expected).size).toBe(2);
      expect([...lanes.anyWithin(rows, count - 2, deltaE).subarray(0, count - 2)]).toEqual(expected);
      expect([...plain.anyWithin(rows, count - 2, deltaE).subarray(0, count - 2)]).toEqual(expected);
    }
    for (let i = 0; i < count; i++) {
      for (const share of [0.99, 1 - 1e-13, 1, 1.01]) {
        const [found] = lanes.within(Uint32Array.of(i * 2, i * 2 + 1), 1, exact[i]! * share);
        expect(found).toBe(exact[i]! <= exact[i]! * share ? 1 : 0);
      }
    }
  });

  it('should tell the 34 published differences from ones a hair smaller and larger', () => {
    const lab = Float64Array.from(table.pairs.flatMap((row) => row.slice(0, 6)));
    const lanes = new NearLanes();
    lanes.hold(lab, 68);
    table.pairs.forEach((row, i) => {
      const pair = Uint32Array.of(i * 2, i * 2 + 1);
      expect(lanes.within(pair, 1, row[6]! + table.tolerance)[0]).toBe(1);
      expect(lanes.within(pair, 1, row[6]! - table.tolerance)[0]).toBe(0);
    });
  });
});
