import * as fc from 'fast-check';
import { describe, it, expect } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../../src/engine/colour/lab.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { coloursOn, inkCurvesFromColours, twoBackground } from '../../../../src/engine/ink/characterise/characterise.ts';
import { checkInk } from '../../../../src/engine/ink/characterise/check-ink.ts';
import { guessInk } from '../../../../src/engine/ink/characterise/guess.ts';
import { makeInk } from '../../../../src/engine/ink/characterise/make-ink.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';

const over = (k: number, s: number, g: number): number => stackReflectance([{ kx: [k], sx: [s] }], [g])[0]!;

describe('twoBackground', () => {
  it('should give back the film that made the readings', () => {
    const strength = fc.double({ min: 0, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(strength, strength, (k, s) => {
        const found = twoBackground([over(k, s, 0.9)], [over(k, s, 0.02)], [0.9], [0.02]);
        expect(found.kx[0]).toBeCloseTo(k, 7);
        expect(found.sx[0]).toBeCloseTo(s, 7);
        expect(found.adjusted).toEqual([]);
      }),
      { seed: 48, numRuns: 300 },
    );
  });

  it('should never give NaN or a negative: a film that gives near readings, or an error', () => {
    const any = fc.double({ min: 0, max: 1 });
    let solved = 0;
    fc.assert(
      fc.property(any, any, any, any, (rw, rb, gw, gb) => {
        let found;
        try {
          found = twoBackground([rw], [rb], [gw], [gb]);
        } catch (error) {
          expect((error as { code: string }).code).toMatch(/^ink\./);
          return;
        }
        solved++;
        expect(found.kx[0]).toBeGreaterThanOrEqual(0);
        expect(found.sx[0]).toBeGreaterThanOrEqual(0);
        expect(found.kx[0]! + found.sx[0]!).toBeLessThan(Infinity);
      }),
      { seed: 48, numRuns: 3000 },
    );
    expect(solved).toBeGreaterThan(100);
  });

  it('should list the bands it had to mend', () => {
    const found = twoBackground([0.4, 0.5], [0.4, 0.3], [0.9, 0.9], [0.02, 0.02]);
    expect(found.adjusted).toEqual([0]);
    expect(over(found.kx[0]!, found.sx[0]!, 0.9)).toBeCloseTo(0.4, 5);
  });

  it('should take a film that seems to scatter less than nothing for one that absorbs alone', () => {
    // Darker over black than any film without scattering: by Beer and Lambert light crosses it twice, so T² = Rw ÷ Rg.
    const found = twoBackground([0.5], [0.005], [0.9], [0.02]);
    expect(found.adjusted).toEqual([0]);
    expect(found.sx[0]).toBe(0);
    expect(found.kx[0]).toBeCloseTo(-Math.log(0.5 / 0.9) / 2, 9);
  });

  it('should take a film that seems to gain light for one that scatters alone, as bright by itself', () => {
    // R0 + T = 1.05, over both grounds by Kubelka 1948: R = R0 + T² Rg ÷ (1 − R0 Rg).
    const [r0, t] = [0.3, 0.75];
    const read = (ground: number): number[] => [r0 + (t * t * ground) / (1 - r0 * ground)];
    const found = twoBackground(read(0.9), read(0.02), [0.9], [0.02]);
    expect(found.adjusted).toEqual([0]);
    expect(found.kx[0]).toBeCloseTo(0, 9);
    // Without absorption R0 = SX ÷ (1 + SX) (the same paper).
    expect(found.sx[0]).toBeCloseTo(r0 / (1 - r0), 9);
  });

  it('should take readings above 1 as 1 and say so', () => {
    const found = twoBackground([1.05, 0.5, 1], [0.3, 0.3, 0.3], [0.9, 1.1, 0.9], [0.02, 0.02, 0.02]);
    const cut = twoBackground([1, 0.5, 1], [0.3, 0.3, 0.3], [0.9, 1, 0.9], [0.02, 0.02, 0.02]);
    expect(found.adjusted).toEqual([0, 1, 2]);
    expect(cut.adjusted).toEqual([0, 2]);
    expect([found.kx, found.sx]).toEqual([cut.kx, cut.sx]);
  });

  it.each([
    ['ink.card-contrast', [0.4], [0.3], [0.5], [0.48]],
    ['ink.over-black-brighter', [0.3], [0.5], [0.9], [0.02]],
    ['ink.bad-reflectance', [NaN], [0.1], [0.9], [0.02]],
    ['ink.bad-reflectance', [1.21], [0.1], [0.9], [0.02]],
    ['ink.bad-reflectance', [0.5], [-0.01], [0.9], [0.02]],
    ['ink.bands', [0.5, 0.5], [0.1], [0.9], [0.02]],
  ])('should refuse with %s', (code, rw, rb, gw, gb) => {
    expect(() => twoBackground(rw, rb, gw, gb)).toThrow(expect.objectContaining({ code }));
  });
});

describe('inkCurvesFromColours', () => {
  it('should give both colours back', () => {
    for (const [white, black] of [
      [
        [60, 30, 20],
        [40, 15, 10],
      ],
      [
        [88, -3, 60],
        [50, -5, 25],
      ],
      [
        [30, 5, -30],
        [18, 2, -12],
      ],
    ] as [Lab, Lab][]) {
      const found = inkCurvesFromColours(white, black, CARD_WHITE, CARD_BLACK);
      expect(deltaE2000(found.overWhite, white)).toBeLessThan(0.01);
      expect(deltaE2000(found.overBlack, black)).toBeLessThan(0.01);
    }
  });

  it('should take too dark a colour over black for a film that does not scatter', () => {
    const found = inkCurvesFromColours([60, -20, 10], [2, 0, 0], CARD_WHITE, CARD_BLACK);
    expect(deltaE2000(found.overWhite, [60, -20, 10])).toBeLessThan(0.01);
    expect(Math.max(...found.sx)).toBeLessThan(1e-6);
  });
});

describe('guessInk', () => {
  it('should have the colour over white and hide more the more opaque', () => {
    const colour: Lab = [55, 25, 30];
    const guesses = (['transparent', 'translucent', 'opaque'] as const).map((opacity) => guessInk(colour, opacity));
    for (const guess of guesses) expect(deltaE2000(guess.overWhite, colour)).toBeLessThan(1e-3);
    const [a, b, c] = guesses.map((guess) => guess.overBlack[0]);
    expect(a).toBeLessThan(b! - 5);
    expect(b).toBeLessThan(c! - 5);
    expect(c).toBeGreaterThan(50);
  });
});

describe('demoInks', () => {
  const inks = demoInks();
  const paper = DEMO_PAPER.reflectance;
  const by = (id: string) => inks.find((ink) => ink.id === id)!;
  const orderGap = (a: string, b: string): number =>
    deltaE2000(labD50(stackReflectance([by(a), by(b)], paper)), labD50(stackReflectance([by(b), by(a)], paper)));

  it('should be eight sound inks whose films have the stated colours', () => {
    expect(inks.map((ink) => ink.id)).toEqual(['tar', 'rust', 'weed', 'shoal', 'foam', 'signal', 'dusk', 'clay']);
    for (const ink of inks) {
      expect(checkInk(ink)).toEqual([]);
      expect(ink.basis).toBe('invented');
      expect(deltaE2000(labD50(stackReflectance([ink], CARD_WHITE)), ink.overWhite)).toBeLessThan(0.05);
      expect(deltaE2000(labD50(stackReflectance([ink], CARD_BLACK)), ink.overBlack)).toBeLessThan(0.05);
    }
  });

  it('should be well apart on the paper, some order-bound and some nearly free', () => {
    for (const [i, a] of inks.entries()) {
      for (const b of inks.slice(i + 1)) {
        const gap = deltaE2000(labD50(stackReflectance([a], paper)), labD50(stackReflectance([b], paper)));
        expect(gap).toBeGreaterThan(12);
      }
    }
    expect(orderGap('shoal', 'dusk')).toBeLessThan(2);
    expect(orderGap('clay', 'dusk')).toBeGreaterThan(20);
  });

  it('should come on a paper whose printable part lies in the middle', () => {
    const { widthMm, heightMm, printable } = DEMO_PAPER;
    expect(paper).toHaveLength(36);
    expect(printable.xMm * 2 + printable.widthMm).toBe(widthMm);
    expect(printable.yMm * 2 + printable.heightMm).toBe(heightMm);
  });
});

describe('checkInk', () => {
  const sound = { id: 'x', name: 'Kelp', basis: 'drawdown' as const, overWhite: [60, 10, 20] as Lab, overBlack: [40, 5, 10] as Lab };
  const codes = (change: Partial<typeof sound> & { dryMinutes?: number; densityGPerCm3?: number }) =>
    checkInk({ ...sound, ...change }).map((problem) => problem.code);

  it('should find nothing wrong with a sound ink, which can then be made', () => {
    expect(codes({})).toEqual([]);
    expect(makeInk(sound).kx).toHaveLength(36);
  });

  it('should name each fault', () => {
    expect(codes({ name: ' ' })).toEqual(['ink.no-name']);
    expect(codes({ overBlack: [70, 5, 10] })).toEqual(['ink.over-black-brighter']);
    expect(codes({ overWhite: [95, 90, 0] })).toEqual(['colour.outside-solid']);
    expect(codes({ overWhite: [NaN, 0, 0] })).toEqual(['ink.bad-colour']);
    expect(codes({ overBlack: [120, 0, 0] })).toEqual(['ink.bad-colour']);
    expect(codes({ overBlack: [50, 0, -40] })).toEqual(['ink.impossible-pair']);
    expect(codes({ overBlack: [2, 0, 0] })).toEqual(['ink.colour-missed']);
    expect(codes({ dryMinutes: -1, densityGPerCm3: NaN })).toEqual(['ink.bad-dry-time', 'ink.bad-density']);
  });

  it('should be right: without problems making the ink works and keeps both colours', () => {
    const chroma = fc.integer({ min: -60, max: 60 });
    const lab = fc.tuple(fc.integer({ min: 0, max: 100 }), chroma, chroma);
    let kept = 0;
    fc.assert(
      fc.property(lab, lab, (overWhite, overBlack) => {
        const problems = checkInk({ ...sound, overWhite, overBlack });
        if (problems.some((problem) => problem.code !== 'ink.colour-missed')) return;
        const ink = makeInk({ ...sound, overWhite, overBlack });
        expect([...ink.kx, ...ink.sx].every((v) => v >= 0 && v < Infinity)).toBe(true);
        if (problems.length > 0) return;
        kept++;
        const given = coloursOn(ink, CARD_WHITE, CARD_BLACK);
        expect(deltaE2000(given.overWhite, overWhite)).toBeLessThanOrEqual(2);
        expect(deltaE2000(given.overBlack, overBlack)).toBeLessThanOrEqual(2);
      }),
      { seed: 3, numRuns: 600 },
    );
    expect(kept).toBeGreaterThan(10);
  });
});
