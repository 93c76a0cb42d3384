import { describe, expect, it } from 'vitest';
import { DENSITY_G_PER_CM3, OFFSET_MM, OFFSET_RANGE_MM } from '../../../src/engine/base/limits.ts';
import { checkExplore } from '../../../src/engine/explore/settings/check.ts';
import { checkInk } from '../../../src/engine/ink/characterise/check-ink.ts';
import { apply } from '../../../src/engine/project/apply.ts';
import { readProject } from '../../../src/engine/project/read.ts';
import type { Project } from '../../../src/engine/project/types.ts';
import { writeProject } from '../../../src/engine/project/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

function isRead(project: Project): boolean {
  return readProject(writeProject(project), 'a.json').value !== null;
}

function withDensity(densityGPerCm3: number): { checked: boolean; read: boolean } {
  const ink = { ...smallProject().drawer.inks[0]!, densityGPerCm3 };
  const problems = checkInk(ink);
  const { project } = apply(smallProject(), { kind: 'change-ink', ink });
  return { checked: !problems.some(({ code }) => code === 'ink.bad-density'), read: isRead(project) };
}

function withShift(offsetRangeMm: number): { checked: boolean; read: boolean } {
  const { project } = apply(smallProject(), { kind: 'set-explore', change: { offsetRangeMm } });
  const problems = checkExplore(project.explore, project.drawer, project.bench);
  return { checked: !problems.some(({ code }) => code === 'explore.offset-range'), read: isRead(project) };
}

// Both limits are decisions of this program, no source; the doors must agree on them.
describe('limits', () => {
  it.each([0.49, 0.5, 3, 3.01, 5, 5.01])('should be the same for a density of %d g/cm³ when it is typed and when it is read', (density) => {
    const right = density >= DENSITY_G_PER_CM3.least && density <= DENSITY_G_PER_CM3.most;
    expect(withDensity(density)).toEqual({ checked: right, read: right });
  });

  it.each([-0.1, 0, 100, 100.1, 1000, 1000.1])(
    'should be the same for a shift of %d mm when it is asked for and when it is read',
    (shift) => {
      const right = shift >= OFFSET_RANGE_MM.least && shift <= OFFSET_RANGE_MM.most;
      expect(withShift(shift)).toEqual({ checked: right, read: right });
    },
  );

  it('should take what either door took before', () => {
    expect(DENSITY_G_PER_CM3).toEqual({ least: 0.5, most: 5 });
    expect(OFFSET_RANGE_MM).toEqual({ least: 0, most: 1000 });
    expect(OFFSET_MM).toEqual({ least: -2000, most: 2000 });
  });
});
