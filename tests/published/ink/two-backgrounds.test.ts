import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labD50, xyzD50 } from '../../../src/engine/colour/lab.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../src/engine/ink/characterise/card.ts';
import { twoBackground } from '../../../src/engine/ink/characterise/characterise.ts';
import { measuredInk } from '../../../src/engine/ink/characterise/measured-ink.ts';
import { demoInks } from '../../../src/engine/ink/demo/demo-inks.ts';
import worked from './km-worked-numbers.json' with { type: 'json' };

/**
 * Kubelka (1948), J. Opt. Soc. Am. 38, eqs. for a film over black and over a ground; the same in ASTM
 * D2805 (hiding power). From memory: a = ½ [R + (R0 − R + g) / (R0 g)], b = √(a² − 1),
 * SX = arcoth[(1 − a R0) / (b R0)] / b, K/S = a − 1.
 */
function kubelka1948(r0: number, r: number, g: number): { kx: number; sx: number } {
  const a = (r + (r0 - r + g) / (r0 * g)) / 2;
  const b = Math.sqrt(a * a - 1);
  const cotanh = (1 - a * r0) / (b * r0);
  const sx = Math.log((cotanh + 1) / (cotanh - 1)) / (2 * b);
  return { kx: (a - 1) * sx, sx };
}

/**
 * What a film shows over a ground, by the hyperbolic solution, apart from the engine's. Source: Kubelka
 * (1948), J. Opt. Soc. Am. 38(5), 448–457: a = 1 + K/S, b = √(a² − 1), R0 = sinh bSX ÷ (a sinh bSX +
 * b cosh bSX), T = b ÷ (a sinh bSX + b cosh bSX), R = R0 + T² Rg ÷ (1 − R0 Rg).
 */
function kubelkaOver(kx: number, sx: number, ground: number): number {
  const a = 1 + kx / sx;
  const b = Math.sqrt(a * a - 1);
  const below = a * Math.sinh(b * sx) + b * Math.cosh(b * sx);
  const r0 = Math.sinh(b * sx) / below;
  const t = b / below;
  return r0 + (t * t * ground) / (1 - r0 * ground);
}

describe('twoBackground against published relations', () => {
  // ISO 9416 finds s and k from R0 (one sheet over black) and R∞ (over a pile of itself): that is a
  // reading over two backgrounds, of which the light one has the reflectance R∞ of the pile.
  it.each(worked.iso9416_style)('should give s and k of ISO 9416 for R0 $R0 and R∞ $Rinf', (row) => {
    const kgPerM2 = row.grammage_g_m2 / 1000;
    const { kx, sx, adjusted } = twoBackground([row.Rinf], [row.R0], [row.Rinf], [0]);
    expect(sx[0]! / kgPerM2).toBeCloseTo(row.s_m2_per_kg, 5);
    expect(kx[0]! / kgPerM2).toBeCloseTo(row.k_m2_per_kg, 5);
    expect(adjusted).toEqual([]);
  });

  // ISO 2471: opacity = R0 / R∞, here of the film that was found.
  it.each(worked.iso9416_style)('should give the opacity of ISO 2471 for R0 $R0 and R∞ $Rinf', (row) => {
    const { kx, sx } = twoBackground([row.Rinf], [row.R0], [row.Rinf], [0]);
    const over = (ground: number): number => kubelkaOver(kx[0]!, sx[0]!, ground);
    const pile = Array.from({ length: 60 }).reduce((below: number) => over(below), 0);
    expect((100 * over(0)) / pile).toBeCloseTo(row['opacity_pct_R0/Rinf'], 3);
  });

  it('should agree with the arcoth form of Kubelka for readings over black and over any ground', () => {
    const strength = fc.double({ min: 0.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(strength, strength, fc.double({ min: 0.2, max: 1, noNaN: true }), (k, s, g) => {
        // Where the film hides its ground both forms subtract what is equal.
        if (Math.sqrt(k * (k + 2 * s)) > 2) return;
        const [r0, r] = [kubelkaOver(k, s, 0), kubelkaOver(k, s, g)];
        const expected = kubelka1948(r0, r, g);
        // The two forms of the paper agree on the film that gave the readings.
        expect(Math.abs(expected.kx - k)).toBeLessThan(1e-7 * (1 + k));
        const { kx, sx } = twoBackground([r], [r0], [g], [0]);
        expect(Math.abs(kx[0]! - expected.kx)).toBeLessThan(1e-7 * (1 + k));
        expect(Math.abs(sx[0]! - expected.sx)).toBeLessThan(1e-7 * (1 + s));
      }),
      { seed: 2805, numRuns: 500 },
    );
  });

  // ISO 6504-3: contrast ratio = 100 · Y over black / Y over white.
  it('should keep the contrast ratio of ISO 6504-3 that was measured', () => {
    for (const ink of demoInks()) {
      const [overWhite, overBlack] = [CARD_WHITE, CARD_BLACK].map((card) =>
        card.map((ground, band) => kubelkaOver(ink.kx[band]!, Math.max(1e-9, ink.sx[band]!), ground)),
      ) as [number[], number[]];
      expect(overWhite.length).toBe(36);
      const measured = (100 * xyzD50(overBlack)[1]) / xyzD50(overWhite)[1];
      const found = measuredInk(ink, { overWhite, overBlack, white: CARD_WHITE, black: CARD_BLACK }).ink;
      // The one definition by luminance, the other by the L that the ink keeps.
      const luminance = (l: number): number => (l > 8 ? ((l + 16) / 116) ** 3 : (l * 27) / 24389);
      expect((100 * luminance(found.overBlack[0])) / luminance(found.overWhite[0])).toBeCloseTo(measured, 8);
      expect(
        labD50(CARD_WHITE.map((ground, band) => kubelkaOver(found.kx[band]!, Math.max(1e-9, found.sx[band]!), ground)))[0],
      ).toBeCloseTo(labD50(overWhite)[0], 6);
    }
  });
});
