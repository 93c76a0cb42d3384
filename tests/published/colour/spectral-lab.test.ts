import * as culori from 'culori';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/engine/colour/delta-e.ts';
import { labD50, labFromXyzD50, WHITE_D50, type Lab } from '../../../src/engine/colour/lab.ts';
import { WAVELENGTHS_NM } from '../../../src/engine/colour/weights.ts';
import table from './spectral-lab.json' with { type: 'json' };

describe('labD50', () => {
  it.each(table.rows)('should agree with integration at 1 nm for $name', ({ low, rise, middleNm, widthNm, labD50: expected }) => {
    const curve = WAVELENGTHS_NM.map((nm) => low + rise / (1 + Math.exp(-(nm - middleNm) / widthNm)));
    expect(deltaE2000(labD50(curve), expected as Lab)).toBeLessThan(table.toleranceDeltaE00);
  });
});

describe('labFromXyzD50', () => {
  // culori 4: its white is the rounded ICC one, so the ratios to the white are handed over.
  it('should agree with culori', () => {
    const white = culori.xyz50({ mode: 'lab', l: 100, a: 0, b: 0 });
    const lab = culori.converter('lab');
    for (const ratios of [
      [0.5, 0.4, 0.3],
      [0.02, 0.01, 0.03],
      [0.9, 0.95, 0.8],
      [0.005, 0.004, 0.001],
    ] as const) {
      const theirs = lab({ mode: 'xyz50', x: ratios[0] * white.x, y: ratios[1] * white.y, z: ratios[2] * white.z });
      const [l, a, b] = labFromXyzD50(ratios[0] * WHITE_D50[0], ratios[1] * WHITE_D50[1], ratios[2] * WHITE_D50[2]);
      expect(l).toBeCloseTo(theirs.l, 4);
      expect(a).toBeCloseTo(theirs.a, 4);
      expect(b).toBeCloseTo(theirs.b, 4);
    }
  });
});
