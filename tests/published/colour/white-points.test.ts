import { describe, it, expect } from 'vitest';
import { labD50, xyzD50, xyzD65 } from '../../../src/engine/colour/lab.ts';
import { BANDS, WAVELENGTHS_NM } from '../../../src/engine/colour/weights.ts';
import table from './white-points.json' with { type: 'json' };

const perfect = new Float64Array(BANDS).fill(1);

describe('white points', () => {
  it.each(table.rows)('should give the tabulated white of $illuminant', ({ illuminant, xyz }) => {
    const found = illuminant === 'D50' ? xyzD50(perfect) : xyzD65(perfect);
    found.forEach((value, i) => {
      expect(Math.abs(value - xyz[i]!)).toBeLessThan(table.tolerance);
    });
  });

  it('should give the perfect white L 100 without a cast', () => {
    const [l, a, b] = labD50(perfect);
    expect(l).toBeCloseTo(100, 12);
    expect(a).toBeCloseTo(0, 12);
    expect(b).toBeCloseTo(0, 12);
  });

  it('should span 380 to 730 nm', () => {
    expect(WAVELENGTHS_NM).toHaveLength(36);
    expect([WAVELENGTHS_NM[0], WAVELENGTHS_NM[35]]).toEqual([380, 730]);
  });
});
