import { describe, expect, it } from 'vitest';
import { hexOfText } from '../../../src/components/inks/add/hex-text.ts';
import { freeName } from '../../../src/components/inks/add/ink-draft.ts';
import { deltaWords, mixName, weighLines } from '../../../src/components/inks/match/match-words.ts';
import { filmFigures } from '../../../src/components/inks/mesh/film-figures.ts';
import { meshChoices, meshName, sameMesh } from '../../../src/components/inks/mesh/mesh-choice.ts';
import { averagePatch, onPhoto, patchReach } from '../../../src/components/inks/photo/photo-patch.ts';
import { linearFromSrgb } from '../../../src/engine/colour/encode.ts';
import { demoStocks } from '../../../src/engine/ink/demo/demo-stocks.ts';
import type { MatchAnswer } from '../../../src/engine/ink/mix/match.ts';

describe('hexOfText', () => {
  it('should take a colour as it is typed', () => {
    expect(hexOfText(' #A63C20 ')).toBe('#a63c20');
    expect(hexOfText('a52')).toBe('#aa5522');
  });
  it('should refuse what is none', () => {
    for (const text of ['', '#12', 'red', '#12345g', '#1234567']) expect(hexOfText(text)).toBeNull();
  });
});

describe('freeName', () => {
  it('should number a name that is taken', () => {
    expect(freeName('Mist', ['Rust'])).toBe('Mist');
    expect(freeName('Mist', ['Mist', 'Mist 2'])).toBe('Mist 3');
  });
});

describe('filmFigures', () => {
  it('should follow the catalogue row 90/225-48 and the rule for dry film', () => {
    // "Screen Specifications": w 65 µm, 33 %, 24 cm³/m²; wet and dry are arithmetic: 24 × 0.8 × 1.4, × 0.35.
    const mesh = { threadsPerCm: 225 / 2.54, threadUm: 48, fabricUm: 72 };
    const figures = filmFigures(mesh, 2, 0.4, 0.8, 0.35);
    expect(figures.openingUm).toBeCloseTo(65, 0);
    expect(figures.openAreaPct).toBeCloseTo(33, 0);
    expect(Math.abs(figures.volumeCm3PerM2 - 24)).toBeLessThan(0.5);
    expect(figures.wetUm).toBeCloseTo(figures.volumeCm3PerM2 * 0.8 * 1.4, 9);
    expect(figures.dryUm).toBeCloseTo(figures.wetUm * 0.35, 9);
  });
});

describe('meshChoices', () => {
  it('should put the meshes of the screens first and none twice', () => {
    const { screens, table } = meshChoices([{ mesh: { threadsPerCm: 90, threadUm: 48 } }, { mesh: { threadUm: 48, threadsPerCm: 90 } }], {
      threadsPerCm: 71,
      threadUm: 60,
    });
    expect(screens.map(({ label }) => label)).toEqual(['90-48', '71-60']);
    expect(table.some(({ label }) => label === '90-48')).toBe(false);
    expect(table.some(({ label }) => label === '43-80')).toBe(true);
  });
  it('should tell a stated row from the formula of the same threads', () => {
    expect(sameMesh({ threadsPerCm: 90, threadUm: 48 }, { threadsPerCm: 90, threadUm: 48, statedOpenArea: 0.33 })).toBe(false);
    expect(meshName({ threadsPerCm: 88.25, threadUm: 48 })).toBe('88.3-48');
  });
});

describe('averagePatch', () => {
  const pixels = { width: 4, height: 4, data: new Uint8ClampedArray(64).fill(255) };
  it('should average light, not code values', () => {
    // A half-black, half-white square has half the light: code 188, as IEC 61966-2-1 encodes 0.5.
    pixels.data.fill(0, 0, 32);
    const [r] = averagePatch(pixels, 1, 1, 10);
    expect(r).toBe(188);
    expect(linearFromSrgb(r / 255)).toBeCloseTo(0.5, 2);
  });
  it('should leave out what lies off the photo', () => {
    expect(averagePatch(pixels, 0, 3, 1)).toEqual([255, 255, 255]);
  });
  it('should keep the loupe on the photo', () => {
    expect(onPhoto(pixels, -5, 2.4)).toEqual([0, 2]);
    expect(onPhoto(pixels, 9, 9)).toEqual([3, 3]);
    expect(patchReach({ width: 1600, height: 1200 })).toBe(12);
  });
});

describe('words of a mix', () => {
  const [base, lime, soot] = demoStocks();
  const answer: Pick<MatchAnswer, 'parts' | 'deltaE' | 'exactDeltaE'> = {
    parts: [
      { ink: base!, share: 0.5, grams: 30 },
      { ink: soot!, share: 0.2, grams: 4 },
      { ink: lime!, share: 0.3, grams: 16 },
    ],
    deltaE: 0.42,
    exactDeltaE: 0.18,
  };
  it('should name the strongest inks, not the base', () => {
    expect(mixName(answer)).toBe('Quay lime and Stack soot');
    expect(mixName({ parts: answer.parts.slice(0, 1) })).toBe('Clear water');
  });
  it('should give parts of 100 by weight', () => {
    expect(weighLines(answer).map(({ hundredths, grams }) => [hundredths, grams])).toEqual([
      ['60.0', '30.0'],
      ['8.0', '4.0'],
      ['32.0', '16.0'],
    ]);
  });
  it('should tell what rounding cost', () => {
    expect(deltaWords(answer)).toBe('ΔE 0.4 as weighed, 0.2 before rounding');
    expect(deltaWords({ deltaE: 0.41, exactDeltaE: 0.4 })).toBe('ΔE 0.4');
  });
});
