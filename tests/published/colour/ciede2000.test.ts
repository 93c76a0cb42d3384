import { differenceCiede2000 } from 'culori';
import { describe, it, expect } from 'vitest';
import { deltaE2000, deltaE2000Values } from '../../../src/engine/colour/delta-e.ts';
import type { Lab } from '../../../src/engine/colour/lab.ts';
import table from './ciede2000-sharma34.json' with { type: 'json' };

const pairs = table.pairs.map((row) => ({
  one: row.slice(0, 3) as Lab,
  two: row.slice(3, 6) as Lab,
  expected: row[6]!,
}));

describe('deltaE2000', () => {
  it('should have all 34 published pairs to check against', () => {
    expect(pairs).toHaveLength(34);
  });

  it.each(pairs)('should give $expected for $one and $two, both ways', ({ one, two, expected }) => {
    expect(Math.abs(deltaE2000(one, two) - expected)).toBeLessThan(table.tolerance);
    expect(deltaE2000(one, two).toFixed(4)).toBe(expected.toFixed(4));
    expect(deltaE2000(two, one)).toBeCloseTo(deltaE2000(one, two), 12);
    expect(deltaE2000Values(...one, ...two)).toBe(deltaE2000(one, two));
  });

  // culori 4 is an independent implementation; tagged lab65 so that it does not adapt the white.
  it('should agree with culori over a grid of colours', () => {
    const reference = differenceCiede2000();
    const grid: Lab[] = [];
    for (const l of [0, 20, 55, 90, 100]) {
      for (const a of [-70, -9, 0, 31, 80]) for (const b of [-80, -12, 0, 5, 66]) grid.push([l, a, b]);
    }
    for (const one of grid) {
      for (const two of grid) {
        const expected = reference({ mode: 'lab65', l: one[0], a: one[1], b: one[2] }, { mode: 'lab65', l: two[0], a: two[1], b: two[2] });
        expect(Math.abs(deltaE2000(one, two) - expected)).toBeLessThan(1e-9);
      }
    }
  });
});
