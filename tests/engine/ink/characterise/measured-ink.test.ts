import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandWords } from '../../../../src/engine/ink/characterise/band-words.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { twoBackground } from '../../../../src/engine/ink/characterise/characterise.ts';
import { checkReadings, measuredInk } from '../../../../src/engine/ink/characterise/measured-ink.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';

const [tar, rust] = demoInks();
const readingsOf = (ink: typeof rust, white = CARD_WHITE, black = CARD_BLACK) => ({
  overWhite: stackReflectance([ink!], white),
  overBlack: stackReflectance([ink!], black),
  white,
  black,
});
const naming = { id: 'rust', name: 'Rust' };

describe('measuredInk', () => {
  it('should find the film that was measured, on any card', () => {
    const white = CARD_WHITE.map((_, band) => 0.6 + 0.008 * band);
    const black = CARD_BLACK.map((_, band) => 0.09 - 0.002 * band);
    const { ink, adjusted, hiding } = measuredInk(naming, readingsOf(rust, white, black));
    expect([adjusted, hiding]).toEqual([[], []]);
    expect(ink.basis).toBe('measured');
    ink.kx.forEach((value, band) => expect(value).toBeCloseTo(rust!.kx[band]!, 10));
    ink.sx.forEach((value, band) => expect(value).toBeCloseTo(rust!.sx[band]!, 10));
    // Its colours are those on the standard card, whatever card was measured.
    ink.overWhite.forEach((value, i) => expect(value).toBeCloseTo(rust!.overWhite[i]!, 3));
  });

  it('should show by how much impossible bands were moved', () => {
    const readings = readingsOf(rust);
    readings.overBlack[7] = 0.001;
    readings.overWhite[30] = 1.1;
    readings.overBlack[30] = 0.9;
    const { ink, adjusted } = measuredInk(naming, readings);
    expect(adjusted.map(({ band }) => band)).toEqual([7, 30]);
    const over = (ground: readonly number[], band: number): number => stackReflectance([ink], ground)[band]!;
    for (const { band, overWhite, overBlack } of adjusted) {
      expect(readings.overWhite[band]! + overWhite).toBeCloseTo(over(CARD_WHITE, band), 12);
      expect(readings.overBlack[band]! + overBlack).toBeCloseTo(over(CARD_BLACK, band), 12);
    }
    expect(adjusted[0]!.overBlack).toBeGreaterThan(0.001);
  });

  it('should name the bands where the ink hides all', () => {
    const readings = readingsOf(tar);
    for (const band of [3, 4, 5]) readings.overBlack[band] = readings.overWhite[band] = 0.02;
    expect(measuredInk(naming, readings).hiding).toEqual(expect.arrayContaining([3, 4, 5]));
  });

  it('should refuse with the bands that are wrong', () => {
    const swapped = readingsOf(rust);
    [swapped.overWhite, swapped.overBlack] = [swapped.overBlack, swapped.overWhite];
    const [problem] = checkReadings(swapped);
    expect(problem!.code).toBe('ink.over-black-brighter');
    expect(problem!.message).toMatch(/at (\d+–)?\d+.* nm: are the two readings swapped/u);
    expect(() => measuredInk(naming, swapped)).toThrow(expect.objectContaining({ code: 'ink.over-black-brighter' }));
    expect(checkReadings({ ...readingsOf(rust), black: CARD_WHITE }).map(({ code }) => code)).toContain('ink.card-contrast');
    expect(checkReadings({ ...readingsOf(rust), white: [0.9] }).map(({ code }) => code)).toEqual(['ink.bands']);
    expect(checkReadings({ ...readingsOf(rust), overWhite: CARD_WHITE.with(2, NaN) })[0]!.message).toContain('at 400 nm');
  });
});

describe('checkReadings', () => {
  it('should promise exactly what measuredInk keeps', () => {
    const curve = fc.array(fc.oneof(fc.double({ min: 0, max: 1.2, noNaN: true }), fc.constantFrom(0, 1, 1.2, 0.03, 0.9)), {
      minLength: 36,
      maxLength: 36,
    });
    const near = fc.tuple(curve, fc.double({ min: 0, max: 1 })).map(([c, top]) => c.map((v) => top * v));
    let kept = 0;
    fc.assert(
      fc.property(near, near, fc.boolean(), (overWhite, overBlack, ordered) => {
        const readings = {
          overWhite: ordered ? overWhite.map((v, i) => Math.max(v, overBlack[i]!)) : overWhite,
          overBlack,
          white: CARD_WHITE,
          black: CARD_BLACK,
        };
        if (checkReadings(readings).length > 0) {
          expect(() => measuredInk(naming, readings)).toThrow();
          return;
        }
        kept++;
        const { ink } = measuredInk(naming, readings);
        for (const value of [...ink.kx, ...ink.sx]) expect(value >= 0 && value < Infinity).toBe(true);
      }),
      { seed: 9416, numRuns: 400 },
    );
    expect(kept).toBeGreaterThan(100);
    expect(kept).toBeLessThan(400);
  });
});

describe('twoBackground', () => {
  it('should give a film or an error for any readings, never NaN', () => {
    const value = fc.oneof(fc.double({ min: -0.1, max: 1.1 }), fc.constantFrom(0, 1, 0.5, 1e-9, 1 - 1e-9));
    let solved = 0;
    fc.assert(
      fc.property(value, value, value, value, (rw, rb, gw, gb) => {
        try {
          const { kx, sx } = twoBackground([rw], [rb], [gw], [gb]);
          expect(kx[0]! >= 0 && kx[0]! < Infinity && sx[0]! >= 0 && sx[0]! < Infinity).toBe(true);
          solved++;
        } catch (error) {
          expect((error as { code?: string }).code).toMatch(/^ink\./u);
        }
      }),
      { seed: 1948, numRuns: 5000 },
    );
    expect(solved).toBeGreaterThan(300);
  });
});

describe('bandWords', () => {
  it('should join neighbours to runs', () => {
    expect(bandWords([2, 3, 4, 18])).toBe('400–420 and 560 nm');
    expect(bandWords([0])).toBe('380 nm');
    expect(bandWords([0, 2, 35])).toBe('380, 400 and 730 nm');
  });
});
