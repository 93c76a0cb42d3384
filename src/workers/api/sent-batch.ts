import * as Comlink from 'comlink';
import { packPrints } from '../../engine/stack/packed-pulls.ts';
import type { SentBatch, WallBatch } from './wall-api.ts';

/** A batch as it crosses to the page: packed, and handed over in the place of being copied. */
export function sentBatch({ tiles, ...batch }: WallBatch): SentBatch {
  const pulls = packPrints(tiles.map(({ variant }) => variant.pulls));
  const sent: SentBatch = {
    ...batch,
    tiles: tiles.map(({ variant: { id, seed, index, key, strays, lineage }, ...tile }) => ({
      ...tile,
      variant: { id, seed, index, key, ...(strays === undefined ? {} : { strays }), ...(lineage === undefined ? {} : { lineage }) },
    })),
    pulls,
  };
  const { words, reals, ends } = pulls;
  return Comlink.transfer(sent, [...buffersOf({ tiles, ...batch }), words.buffer, reals.buffer, ends.buffer]);
}

/** What of a batch goes over to the page without being copied. */
export function buffersOf({ maps, tiles }: Pick<WallBatch, 'maps' | 'tiles'>): ArrayBuffer[] {
  return [...maps.map((map) => map.cells.buffer), ...tiles.flatMap((tile) => [tile.colours.buffer, tile.small.words.buffer])];
}
