import { describe, expect, it } from 'vitest';
import type { OnwardBy } from '../../../../src/engine/explore/onward/onward.ts';
import { Jobs } from '../../../../src/workers/jobs/jobs.ts';
import { runOnward } from '../../../../src/workers/jobs/onward/onward-job.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { bench, drawer: studio } = smallProject();

describe('runOnward', () => {
  const run = (by: OnwardBy) =>
    runOnward(
      new Jobs(),
      by,
      {
        studio,
        pulls: bench.slice(0, 1),
        asked: { screens: ['s2', 's3'], inks: ['weed', 'foam'], most: 2, by, towards: bench },
        heightPx: 40,
        relative: true,
      },
      () => {},
    );

  it('should paint the print that is aimed at beside the sheet, where one is', async () => {
    const nearer = (await run('nearer'))!;
    // The pulls that lead there are tried, so one of the prints is the very one.
    expect(nearer.pictures[1]!.map(({ pixels }) => pixels.join())).toContain(nearer.aim!.pixels.join());
    expect(nearer.aim!.pixels.join()).not.toBe(nearer.now.pixels.join());
    expect((await run('change'))!.aim).toBeNull();
  });
});
