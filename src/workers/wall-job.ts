import * as Comlink from 'comlink';
import { createExplorer, createKinExplorer, descriptorText, type Explorer } from '../engine/explore/index.ts';
import type { ExploreSettings, Variant } from '../engine/explore/types.ts';
import type { Pull } from '../engine/stack/types.ts';
import type { Jobs } from './jobs.ts';
import { type DrawerPictures, WallPainter } from './pictures.ts';
import type { WallBatch, WallEnd, WallFrom } from './wire.ts';

/** Draws a step; few, so that the first prints stand at once and a stop is heard. */
const BATCH = 8;

/**
 * Explores and hands over prints as they are found.
 * @param rows height of a print, pixels
 */
export async function runWall(
  jobs: Jobs,
  job: string,
  pictures: DrawerPictures,
  bench: readonly Pull[],
  explore: ExploreSettings,
  rows: number,
  onBatch: (batch: WallBatch) => void,
  { kin, seen = [], relative = true }: WallFrom = {},
): Promise<WallEnd> {
  const input = { drawer: pictures.drawer, bench: [...bench], explore };
  const explorer = kin === undefined ? createExplorer(input, seen) : createKinExplorer(input, kin);
  const { asked } = explorer;
  const painter = new WallPainter(pictures, rows, relative);
  let found = 0;
  const cancelled = await jobs.run(job, steps(explorer), (variants) => {
    if (variants.length === 0) return;
    const batch: WallBatch = { maps: [], tiles: [], found: (found += variants.length), asked };
    for (const variant of variants) {
      const { fresh, ...tile } = painter.tile(variant.pulls);
      if (fresh !== null) batch.maps.push(fresh);
      const look = explorer.lookOf(variant.index);
      batch.tiles.push({ variant, ...tile, look: look === null ? '' : descriptorText(look) });
    }
    onBatch(
      Comlink.transfer(batch, [
        ...batch.maps.map((map) => map.cells.buffer),
        ...batch.tiles.map((tile) => tile.colours.buffer),
      ]),
    );
  });
  return { found, asked, cancelled, reason: cancelled ? '' : explorer.reason };
}

function* steps(explorer: Explorer): Generator<Variant[], void> {
  while (!explorer.done) yield explorer.step(BATCH);
}
