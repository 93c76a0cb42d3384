import { describe, expect, it } from 'vitest';
import { meshChoices, meshName } from '../../../../src/engine/ink/film/mesh-choices.ts';
import { meshKey, sameMesh } from '../../../../src/engine/ink/film/mesh.ts';

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

describe('sameMesh', () => {
  const mesh = { threadsPerCm: 90, threadUm: 48 };
  it('should not mind the order of the figures, nor whether one left out is written as undefined', () => {
    expect(sameMesh(mesh, { threadUm: 48, threadsPerCm: 90 })).toBe(true);
    expect(sameMesh(mesh, { ...mesh, fabricUm: undefined, statedOpenArea: undefined })).toBe(true);
    expect(meshKey(mesh)).toBe(meshKey({ statedVolumeCm3PerM2: undefined, threadUm: 48, threadsPerCm: 90 }));
  });
  it.each(['threadsPerCm', 'threadUm', 'fabricUm', 'statedOpenArea', 'statedVolumeCm3PerM2'] as const)('should mind %s', (figure) => {
    expect(sameMesh({ ...mesh, [figure]: 0.3 }, { ...mesh, [figure]: 0.31 })).toBe(false);
    expect(sameMesh({ ...mesh, [figure]: 0.3 }, mesh)).toBe(false);
  });
  it('should tell a mesh from one that is not known', () => {
    expect(sameMesh(undefined, undefined)).toBe(true);
    expect(sameMesh(mesh, undefined)).toBe(false);
    expect(sameMesh(undefined, mesh)).toBe(false);
  });
});
