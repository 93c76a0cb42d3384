import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { deltaE2000At } from '../../../src/engine/colour/delta-e.ts';
import { WithinDeltaE } from '../../../src/engine/colour/within-delta-e.ts';

/** Pairs over all of Lab and beyond white, the second up to `far` away either way. */
function pairs(seed: string, count: number, far: number): Float64Array {
  const random = randomFrom(seed);
  const at = (least: number, most: number): number => least + ((most - least) * random.int(2 ** 30)) / 2 ** 30;
  const out = new Float64Array(count * 6);
  for (let i = 0; i < out.length; i += 6) {
    out.set([at(-2, 125), at(-110, 110), at(-120, 110)], i);
    for (let k = 0; k < 3; k++) out[i + 3 + k] = out[i + k]! + at(-far, far);
  }
  return out;
}

describe('WithinDeltaE', () => {
  it.each([0.001, 1, 8, 60])('should know every difference from one a hair larger or smaller, pairs up to %d apart', (far) => {
    const lab = pairs(`within ${far}`, 4000, far);
    for (let i = 0; i < lab.length; i += 6) {
      const deltaE = deltaE2000At(lab, i, lab, i + 3);
      const within = new WithinDeltaE(deltaE * (1 + 1e-7) + 1e-11);
      expect(within.holds(lab, i, lab, i + 3)).toBe(true);
      expect(Math.abs(lab[i]! - lab[i + 3]!)).toBeLessThanOrEqual(within.reachL(lab[i]!));
      expect(new WithinDeltaE(deltaE * (1 - 1e-7) - 1e-11).holds(lab, i + 3, lab, i)).toBe(false);
    }
  });

  it('should say of no pair within the difference that it lies out of reach, by another implementation', () => {
    const reference = differenceCiede2000();
    const lab = pairs('reach', 4000, 6);
    let near = 0;
    for (let i = 0; i < lab.length; i += 6) {
      const [l1, a1, b1, l2, a2, b2] = lab.subarray(i, i + 6) as unknown as [number, number, number, number, number, number];
      const deltaE = reference({ mode: 'lab65', l: l1, a: a1, b: b1 }, { mode: 'lab65', l: l2, a: a2, b: b2 });
      const within = new WithinDeltaE(2);
      expect(within.holds(lab, i, lab, i + 3)).toBe(deltaE <= 2);
      if (deltaE > 2) continue;
      near++;
      expect(Math.abs(l1 - l2)).toBeLessThanOrEqual(Math.min(within.reachL(l1), within.reachL(l2)));
    }
    expect(near).toBeGreaterThan(100);
  });
});
