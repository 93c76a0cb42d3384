import { describe, expect, it } from 'vitest';
import type { ExploreSettings } from '../../../src/engine/explore/types.ts';
import type { WallBatch, WallRequest } from '../../../src/workers/api/wall-api.ts';
import { unpackedBatch } from '../../../src/workers/client/unpacked-batch.ts';
import { helpersFor, type RemoteHelper } from '../../../src/workers/helpers/wall-helpers.ts';
import { Jobs } from '../../../src/workers/jobs/jobs.ts';
import { StudioPictures } from '../../../src/workers/jobs/pictures.ts';
import { runWall } from '../../../src/workers/jobs/wall-job.ts';
import { slowHelper } from '../../helpers/slow-helper.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { drawer, bench, explore } = smallProject();
const settings: ExploreSettings = { ...explore, count: 150, offsetRangeMm: 5 };
const request: WallRequest = { bench, explore: settings, rows: 96, relative: true };

/** A wall as its page would see it: for each print its pulls and every pixel of its map. */
async function wall(helpers: RemoteHelper[], from: Partial<WallRequest> = {}): Promise<{ prints: unknown[]; reason: string }> {
  const maps = new Map<string, WallBatch['maps'][number]>();
  const prints: unknown[] = [];
  const end = await runWall(
    { jobs: new Jobs(), pictures: new StudioPictures(drawer), helpers },
    { ...request, ...from, job: 'wall' },
    (sent) => {
      const batch = unpackedBatch(sent);
      for (const map of batch.maps) maps.set(map.name, map);
      for (const { variant, map, colours, measures, look, small } of batch.tiles) {
        expect(variant.index).toBe(prints.length);
        const { id, key, strays, lineage, pulls } = variant;
        prints.push({
          id,
          key,
          strays,
          lineage,
          pulls,
          measures,
          look,
          small,
          pixels: Array.from(maps.get(map)!.cells, (cell) => colours[cell]),
        });
      }
      expect(batch.found).toBe(prints.length);
    },
  );
  return { prints, reason: end.reason };
}

describe('runWall', () => {
  it('should hang the same wall with any number of helpers, quick or slow', async () => {
    const alone = await wall([]);
    expect(alone.prints).toHaveLength(settings.count);
    const helpers = [slowHelper([0]), slowHelper([9, 0, 3]), slowHelper([1, 25])];
    expect(await wall(helpers)).toEqual(alone);
    expect(await wall([slowHelper([4, 1])])).toEqual(alone);
    expect(helpers.reduce((sum, { calls }) => sum + calls, 0)).toBeGreaterThan(20);
  });

  it('should hang it all the same when a helper breaks', async () => {
    const broken = slowHelper([1], true);
    expect(await wall([broken, slowHelper([2])])).toEqual(await wall([]));
    expect(broken.calls).toBeGreaterThan(2);
  });

  it('should hang the same prints from a print', async () => {
    const derived: Partial<WallRequest> = {
      derived: { kind: 'nearer', parents: [{ name: 'a', pulls: bench }], seed: 'a', count: 20 } as never,
    };
    expect(await wall([slowHelper([3, 0])], derived)).toEqual(await wall([], derived));
  });

  it('should be stopped while it waits for a helper', async () => {
    const jobs = new Jobs();
    const never: RemoteHelper = { begin: async () => {}, draw: () => new Promise(() => {}), paint: () => new Promise(() => {}) };
    const run = runWall({ jobs, pictures: new StudioPictures(drawer), helpers: [never] }, { ...request, job: 'wall' }, () => {});
    await new Promise((done) => setTimeout(done, 100));
    jobs.cancel('wall');
    expect((await run).cancelled).toBe(true);
  });
});

describe('helpersFor', () => {
  it('should leave the page and the search a core each but for two cores, and be few', () => {
    expect([1, 2, 3, 4, 8, 64].map(helpersFor)).toEqual([0, 1, 1, 2, 6, 6]);
  });
});
