import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { reachL } from '../../../src/engine/colour/reach.ts';

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

describe('reachL', () => {
  it.each([0.001, 1, 8, 60])('should hold every difference in L of colours within a difference, pairs up to %d apart', (far) => {
    const reference = differenceCiede2000();
    const lab = pairs(`within ${far}`, 4000, far);
    let most = 0;
    for (let i = 0; i < lab.length; i += 6) {
      const [l1, a1, b1, l2, a2, b2] = lab.subarray(i, i + 6) as unknown as [number, number, number, number, number, number];
      const deltaE = reference({ mode: 'lab65', l: l1, a: a1, b: b1 }, { mode: 'lab65', l: l2, a: a2, b: b2 });
      most = Math.max(most, Math.abs(l1 - l2) / Math.min(reachL(l1, deltaE), reachL(l2, deltaE)));
    }
    expect(most).toBeLessThanOrEqual(1);
    expect(most).toBeGreaterThan(0.8);
  });
});
