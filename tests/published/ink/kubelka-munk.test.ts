import * as fc from 'fast-check';
import { describe, it, expect } from 'vitest';
import { filmBands, filmMatrix, infiniteReflectance, stackReflectance } from '../../../src/engine/ink/film/film.ts';
import worked from './km-worked-numbers.json' with { type: 'json' };

const reflectanceOver = (k: number, s: number, ground: number): number => stackReflectance([{ kx: [k], sx: [s] }], [ground])[0]!;

/**
 * Kubelka and Munk (1931), Z. techn. Phys. 12, 593–601: downward flux i and upward flux j, x
 * counted upwards from the ground, i.e. di/dx = (K+S)i − S·j and dj/dx = S·i − (K+S)j, with j = g·i
 * at the ground. Integrated by fourth-order Runge–Kutta; R = j/i at the top.
 */
function integrateFluxes(k: number, s: number, ground: number, steps: number): number {
  const h = 1 / steps;
  const di = (i: number, j: number): number => (k + s) * i - s * j;
  const dj = (i: number, j: number): number => s * i - (k + s) * j;
  let i = 1;
  let j = ground;
  for (let n = 0; n < steps; n++) {
    const i1 = di(i, j);
    const j1 = dj(i, j);
    const i2 = di(i + (h / 2) * i1, j + (h / 2) * j1);
    const j2 = dj(i + (h / 2) * i1, j + (h / 2) * j1);
    const i3 = di(i + (h / 2) * i2, j + (h / 2) * j2);
    const j3 = dj(i + (h / 2) * i2, j + (h / 2) * j2);
    const i4 = di(i + h * i3, j + h * j3);
    const j4 = dj(i + h * i3, j + h * j3);
    i += (h / 6) * (i1 + 2 * i2 + 2 * i3 + i4);
    j += (h / 6) * (j1 + 2 * j2 + 2 * j3 + j4);
  }
  return j / i;
}

const strength = fc.double({ min: 0, max: 4, noNaN: true });
const ground = fc.double({ min: 0, max: 1, noNaN: true });

describe('closed form of a film', () => {
  it('should agree with numerical integration of the two flux equations', () => {
    fc.assert(
      fc.property(strength, strength, ground, (k, s, g) => {
        expect(Math.abs(reflectanceOver(k, s, g) - integrateFluxes(k, s, g, 2000))).toBeLessThan(1e-9);
      }),
      { seed: 1931, numRuns: 60 },
    );
  });

  it('should make two films of one ink one film twice as thick', () => {
    fc.assert(
      fc.property(strength, strength, ground, (k, s, g) => {
        const twice = stackReflectance(
          [
            { kx: [k], sx: [s] },
            { kx: [k], sx: [s] },
          ],
          [g],
        )[0]!;
        expect(Math.abs(twice - reflectanceOver(2 * k, 2 * s, g))).toBeLessThan(1e-13);
      }),
      { seed: 1931, numRuns: 500 },
    );
  });

  it('should compose as the product of its matrices, the last down first', () => {
    fc.assert(
      fc.property(strength, strength, strength, strength, ground, (k1, s1, k2, s2, g) => {
        const [a, b, c, d] = filmMatrix(k1, s1) as unknown as [number, number, number, number];
        const [e, f, h, i] = filmMatrix(k2, s2) as unknown as [number, number, number, number];
        const top = (e * a + f * c) * g + (e * b + f * d);
        const bottom = (h * a + i * c) * g + (h * b + i * d);
        const stacked = stackReflectance(
          [
            { kx: [k1], sx: [s1] },
            { kx: [k2], sx: [s2] },
          ],
          [g],
        )[0]!;
        expect(Math.abs(stacked - top / bottom)).toBeLessThan(1e-12);
      }),
      { seed: 1931, numRuns: 300 },
    );
  });

  // Beer and Lambert: without scattering light is only absorbed, down and up again.
  it('should only absorb as S goes to 0', () => {
    fc.assert(
      fc.property(strength, ground, (k, g) => {
        expect(reflectanceOver(k, 0, g)).toBeCloseTo(g * Math.exp(-2 * k), 14);
        expect(reflectanceOver(k, 1e-12, g)).toBeCloseTo(g * Math.exp(-2 * k), 11);
      }),
      { seed: 1931 },
    );
  });

  // Kubelka (1948): without absorption R = ((1 − g)·SX + g) / ((1 − g)·SX + 1).
  it('should only scatter as K goes to 0', () => {
    fc.assert(
      fc.property(strength, ground, (s, g) => {
        const expected = ((1 - g) * s + g) / ((1 - g) * s + 1);
        expect(reflectanceOver(0, s, g)).toBeCloseTo(expected, 14);
        expect(reflectanceOver(1e-13, s, g)).toBeCloseTo(expected, 11);
      }),
      { seed: 1931 },
    );
  });

  it('should leave the ground as it is when there is no film', () => {
    expect(Array.from(filmMatrix(0, 0))).toEqual([1, 0, 0, 1]);
    expect(reflectanceOver(0, 0, 0.37)).toBe(0.37);
  });

  it('should reach the infinite film, whatever is below, without overflow', () => {
    for (const ratio of [0.001, 0.1, 1, 10]) {
      const expected = 1 + ratio - Math.sqrt(ratio * ratio + 2 * ratio);
      expect(infiniteReflectance(ratio)).toBeCloseTo(expected, 13);
      for (const g of [0, 0.5, 1]) {
        expect(reflectanceOver(ratio * 1e5, 1e5, g)).toBeCloseTo(expected, 12);
      }
    }
    expect(infiniteReflectance(0)).toBe(1);
    expect(infiniteReflectance(Infinity)).toBe(0);
  });
});

describe('worked numbers', () => {
  it.each(worked.Rinf_from_KS)('should give R∞ of K/S $K/S', (row) => {
    expect(infiniteReflectance(row['K/S'])).toBeCloseTo(row.Rinf, 9);
  });

  it.each(worked.iso9416_style)('should give back R0 $R0 from s and k', (row) => {
    const grammage = row.grammage_g_m2 / 1000;
    const film = filmBands([row.k_m2_per_kg * grammage], [row.s_m2_per_kg * grammage]);
    expect(film.r0[0]).toBeCloseTo(row.R0, 6);
    expect(infiniteReflectance(row.k_m2_per_kg / row.s_m2_per_kg)).toBeCloseTo(row.Rinf, 6);
  });
});
