import { describe, expect, it } from 'vitest';
import { bandsFromSpectrum } from '../../../src/engine/colour/resample.ts';

const every = (first: number, last: number, step: number): number[] =>
  Array.from({ length: Math.round((last - first) / step) + 1 }, (_, i) => first + i * step);
const power =
  (degree: number) =>
  (nm: number): number =>
    0.5 + 0.4 * ((nm - 555) / 250) ** degree;

describe('bandsFromSpectrum', () => {
  // Sprague's polynomial reproduces fourth powers, with the CIE's added values straight lines at the
  // ends; Lagrange's cubic third powers everywhere.
  it('should follow powers exactly where the method does', () => {
    for (const [nm, degree, endDegree, ends] of [
      [every(340, 780, 20), 4, 1, 0],
      [every(380, 740, 20), 4, 1, 40],
      [every(375, 735, 7.5), 4, 1, 30],
      [[360, 390, 405, 440, 470, 480, 530, 555, 600, 640, 680, 700, 750], 3, 3, 0],
    ] as const) {
      for (let d = 0; d <= degree; d++) {
        const bands = bandsFromSpectrum(nm, nm.map(power(d)));
        bands.forEach((value, band) => {
          const at = 380 + 10 * band;
          const inner = at > nm[0]! + ends && at < nm.at(-1)! - ends;
          if (inner || d <= endDegree) expect(value).toBeCloseTo(power(d)(at), 10);
        });
      }
    }
  });

  it('should sample finer steps at the bands', () => {
    const nm = every(380, 780, 5);
    const values = nm.map((value) => (value % 10 === 0 ? 0.25 : 0.75));
    expect(new Set(bandsFromSpectrum(nm, values))).toEqual(new Set([0.25]));
  });

  it('should repeat the outermost values beyond both ends', () => {
    const bands = bandsFromSpectrum(
      every(400, 700, 10),
      every(400, 700, 10).map((nm) => nm / 1000),
    );
    expect([...bands.slice(0, 3)]).toEqual([0.4, 0.4, 0.4]);
    expect([...bands.slice(-4)]).toEqual([0.7, 0.7, 0.7, 0.7]);
  });

  it('should stay a reflectance beside a step', () => {
    const nm = every(380, 740, 20);
    for (const value of bandsFromSpectrum(
      nm,
      nm.map((at) => (at < 560 ? 0 : 1)),
    )) {
      expect(value >= 0 && value <= 1).toBe(true);
    }
  });
});
