import * as fc from 'fast-check';
import { describe, it, expect } from 'vitest';
import { filmBands, filmMatrix, overFilm, stackReflectance, type FilmBands } from '../../../../src/engine/ink/film/film.ts';
import { filmThickness } from '../../../../src/engine/ink/film/thickness.ts';

const film = (k: number, s: number) => filmBands([k], [s]);
const value = fc.double({ min: 0, max: 1e6, noNaN: true });

describe('filmBands', () => {
  it('should stay a possible reflectance for any film and ground', () => {
    fc.assert(
      fc.property(value, value, fc.double({ min: 0, max: 1, noNaN: true }), (k, s, g) => {
        const r = stackReflectance([{ kx: [k], sx: [s] }], [g])[0]!;
        expect(r).toBeGreaterThanOrEqual(-1e-15);
        expect(r).toBeLessThanOrEqual(1 + 1e-12);
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  it('should take the thickness as so many films', () => {
    const twice = filmBands([0.3, 1], [0.2, 0], 2);
    const ground = [0.9, 0.5];
    const stacked = stackReflectance(
      [
        { kx: [0.3, 1], sx: [0.2, 0] },
        { kx: [0.3, 1], sx: [0.2, 0] },
      ],
      ground,
    );
    const found = overFilm(twice, ground, new Float64Array(2));
    found.forEach((r, i) => expect(r).toBeCloseTo(stacked[i]!, 14));
  });

  it('should have no step where the series takes over', () => {
    for (const s of [0, 1e-9, 0.5]) {
      const below = filmMatrix(0.9999e-14, s);
      const above = filmMatrix(1.0001e-14, s);
      below.forEach((entry, i) => expect(entry).toBeCloseTo(above[i]!, 12));
    }
  });

  it('should refuse what is no film', () => {
    for (const [k, s] of [
      [-1, 0],
      [0, -1e-9],
      [NaN, 0],
      [0, NaN],
      [Infinity, 0],
    ] as const) {
      expect(() => filmMatrix(k, s)).toThrow(/must be 0 or more/);
    }
    expect(() => filmBands([1], [1, 2])).toThrow(/1 and 2/);
    expect(() => stackReflectance([{ kx: [0], sx: [0] }], [1, 1])).toThrow(/Film 1 has 1 bands/);
  });
});

/** Largest entry of the commutator of two films' matrices [[q, R0], [−R0, 1]], worked out by hand. */
function commutatorOf(a: FilmBands, b: FilmBands): number {
  return Math.max(...Array.from(a.r0, (r0, band) => Math.abs(r0 * (1 - b.q[band]!) - b.r0[band]! * (1 - a.q[band]!))));
}

describe('filmBands of two inks', () => {
  const commute = (a: FilmBands, b: FilmBands, tolerance = 1e-12): boolean => commutatorOf(a, b) <= tolerance;

  it('should commute without scattering, for equal K/S, and not otherwise', () => {
    expect(commute(film(1, 0), film(0.2, 0))).toBe(true);
    expect(commute(film(1, 0.5), film(0.4, 0.2))).toBe(true);
    expect(commute(film(1, 0.5), film(0.4, 0.5))).toBe(false);
    expect(commute(film(1, 0), film(0, 1))).toBe(false);
  });

  it('should say the same as both orders over every ground', () => {
    const strength = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(strength, strength, strength, strength, (k1, s1, k2, s2) => {
        const a = { kx: [k1], sx: [s1] };
        const b = { kx: [k2], sx: [s2] };
        const gap = Math.max(...[0, 0.5, 1].map((g) => Math.abs(stackReflectance([a, b], [g])[0]! - stackReflectance([b, a], [g])[0]!)));
        if (commute(film(k1, s1), film(k2, s2), 1e-9)) {
          expect(gap).toBeLessThan(1e-6);
        }
      }),
      { seed: 7 },
    );
  });
});

describe('stackReflectance', () => {
  // Closed form for K = 0: R = (g + S(1 − g)) / (1 + S(1 − g)), Kubelka (1948).
  it.each([1e-300, 1e-6, 1, 1e6, 1e17, 1e300])('should keep a white ground white under %d of pure scattering', (s) => {
    expect(stackReflectance([{ kx: [0], sx: [s] }], [1])[0]).toBeCloseTo(1, 14);
    const half = s < 1e300 ? (0.5 + s / 2) / (1 + s / 2) : 1;
    expect(stackReflectance([{ kx: [0], sx: [s] }], [0.5])[0]).toBeCloseTo(half, 14);
  });

  it('should show R∞ however thick the film is', () => {
    for (const k of [1e6, 1e100, 1e200, 1e307]) {
      expect(stackReflectance([{ kx: [k], sx: [k] }], [0.5])[0]).toBeCloseTo(2 - Math.sqrt(3), 14);
    }
  });

  it('should refuse a paper that has no reflectance in a band', () => {
    for (const bad of [NaN, -0.1, Infinity]) {
      expect(() => stackReflectance([], [0.5, bad])).toThrow(expect.objectContaining({ code: 'ink.bad-ground' }));
    }
  });
});

describe('filmThickness', () => {
  it('should add the gain for each stroke after the first', () => {
    expect(filmThickness(1, 0.4)).toBe(1);
    expect(filmThickness(3, 0.4)).toBeCloseTo(1.8, 14);
    expect(filmThickness(2, 1)).toBe(2);
  });

  it('should refuse broken strokes', () => {
    for (const bad of [0, -1, 1.5, NaN]) expect(() => filmThickness(bad, 0.4)).toThrow(/whole number/);
    expect(() => filmThickness(2, -0.1)).toThrow(/0 or more/);
  });
});
