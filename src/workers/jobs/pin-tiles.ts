import { BatchPacker } from '../api/batch-packer.ts';
import type { PinRequest, SentBatch } from '../api/wall-api.ts';
import type { StudioPictures } from './pictures.ts';
import { WallPainter } from './wall-painter.ts';

/** Draws pinned prints so that they can hang on a wall that was found without them. */
export function pinTiles(pictures: StudioPictures, { pins, at, rows, relative }: PinRequest): SentBatch {
  const painter = new WallPainter(pictures, { rows, relative });
  const packer = new BatchPacker();
  pins.forEach(({ key, pulls, lineage: { seed } }, i) => {
    const { fresh, ...tile } = painter.tile(pulls);
    if (fresh !== null) packer.addMap(fresh);
    packer.add({ id: `pin:${key}`, seed, index: at + i, pulls: [...pulls], key }, tile, '');
  });
  return packer.take(at + pins.length, at + pins.length);
}
