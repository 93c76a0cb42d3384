import { converter, formatHex, toGamut } from 'culori';
import { describe, it, expect } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { encodeSrgb8, linearFromSrgb } from '../../../src/engine/colour/encode.ts';
import { labD50, labFromXyzD50, xyzD50, xyzD50FromLab, type Lab } from '../../../src/engine/colour/lab.ts';
import { oklabFromLinearSrgb } from '../../../src/engine/colour/oklab.ts';
import { labFromSrgbHex, srgbHexFromLab } from '../../../src/engine/colour/screen-colour.ts';
import { LINEAR_SRGB_FROM_BANDS, inSrgbGamut, linearSrgbFromReflectance, linearSrgbFromXyzD50 } from '../../../src/engine/colour/srgb.ts';
import { BANDS } from '../../../src/engine/colour/weights.ts';
import { swatchOf } from '../../../src/engine/ink/film/swatch.ts';
import { colourCells } from '../../../src/engine/stack/appearance.ts';
import type { CellMap } from '../../../src/engine/stack/types.ts';

const toRgb = converter('rgb');
const toLinear = converter('lrgb');
const toLab = converter('lab');
const toOklab = converter('oklab');
const slope = Float64Array.from({ length: BANDS }, (_, i) => 0.1 + 0.02 * i);

describe('labFromXyzD50', () => {
  it('should be undone by xyzD50FromLab, dark and light', () => {
    for (const lab of [
      [0.5, 0.1, -0.2],
      [7.9, 1, 2],
      [50, -40, 60],
      [99, 1, -1],
    ] as Lab[]) {
      const back = labFromXyzD50(...xyzD50FromLab(lab));
      back.forEach((value, i) => expect(value).toBeCloseTo(lab[i]!, 10));
    }
  });
});

describe('linearSrgbFromReflectance', () => {
  it('should give 1, 1, 1 for a perfect white', () => {
    const out = linearSrgbFromReflectance(new Float64Array(BANDS).fill(1), new Float64Array(3));
    out.forEach((value) => expect(value).toBeCloseTo(1, 12));
  });

  it('should be the way through tristimulus values in one matrix', () => {
    expect(LINEAR_SRGB_FROM_BANDS).toHaveLength(108);
    const direct = linearSrgbFromReflectance(slope, new Float64Array(3));
    linearSrgbFromXyzD50(xyzD50(slope)).forEach((value, i) => {
      expect(direct[i]).toBeCloseTo(value, 13);
    });
  });

  // culori converts CSS lab(), which is D50 too, with its own matrices and rounded whites.
  it('should agree with culori', () => {
    const [l, a, b] = labD50(slope);
    const expected = toLinear({ mode: 'lab', l, a, b });
    const direct = linearSrgbFromReflectance(slope, new Float64Array(3));
    expect(Math.abs(direct[0]! - expected.r)).toBeLessThan(5e-4);
    expect(Math.abs(direct[1]! - expected.g)).toBeLessThan(5e-4);
    expect(Math.abs(direct[2]! - expected.b)).toBeLessThan(5e-4);
  });
});

describe('encodeSrgb8', () => {
  it('should round as culori encodes, over the whole range', () => {
    for (let i = 0; i <= 20000; i++) {
      const linear = i / 20000;
      const exact = toRgb({ mode: 'lrgb', r: linear, g: linear, b: linear }).r * 255;
      // At an exact half either neighbour is right.
      expect(Math.abs(encodeSrgb8(linear) - exact)).toBeLessThan(0.5 + 1e-9);
    }
  });

  it('should give back every code, and clip', () => {
    for (let code = 0; code < 256; code++) {
      expect(encodeSrgb8(linearFromSrgb(code / 255))).toBe(code);
    }
    expect([-1, 2, NaN, Infinity].map(encodeSrgb8)).toEqual([0, 255, 0, 255]);
  });
});

describe('srgbHexFromLab', () => {
  it('should agree with culori inside the gamut to one code', () => {
    for (const [l, a, b] of [
      [50, 20, 20],
      [80, -20, 30],
      [30, 10, -30],
      [95, 0, 4],
    ] as Lab[]) {
      const ours = srgbHexFromLab([l, a, b]);
      const theirs = formatHex({ mode: 'lab', l, a, b });
      for (const i of [1, 3, 5]) {
        const gap = parseInt(ours.slice(i, i + 2), 16) - parseInt(theirs.slice(i, i + 2), 16);
        expect(Math.abs(gap)).toBeLessThanOrEqual(1);
      }
    }
  });

  it('should keep lightness where the screen lacks the chroma', () => {
    const strong: Lab = [60, 90, 80];
    expect(inSrgbGamut(...linearSrgbFromXyzD50(xyzD50FromLab(strong)))).toBe(false);
    const hex = srgbHexFromLab(strong);
    const oklab = toOklab({ mode: 'lab', l: 60, a: 90, b: 80 });
    expect(hex).toMatch(/^#[0-9a-f]{6}$/);
    expect(Math.abs(toOklab(hex)!.l - oklab.l)).toBeLessThan(0.03);
  });

  it('should map colours outside as culori does, to a code', () => {
    const map = toGamut('rgb', 'oklch');
    const random = randomFrom('outside');
    let outside = 0;
    for (let i = 0; i < 2000; i++) {
      const lab: Lab = [random.int(110), random.int(240) - 120, random.int(240) - 120];
      const [r, g, b] = linearSrgbFromXyzD50(xyzD50FromLab(lab));
      if (inSrgbGamut(r, g, b)) continue;
      outside++;
      const theirs = formatHex(map({ mode: 'lrgb', r, g, b }));
      const ours = srgbHexFromLab(lab);
      for (const at of [1, 3, 5]) {
        expect(Math.abs(parseInt(ours.slice(at, at + 2), 16) - parseInt(theirs.slice(at, at + 2), 16))).toBeLessThanOrEqual(1);
      }
    }
    expect(outside).toBeGreaterThan(500);
  });

  it('should show a saturated cyan as a picture of it does', () => {
    const cyan = Array.from({ length: 36 }, (_, band) => (band < 18 ? 0.85 : 0.01));
    const map: CellMap = {
      ...{ widthMm: 1, heightMm: 1, rows: 1, screens: 0, cells: 1, words: 1 },
      ...{ cover: new Uint32Array(1), areaMm2: Float64Array.of(1), rowStart: Uint32Array.of(0, 1) },
      ...{ runEndMm: Float64Array.of(1), runCell: new Uint32Array(1) },
    };
    const swatch = swatchOf(cyan);
    expect(swatch.inGamut).toBe(false);
    const word = colourCells(map, [], cyan, undefined, false).packed[0]!;
    const hex = [0, 8, 16].map((by) => ((word >>> by) & 255).toString(16).padStart(2, '0')).join('');
    expect(`#${hex}`).toBe(swatch.hex);
  });

  it('should be undone by labFromSrgbHex', () => {
    for (const hex of ['#000000', '#ffffff', '#c0ffee', '#123456', '#ff0000']) {
      expect(srgbHexFromLab(labFromSrgbHex(hex))).toBe(hex);
    }
  });
});

describe('labFromSrgbHex', () => {
  it('should agree with culori', () => {
    const [l, a, b] = labFromSrgbHex('#b5623a');
    const expected = toLab('#b5623a')!;
    expect(Math.hypot(l - expected.l, a - expected.a, b - expected.b)).toBeLessThan(0.05);
  });

  it('should refuse what is no colour', () => {
    for (const bad of ['', 'red', '#12', '#gggggg', '#1234567']) {
      expect(() => labFromSrgbHex(bad)).toThrow(/six hex digits/);
    }
  });
});

describe('oklabFromLinearSrgb', () => {
  it('should agree with culori', () => {
    for (const [r, g, b] of [
      [1, 1, 1],
      [0.2, 0.5, 0.1],
      [0, 0, 0.9],
      [0.7, 0.05, 0.02],
    ] as const) {
      const expected = toOklab({ mode: 'lrgb', r, g, b });
      const found = oklabFromLinearSrgb(r, g, b);
      expect(found[0]).toBeCloseTo(expected.l, 6);
      expect(found[1]).toBeCloseTo(expected.a, 6);
      expect(found[2]).toBeCloseTo(expected.b, 6);
    }
  });
});
