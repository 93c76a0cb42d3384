import { describe, it, expect } from 'vitest';
import { toLab } from '../../../src/engine/colour/lab-code.ts';
import { labD50, labFromXyzD50, xyzD50, xyzD65 } from '../../../src/engine/colour/lab.ts';

describe('labD50', () => {
  it('should refuse another number of bands rather than give NaN', () => {
    for (const bands of [0, 31, 35, 37]) {
      for (const of of [labD50, xyzD50, xyzD65]) {
        expect(() => of(new Array(bands).fill(0.5))).toThrow(
          expect.objectContaining({ code: 'colour.bands', message: expect.stringContaining(`this one has ${bands}`) }),
        );
      }
    }
  });
});

describe('toLab', () => {
  it('should be what cube roots give, from black to brighter than white', () => {
    let most = 0;
    for (let i = 0; i <= 2500; i++) {
      const xyz = [i / 20, ((i * 7) % 2500) / 20, ((i * 13) % 2500) / 2000] as const;
      const lab = Float64Array.from(xyz);
      toLab(lab, 0);
      labFromXyzD50(...xyz).forEach((wanted, k) => (most = Math.max(most, Math.abs(lab[k]! - wanted))));
    }
    expect(most).toBeLessThan(1e-10);
  });
});
