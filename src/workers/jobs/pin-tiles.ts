import * as Comlink from 'comlink';
import { buffersOf } from '../api/sent-batch.ts';
import type { PinRequest, WallBatch } from '../api/wall-api.ts';
import type { StudioPictures } from './pictures.ts';
import { WallPainter } from './wall-painter.ts';

/** Draws pinned prints so that they can hang on a wall that was found without them. */
export function pinTiles(pictures: StudioPictures, { pins, at, rows, relative }: PinRequest): WallBatch {
  const painter = new WallPainter(pictures, { rows, relative });
  const batch: WallBatch = { maps: [], tiles: [], found: at + pins.length, asked: at + pins.length };
  pins.forEach(({ key, pulls, lineage: { seed } }, i) => {
    const { fresh, ...tile } = painter.tile(pulls);
    if (fresh !== null) batch.maps.push(fresh);
    batch.tiles.push({ ...tile, variant: { id: `pin:${key}`, seed, index: at + i, pulls: [...pulls], key }, look: '' });
  });
  return Comlink.transfer(batch, buffersOf(batch));
}
