import { describe, expect, it } from 'vitest';
import { dryFilmUm } from '../../../src/engine/ink/film/dry-film.ts';
import { MESH_TABLE } from '../../../src/engine/ink/film/mesh-table.ts';
import { meshOpenArea, meshOpeningUm, meshVolumeCm3PerM2 } from '../../../src/engine/ink/film/mesh.ts';
import published from './mesh.json' with { type: 'json' };

describe('mesh', () => {
  it.each(published.sieves)('should have the opening and open area of a sieve of $apertureUm µm', ({ apertureUm, wireUm, openAreaPct }) => {
    const mesh = { threadsPerCm: 10_000 / (apertureUm + wireUm), threadUm: wireUm };
    expect(meshOpeningUm(mesh)).toBeCloseTo(apertureUm, 9);
    expect(Math.abs(100 * meshOpenArea(mesh) - openAreaPct)).toBeLessThanOrEqual(published.tolerance.openAreaPct);
  });

  it.each(published.rows)('should agree with the catalogue row $mesh', (row) => {
    const mesh = { threadsPerCm: row.threadsPerInch / 2.54, threadUm: row.threadUm, fabricUm: row.fabricUm };
    const { tolerance } = published;
    expect(Math.abs(meshOpeningUm(mesh) - row.openingUm)).toBeLessThanOrEqual(tolerance.openingUm);
    expect(Math.abs(100 * meshOpenArea(mesh) - row.openAreaPct)).toBeLessThanOrEqual(tolerance.openAreaPct);
    expect(Math.abs(meshVolumeCm3PerM2(mesh) - row.volumeCm3PerM2)).toBeLessThanOrEqual(tolerance.volumeCm3PerM2);
  });

  it('should give the rule of thumb its worked value when the fabric is as thick as it takes', () => {
    const { threadsPerCm, threadUm, fabricPerThread, inkUm } = published.ruleOfThumb;
    const volume = meshVolumeCm3PerM2({ threadsPerCm, threadUm, fabricUm: fabricPerThread * threadUm });
    expect(Math.abs(volume - inkUm)).toBeLessThanOrEqual(published.tolerance.ruleOfThumbUm);
  });

  it('should ship the catalogue rows with what the catalogue says', () => {
    for (const row of published.rows) {
      const { mesh, basis, source } = MESH_TABLE.find(({ label }) => label === row.mesh)!;
      expect([basis, mesh.fabricUm, mesh.statedVolumeCm3PerM2, mesh.statedOpenArea]).toEqual([
        'published',
        row.fabricUm,
        row.volumeCm3PerM2,
        row.openAreaPct / 100,
      ]);
      expect(source).toContain('catalogue');
      expect(Math.abs(meshOpeningUm(mesh) - row.openingUm)).toBeLessThanOrEqual(published.tolerance.openingUm);
      expect(meshVolumeCm3PerM2(mesh)).toBe(row.volumeCm3PerM2);
    }
  });

  it('should keep a measured open area before the formula, which is higher', () => {
    const { mesh } = MESH_TABLE.find(({ label }) => label === published.measured.mesh)!;
    expect(100 * meshOpenArea(mesh)).toBeCloseTo(published.measured.openAreaPct, 9);
    const { statedOpenArea: _, ...plain } = mesh;
    expect(100 * meshOpenArea(plain)).toBeCloseTo(published.measured.formulaPct, 1);
  });

  it.each(published.arithmetic)('should give $mesh the volume of plain arithmetic', ({ mesh: label, volumeCm3PerM2 }) => {
    const row = MESH_TABLE.find((each) => each.label === label)!;
    expect(row.basis).toBe('arithmetic');
    expect(Math.abs(meshVolumeCm3PerM2(row.mesh) - volumeCm3PerM2)).toBeLessThanOrEqual(0.05);
  });

  it('should dry by transfer and solids', () => {
    // By hand: 24 cm³/m² × 0.8 × 0.35.
    expect(dryFilmUm({ threadsPerCm: 90, threadUm: 48, statedVolumeCm3PerM2: 24 })).toBeCloseTo(6.72, 12);
    expect(() => dryFilmUm({ threadsPerCm: 90, threadUm: 48 }, 1.2)).toThrow('transfer');
  });
});
