import { f64 } from '../../engine/base/at.ts';
import { MEASURES, type VariantMeasures } from '../../engine/explore/measure/variant-measures.ts';
import type { SentBatch, WallBatch } from '../api/wall-api.ts';
import { PackedVariant } from './packed-variant.ts';

/** A batch as the page takes it in; its maps and colours share buffers, so they are to be copied and let go. */
export function unpackedBatch(sent: SentBatch): WallBatch {
  const { found, asked, candidates, maps, tiles, small, bytes, words, colours, smalls, measures, pulls } = sent;
  let [byte, word, colour, field] = [0, 0, 0, 0];
  const fields = small.columns * small.rows;
  return {
    found,
    asked,
    ...(candidates === undefined ? {} : { candidates }),
    maps: maps.map(({ long, ...map }) => {
      const length = map.columns * map.rows;
      const cells = long ? words.subarray(word, (word += length)) : bytes.subarray(byte, (byte += length));
      return { ...map, cells };
    }),
    tiles: tiles.map(({ variant, map, look, cells }, print) => ({
      variant: new PackedVariant(variant, pulls, print),
      map,
      measures: measuresOf(measures, print),
      look,
      colours: colours.subarray(colour, (colour += cells)),
      small: { ...small, words: smalls.subarray(field, (field += fields)) },
    })),
    letGo() {
      // Else they lie about until the page, which allocates little, collects what it made long ago.
      for (const { buffer } of [bytes, words, colours, smalls, measures]) buffer.transfer?.(0);
    },
  };
}

function measuresOf(measures: Float64Array, print: number): VariantMeasures {
  const found = {} as VariantMeasures;
  MEASURES.forEach(({ key }, i) => (found[key] = f64(measures, print * MEASURES.length + i)));
  return found;
}
