import { describe, expect, it } from 'vitest';
import { meshOpenArea, meshVolumeCm3PerM2 } from '../../../../src/engine/ink/film/mesh.ts';

describe('meshVolumeCm3PerM2', () => {
  it('should take the maker’s figures before the formulas', () => {
    const mesh = { threadsPerCm: 120, threadUm: 40 };
    expect(meshOpenArea({ ...mesh, statedOpenArea: 0.25 })).toBe(0.25);
    expect(meshVolumeCm3PerM2({ ...mesh, fabricUm: 63, statedOpenArea: 0.25 })).toBeCloseTo(15.75, 9);
    expect(meshVolumeCm3PerM2({ ...mesh, statedVolumeCm3PerM2: 17 })).toBe(17);
  });

  it('should refuse threads that leave no opening', () => {
    expect(() => meshVolumeCm3PerM2({ threadsPerCm: 120, threadUm: 90 })).toThrow('leaves no opening');
    expect(() => meshVolumeCm3PerM2({ threadsPerCm: Number.NaN, threadUm: 40 })).toThrow('no opening');
    expect(() => meshOpenArea({ threadsPerCm: 120, threadUm: 40, statedOpenArea: 2 })).toThrow('between 0 and 1');
  });
});
