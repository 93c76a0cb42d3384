import * as Comlink from 'comlink';
import { createExplorer, createKinExplorer, descriptorText, type Explorer } from '../engine/explore/index.ts';
import type { ExploreSettings, Variant } from '../engine/explore/types.ts';
import type { Pull } from '../engine/stack/types.ts';
import type { Jobs } from './jobs.ts';
import { type DrawerPictures, WallPainter } from './pictures.ts';
import type { WallBatch, WallEnd, WallFrom } from './wire.ts';

/** Draws a step at most; fewer when they take long, so that a stop is heard within a tenth of a second. */
const MOST_DRAWS = 8;
const LONG_MS = 40;
/** Prints are handed over so often, ms: each batch costs the page a drawing of the wall. */
const BATCH_MS = 80;

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
  let batch: WallBatch = { maps: [], tiles: [], found, asked };
  // The first prints go at once.
  let sentAt = -Infinity;
  const send = (): void => {
    if (batch.tiles.length === 0) return;
    const buffers = [
      ...batch.maps.map((map) => map.cells.buffer),
      ...batch.tiles.flatMap((tile) => [tile.colours.buffer, tile.small.words.buffer]),
    ];
    onBatch(Comlink.transfer(batch, buffers));
    batch = { maps: [], tiles: [], found, asked };
    sentAt = performance.now();
  };
  const cancelled = await jobs.run(job, steps(explorer), (variants) => {
    for (const variant of variants) {
      const { fresh, ...tile } = painter.tile(variant.pulls);
      if (fresh !== null) batch.maps.push(fresh);
      const look = explorer.lookOf(variant.index);
      batch.tiles.push({ variant, ...tile, look: look === null ? '' : descriptorText(look) });
    }
    batch.found = found += variants.length;
    if (performance.now() - sentAt >= BATCH_MS) send();
  });
  send();
  return { found, asked, cancelled, reason: cancelled ? '' : explorer.reason };
}

function* steps(explorer: Explorer): Generator<Variant[], void> {
  let draws = MOST_DRAWS;
  while (!explorer.done) {
    const start = performance.now();
    yield explorer.step(draws);
    // Drawing the prints that were found is part of it. A wall is the same however it is cut up.
    const took = performance.now() - start;
    if (took > LONG_MS) draws = Math.max(1, draws >> 1);
    else if (took < LONG_MS / 3) draws = Math.min(MOST_DRAWS, draws * 2);
  }
}
