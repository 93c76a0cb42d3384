import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { Describer, descriptorDistance } from '../../../../src/engine/explore/look/descriptor.ts';
import { hash128 } from '../../../../src/engine/explore/look/picture-key.ts';
import { explore } from '../../../../src/engine/explore/search/explorer.ts';
import { demoProject } from '../../../../src/engine/project/demo.ts';
import { firstWall } from '../../../../src/engine/project/first-wall.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import { deltaE, meanNearest, meanPair, type Raster, rasters, silhouette } from './spread-figures.ts';

const folder = new URL('../../../../shapes/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.svg'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));
const demo = demoProject(files);
const COUNT = 200;

function wall(project: typeof demo): Pull[][] {
  return [...explore(project, { seed: 'slack tide', count: COUNT })].map(({ pulls }) => pulls);
}

// The first wall as it was: orders from the Bench's to its reverse, offsets of 3 mm.
const before = wall({ ...demo, explore: { ...demo.explore, orderFrom: 0, orderTo: 1 } });
const now = wall(firstWall(demo));
const [rastersBefore, rastersNow] = [before, now].map((prints) => rasters(prints, demo.drawer)) as [Raster[], Raster[]];

describe('the first wall of the demo', () => {
  it('should leave a wall without these settings print for print as it was', () => {
    // From the commit before there were any.
    expect(hash128(JSON.stringify(before.slice(0, 40)))).toBe('e8ef21c3666140e3dc204e6ceb7e828a');
  });

  it('should hang prints more than twice as far from their nearest, for either descriptor and for neither', () => {
    for (const composed of [false, true]) {
      const describer = new Describer(demo.drawer, composed);
      const spread = (prints: Pull[][]): number =>
        meanNearest(
          prints.map((pulls) => describer.describe(pulls)),
          descriptorDistance,
        );
      expect(spread(now) / spread(before), `composed ${composed}`).toBeGreaterThan(2);
    }
    const [some, someBefore] = [rastersNow.slice(0, 100), rastersBefore.slice(0, 100)];
    expect(meanNearest(some, silhouette) / meanNearest(someBefore, silhouette)).toBeGreaterThan(5);
    expect(meanNearest(some, deltaE) / meanNearest(someBefore, deltaE)).toBeGreaterThan(1.8);
  });

  it('should begin with twelve that are further apart than any twelve', () => {
    const random = randomFrom('twelve');
    for (const distance of [deltaE, silhouette]) {
      const any = Array.from({ length: 60 }, () => meanPair(random.shuffle(rastersNow).slice(0, 12), distance)).sort((a, b) => a - b);
      const first = meanPair(rastersNow.slice(0, 12), distance);
      expect(first / any[30]!, distance.name).toBeGreaterThan(distance === deltaE ? 1.1 : 1.04);
    }
  });
});
