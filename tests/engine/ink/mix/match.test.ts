import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { deltaE2000Parts } from '../../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../../src/engine/colour/lab.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { demoStocks } from '../../../../src/engine/ink/demo/demo-stocks.ts';
import { filmFactor } from '../../../../src/engine/ink/film/film-factor.ts';
import { filmOver } from '../../../../src/engine/ink/film/film-slope.ts';
import { filmMatrix, stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { swatchLab, swatchReflectance } from '../../../../src/engine/ink/film/swatch.ts';
import { matchInk, matchInkSteps, type MatchAnswer } from '../../../../src/engine/ink/mix/match.ts';
import { mixInks } from '../../../../src/engine/ink/mix/mix.ts';
import { coarseMatch } from '../coarse-match.ts';

const stocks = demoStocks();
const ground = DEMO_PAPER.reflectance;

/** What an answer's grams give, mixed and printed by the plain functions. */
function printed(answer: MatchAnswer, over: ArrayLike<number>, factor = 1): Lab {
  const { kx, sx } = mixInks(
    answer.parts.map(({ ink, grams }) => ({ ink, parts: grams })),
    { id: 'x', name: 'x' },
  );
  return labD50(stackReflectance([{ kx: kx.map((k) => k * factor), sx: sx.map((s) => s * factor) }], over));
}

describe('filmOver', () => {
  it('should give the film of filmMatrix and the slopes of its differences', () => {
    const amount = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(amount, amount, fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 0, max: 6 }), (k0, s0, g, power) => {
        const [k, s] = [k0 / 10 ** power, s0 / 10 ** power];
        const out = new Float64Array(3);
        filmOver(k, s, g, out);
        const [r, rk, rs] = out as unknown as [number, number, number];
        const [q, r0] = filmMatrix(k, s) as unknown as [number, number];
        expect(r).toBeCloseTo((q * g + r0) / (1 - r0 * g), 10);
        const at = (dk: number, ds: number): number => {
          filmOver(k + dk, s + ds, g, out);
          return out[0]!;
        };
        const h = 1e-6;
        expect(Math.abs(rk - (at(h, 0) - r) / h)).toBeLessThan(1e-4 * (1 + Math.abs(rk)));
        expect(Math.abs(rs - (at(0, h) - r) / h)).toBeLessThan(1e-4 * (1 + Math.abs(rs)));
      }),
    );
  });

  it('should hold for films that hide all', () => {
    const out = new Float64Array(3);
    filmOver(1e5, 1e6, 0.5, out);
    // Kubelka and Munk (1931): R∞ = 1 + K/S − √((K/S)² + 2K/S).
    expect(out[0]).toBeCloseTo(1 + 0.1 - Math.sqrt(0.01 + 0.2), 12);
  });
});

describe('deltaE2000Parts', () => {
  it('should add up to ΔE00', () => {
    const parts = new Float64Array(4);
    deltaE2000Parts(50, 20, -30, 62, -5, -41, parts);
    const [l, c, h, rotation] = parts as unknown as [number, number, number, number];
    expect(Math.sqrt(l * l + c * c + h * h + rotation * c * h)).toBeCloseTo(deltaE2000([50, 20, -30], [62, -5, -41]), 12);
  });
});

describe('matchInk', () => {
  const targets: [string, Lab][] = [
    ...demoInks()
      .filter(({ id }) => ['tar', 'foam', 'signal'].includes(id))
      .map((ink): [string, Lab] => [ink.id, swatchLab(ink, ground)]),
    ['a grey', [60, 0, 0]],
    ['a strong red', [50, 90, 60]],
    ['a strong green', [70, -60, 30]],
    ['black', [5, 0, 0]],
    ['a violet', [30, 60, -70]],
  ];

  it.each(targets)('should come within ΔE 0.1 of an exhaustive search for %s', (_name, target) => {
    const [first] = matchInk(target, stocks, { ground, balanceG: 1e-6 }).answers;
    expect(first!.deltaE).toBeLessThan(coarseMatch(target, stocks, ground) + 0.1);
  });

  it('should find a mix again that was made from the stocks', () => {
    const made = mixInks(
      [
        { ink: stocks[0]!, parts: 50 },
        { ink: stocks[4]!, parts: 31 },
        { ink: stocks[8]!, parts: 19 },
      ],
      { id: 'x', name: 'x' },
    );
    const target = swatchLab(made, ground);
    const { answers, matched, reason } = matchInk(target, stocks, { ground });
    expect(answers[0]!.deltaE).toBeLessThan(0.05);
    expect([matched, reason]).toEqual([true, '']);
  });

  it('should tell the ΔE of what the balance allows, which the plain functions give as well', () => {
    for (const grams of [3, 20, 250]) {
      const { answers } = matchInk([63, -17, 35], stocks, { ground, grams });
      for (const answer of answers) {
        expect(deltaE2000([63, -17, 35], printed(answer, ground))).toBeCloseTo(answer.deltaE, 6);
        expect(deltaE2000(answer.lab, printed(answer, ground))).toBeLessThan(1e-6);
        const total = answer.parts.reduce((sum, part) => sum + part.grams, 0);
        expect(Math.abs(total - grams)).toBeLessThan(0.26);
        for (const part of answer.parts) {
          expect(part.grams).toBeGreaterThan(0);
          expect(part.grams).toBe(Number(part.grams.toFixed(1)));
        }
      }
    }
  });

  it('should rank by ΔE, then by number of inks, and give different mixes of at most four', () => {
    const { answers } = matchInk([50, 10, 10], stocks, { ground, answers: 20 });
    expect(answers.length).toBeGreaterThan(3);
    const rank = answers.map((answer) => Math.round(answer.deltaE * 10) * 10 + answer.inks);
    expect(rank).toEqual([...rank].sort((a, b) => a - b));
    const names = answers.map((answer) =>
      answer.parts
        .map((part) => part.ink.id)
        .sort()
        .join(),
    );
    expect(new Set(names).size).toBe(answers.length);
    for (const answer of answers) expect(answer.parts.filter(({ ink }) => ink.role !== 'base').length).toBeLessThanOrEqual(4);
    for (const answer of matchInk([50, 10, 10], stocks, { ground, maxInks: 2 }).answers) expect(answer.inks).toBeLessThanOrEqual(2);
  });

  it('should match over another ink, through another mesh, at two strokes', () => {
    const mesh = { threadsPerCm: 61, threadUm: 64 };
    const under = swatchReflectance(demoInks()[7]!, ground, { strokes: 1, strokeGain: 0.4 });
    const { answers } = matchInk([55, 25, 5], stocks, { ground: under, mesh, thickness: 1.4 });
    expect(answers[0]!.deltaE).toBeLessThan(1);
    const factor = 1.4 * filmFactor(stocks[0]!, mesh);
    expect(deltaE2000([55, 25, 5], printed(answers[0]!, under, factor))).toBeCloseTo(answers[0]!.deltaE, 6);
  });

  it('should say so and give the nearest when nothing comes within ΔE 3', () => {
    const result = matchInk([95, 0, 0], stocks, { ground: demoInks()[0]!.kx.map(() => 0.03) });
    expect(result.matched).toBe(false);
    expect(result.answers[0]!.deltaE).toBeGreaterThan(3);
    expect(result.reason).toContain(`ΔE ${result.answers[0]!.deltaE.toFixed(1)} away`);
  });

  it('should go in steps that can be stopped, to the same end', () => {
    const steps = matchInkSteps([40, 20, -20], stocks, { ground });
    const shares: number[] = [];
    let step = steps.next();
    for (; !step.done; step = steps.next()) shares.push(step.value);
    expect(shares.length).toBeGreaterThan(5);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(step.value).toEqual(matchInk([40, 20, -20], stocks, { ground }));
  });

  it('should refuse what it cannot match', () => {
    expect(() => matchInk([Number.NaN, 0, 0], stocks)).toThrow('NaN, 0, 0');
    expect(() => matchInk([120, 0, 0], stocks)).toThrow('L from 0 to 100');
    expect(() => matchInk([50, 0, 0], [])).toThrow('there are 0');
    expect(() => matchInk([50, 0, 0], stocks, { grams: 0 })).toThrow('amount of a match is 0');
    expect(() => matchInk([50, 0, 0], stocks, { ground: [1] })).toThrow('36 reflectances');
    expect(() => matchInk([50, 0, 0], stocks, { maxInks: 5 })).toThrow('1 to 4');
  });

  it('should give the base alone where nothing else is', () => {
    const { answers } = matchInk([50, 0, 0], [stocks[0]!], { ground });
    expect(answers.map(({ inks }) => inks)).toEqual([0]);
    expect(answers[0]!.parts[0]!.grams).toBe(100);
  });
});
