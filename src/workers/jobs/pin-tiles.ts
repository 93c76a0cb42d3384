import * as Comlink from 'comlink';
import type { Pin } from '../../engine/recipe/prints/pinned-prints.ts';
import type { WallBatch } from '../api/engine-api.ts';
import { type StudioPictures, WallPainter } from './pictures.ts';

/**
 * Draws pinned prints so that they can hang on a wall that was found without them.
 * @param at number on the wall under which the first of them hangs
 * @param rows height of a print of that wall, pixels
 */
export function pinTiles(pictures: StudioPictures, pins: readonly Pin[], at: number, rows: number, relative: boolean): WallBatch {
  const painter = new WallPainter(pictures, rows, relative);
  const batch: WallBatch = { maps: [], tiles: [], found: at + pins.length, asked: at + pins.length };
  pins.forEach(({ key, pulls, lineage: { seed } }, i) => {
    const { fresh, ...tile } = painter.tile(pulls);
    if (fresh !== null) batch.maps.push(fresh);
    batch.tiles.push({ ...tile, variant: { id: `pin:${key}`, seed, index: at + i, pulls: [...pulls], key }, look: '' });
  });
  return Comlink.transfer(batch, [
    ...batch.maps.map((map) => map.cells.buffer),
    ...batch.tiles.flatMap((tile) => [tile.colours.buffer, tile.small.words.buffer]),
  ]);
}
