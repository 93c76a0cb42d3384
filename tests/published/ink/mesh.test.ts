import { describe, expect, it } from 'vitest';
import { meshOpenArea, meshOpeningUm, meshVolumeCm3PerM2 } from '../../../src/engine/ink/mesh.ts';
import published from './mesh.json' with { type: 'json' };

describe('mesh', () => {
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
});
