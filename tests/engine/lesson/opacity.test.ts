import { describe, expect, it } from 'vitest';
import { demoInks } from '../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../src/engine/ink/demo/demo-paper.ts';
import { inkOfOpacity } from '../../../src/engine/ink/mix/opacity.ts';

const PAPER = { reflectance: DEMO_PAPER.reflectance };

/** Kubelka (1948), eq. 20, in hyperbolic form; Bouguer's law where nothing scatters. */
function kubelka(ground: number, kx: number, sx: number): number {
  if (sx === 0) return ground * Math.exp(-2 * kx);
  const a = 1 + kx / sx;
  const b = Math.sqrt(a * a - 1);
  if (b < 1e-9) return (ground + (1 - ground) * sx) / (1 + (1 - ground) * sx);
  const coth = 1 / Math.tanh(b * sx);
  return (1 - ground * (a - b * coth)) / (a - ground + b * coth);
}

describe('inkOfOpacity', () => {
  it('should keep the reflectance on the paper in every band, by the hyperbolic form', () => {
    for (const ink of demoInks()) {
      for (const opacity of [-1, -0.6, 0.4, 0.9]) {
        const made = inkOfOpacity(ink, opacity, PAPER);
        PAPER.reflectance.forEach((ground, band) => {
          const before = kubelka(ground, ink.kx[band]!, ink.sx[band]!);
          expect(Math.abs(kubelka(ground, made.kx[band]!, made.sx[band]!) - before)).toBeLessThan(2e-3);
        });
      }
    }
  });

  it('should show from nothing to all of itself over black', () => {
    for (const ink of demoInks()) {
      const shown = [-1, -0.5, 0, 0.5, 1].map((opacity) => {
        const made = inkOfOpacity(ink, opacity, PAPER);
        return made.kx.reduce((sum, kx, band) => sum + kubelka(0, kx, made.sx[band]!), 0);
      });
      expect(shown[0]).toBe(0);
      expect(shown).toEqual(shown.toSorted((a, b) => a - b));
      const opaque = inkOfOpacity(ink, 1, PAPER);
      PAPER.reflectance.forEach((ground, band) => {
        const [kx, sx] = [opaque.kx[band]!, opaque.sx[band]!];
        expect(kubelka(ground, kx, sx) - kubelka(0, kx, sx)).toBeLessThan(0.02);
      });
    }
  });

  it('should give the ink itself where nothing is asked of it, and refuse what is no opacity', () => {
    const [ink] = demoInks();
    expect(inkOfOpacity(ink!, 0, PAPER)).toBe(ink);
    expect(() => inkOfOpacity(ink!, 1.5, PAPER)).toThrow('give −1 (clear) to 1 (opaque)');
    expect(() => inkOfOpacity(ink!, NaN, PAPER)).toThrow('give −1 (clear) to 1 (opaque)');
  });
});
