import { describe, expect, it } from 'vitest';
import { inkGrams, stockGrams } from '../../../../src/engine/visit/quantities/ink.ts';
import { sheetsWithOvers } from '../../../../src/engine/visit/quantities/sheets.ts';

const settings = { transfer: 0.8, strokeGain: 0.3, lossMl: 100, densityGPerCm3: { tar: 1.2 } };

describe('inkGrams', () => {
  it('should weigh area × volume × transfer × strokes × density, and the loss once an ink', () => {
    const run = { ink: 'tar', areaMm2: 100_000, sheets: 30, strokes: 1, volumeCm3PerM2: 20 };
    // By hand: 0.1 m² × 30 = 3 m²; × 20 cm³ × 0.8 = 48 cm³; × 1.2 = 57.6 g; two strokes 1.3 times.
    const [need, ...rest] = inkGrams([run, { ...run, strokes: 2 }], settings);
    expect(rest).toEqual([]);
    expect(need!.areaM2).toBeCloseTo(6, 9);
    expect(need!.printedG).toBeCloseTo(57.6 + 74.88, 9);
    expect(need!.lossG).toBeCloseTo(120, 9);
    expect(need!.totalG).toBeCloseTo(252.48, 9);
  });

  it('should weigh proofs like sheets and take a share of all for safety', () => {
    const run = { ink: 'tar', areaMm2: 100_000, sheets: 30, proofs: 5, strokes: 1, volumeCm3PerM2: 20 };
    // By hand: 57.6 g on thirty sheets, a sixth of it, 9.6 g, on five proofs, 120 g left; a tenth of 187.2 g.
    const [need] = inkGrams([run], { ...settings, safety: 0.1 });
    expect(need!.areaM2).toBeCloseTo(3.5, 9);
    expect([need!.printedG, need!.proofsG, need!.lossG, need!.safetyG, need!.totalG].map((g) => g.toFixed(3))).toEqual([
      '57.600',
      '9.600',
      '120.000',
      '18.720',
      '205.920',
    ]);
    expect(() => inkGrams([{ ...run, proofs: 0.5 }], settings)).toThrow('number of proofs of ink tar is 0.5: give a whole number.');
    expect(() => inkGrams([run], { ...settings, safety: -0.1 })).toThrow('safety margin is -0.1: give 0 or more.');
  });

  it('should take 1.15 g/cm³ for an ink without a density', () => {
    const [need] = inkGrams([{ ink: 'foam', areaMm2: 1e6, sheets: 1, strokes: 1, volumeCm3PerM2: 10 }], settings);
    expect(need!.printedG).toBeCloseTo(9.2, 9);
  });

  it('should refuse figures that are none', () => {
    const run = { ink: 'tar', areaMm2: 1, sheets: 1, strokes: 1, volumeCm3PerM2: 20 };
    expect(() => inkGrams([{ ...run, areaMm2: Number.NaN }], settings)).toThrow('printed area of ink tar is NaN');
    expect(() => inkGrams([{ ...run, strokes: -1 }], settings)).toThrow('Strokes');
    expect(() => inkGrams([run], { ...settings, transfer: 0 })).toThrow('transfer is 0');
  });
});

describe('stockGrams', () => {
  it('should split by weight and keep the whole', () => {
    const need = (ink: string, totalG: number) => ({ ink, totalG });
    const grams = stockGrams([need('dusk', 300), need('base', 50)], {
      dusk: [
        { stock: 'blue', parts: 1 },
        { stock: 'base', parts: 2 },
      ],
    });
    expect([...grams]).toEqual([
      ['blue', 100],
      ['base', 250],
    ]);
    expect(() => stockGrams([need('dusk', 1)], { dusk: [] })).toThrow('mix of ink dusk');
  });
});

describe('sheetsWithOvers', () => {
  it('should add set-up sheets and not grow without rejects', () => {
    expect(sheetsWithOvers(30, 0, 12)).toBe(30);
    expect(sheetsWithOvers(90, 0.1, 2)).toBe(112);
    expect(sheetsWithOvers(81, 0.1, 2, 3)).toBe(103);
  });

  it('should refuse what cannot be', () => {
    expect(() => sheetsWithOvers(30, 1, 2)).toThrow('share of rejects is 1');
    expect(() => sheetsWithOvers(1.5, 0, 2)).toThrow('good sheets is 1.5');
    expect(() => sheetsWithOvers(30, 0.99, 500)).toThrow('no pile of paper');
  });
});
