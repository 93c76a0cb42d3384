import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50 } from '../../../../src/engine/colour/lab.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../../../src/engine/ink/demo/demo-paper.ts';
import { demoStocks } from '../../../../src/engine/ink/demo/demo-stocks.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { letdownFor } from '../../../../src/engine/ink/mix/letdown.ts';
import { letDown } from '../../../../src/engine/ink/mix/mix.ts';
import type { Ink } from '../../../../src/engine/ink/types.ts';

const ground = DEMO_PAPER.reflectance;
const base = demoStocks()[0]!;
const [, rust, weed] = demoInks();

/** What a letdown shows, mixed and printed by the plain functions. */
function shown(ink: Ink, parts: number, thickness: number) {
  const { kx, sx } = letDown(ink, base, parts);
  return labD50(stackReflectance([{ kx: kx.map((k) => k * thickness), sx: sx.map((s) => s * thickness) }], ground));
}

describe('letdownFor', () => {
  it('should find the letdown again that a colour was made with', () => {
    const target = shown(rust!, 3, 1.4);
    const found = letdownFor(target, rust!, base, { ground, strokeGain: 0.4 });
    expect(found).toHaveLength(3);
    expect(found.find(({ strokes }) => strokes === 2)!).toMatchObject({ parts: 3 });
    expect(found.find(({ strokes }) => strokes === 2)!.deltaE).toBeLessThan(1e-6);
    for (const { parts, strokes, deltaE, lab } of found) {
      const lies = shown(rust!, parts, 1 + 0.4 * (strokes - 1));
      expect(deltaE2000(lies, lab)).toBeLessThan(1e-6);
      expect(deltaE2000(target, lies)).toBeCloseTo(deltaE, 6);
    }
  });

  it('should be no further off than any parts of a plain list', () => {
    const target = shown(weed!, 6.5, 1);
    for (const { parts, strokes, deltaE } of letdownFor(target, weed!, base, { ground, strokeGain: 0.3 })) {
      for (let tried = 0; tried <= 40; tried += parts < 5 ? 0.1 : parts < 10 ? 0.5 : 1) {
        expect(deltaE2000(target, shown(weed!, tried, 1 + 0.3 * (strokes - 1)))).toBeGreaterThan(deltaE - 1e-6);
      }
    }
  });

  it('should thin an ink to a depth: half the film needs as much base by volume as ink', () => {
    const clear: Ink = { ...base, kx: base.kx.map(() => 0), sx: base.sx.map(() => 0), densityGPerCm3: rust!.densityGPerCm3 };
    const [first] = letdownFor({ depth: 0.5 }, rust!, clear, { ground, strokeGain: 0.4 });
    expect(first).toMatchObject({ parts: 1, strokes: 1 });
    const byStrokes = letdownFor({ depth: 0.5 }, rust!, clear, { ground, strokeGain: 1 });
    expect(byStrokes.map(({ strokes, parts }) => parts / (2 * strokes - 1))).toEqual([1, 1, 1]);
  });

  it('should find the very parts where they lie between the places that are looked over', () => {
    // A base that does nothing, as heavy as the ink: parts of base = 1 ÷ depth − 1.
    const clear: Ink = { ...base, kx: base.kx.map(() => 0), sx: base.sx.map(() => 0), densityGPerCm3: rust!.densityGPerCm3 };
    const partsAt = (depth: number): number => letdownFor({ depth }, rust!, clear, { ground, strokeGain: 0.4, strokes: [1] })[0]!.parts;
    for (const parts of [0, 0.1, 0.7, 1.3, 2.9, 4.3, 7.5, 11, 17, 23, 31, 37, 40]) expect(partsAt(1 / (1 + parts))).toBeCloseTo(parts, 9);
    // More than the most base that is tried.
    expect(partsAt(1 / 60)).toBe(40);
  });

  it('should need more base on a mesh that carries more', () => {
    const meshes = [
      { threadsPerCm: 43, threadUm: 80 },
      { threadsPerCm: 120, threadUm: 34 },
    ];
    const found = letdownFor({ depth: 0.5 }, rust!, base, { ground, strokeGain: 0.4, strokes: [1], meshes });
    const parts = meshes.map((mesh) => found.find((each) => each.mesh === mesh)!.parts);
    expect(parts[0]!).toBeGreaterThan(3 * parts[1]!);
  });

  it('should refuse what cannot be', () => {
    expect(() => letdownFor({ depth: 0 }, rust!, base, { ground, strokeGain: 0.4 })).toThrow('depth is 0');
    expect(() => letdownFor([Number.NaN, 0, 0], rust!, base, { ground, strokeGain: 0.4 })).toThrow('NaN');
    expect(() => letdownFor({ depth: 1 }, rust!, base, { ground, strokeGain: 0.4, strokes: [] })).toThrow('at least one');
    expect(() => letdownFor({ depth: 1 }, rust!, base, { ground, strokeGain: 0.4, strokes: [0] })).toThrow('Strokes');
  });
});
