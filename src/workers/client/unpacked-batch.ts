import type { SentBatch, WallBatch } from '../api/wall-api.ts';
import { PackedVariant } from './packed-variant.ts';

/** A batch as the page takes it in; its maps and colours share buffers, so they are to be copied and let go. */
export function unpackedBatch({ found, asked, maps, tiles, small, bytes, words, colours, smalls, pulls }: SentBatch): WallBatch {
  let [byte, word, colour, field] = [0, 0, 0, 0];
  const fields = small.columns * small.rows;
  return {
    found,
    asked,
    maps: maps.map(({ long, ...map }) => {
      const length = map.columns * map.rows;
      const cells = long ? words.subarray(word, (word += length)) : bytes.subarray(byte, (byte += length));
      return { ...map, cells };
    }),
    tiles: tiles.map(({ variant, map, measures, look, cells }, print) => ({
      variant: new PackedVariant(variant, pulls, print),
      map,
      measures,
      look,
      colours: colours.subarray(colour, (colour += cells)),
      small: { ...small, words: smalls.subarray(field, (field += fields)) },
    })),
  };
}
