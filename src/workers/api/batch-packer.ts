import * as Comlink from 'comlink';
import { MEASURES } from '../../engine/explore/measure/variant-measures.ts';
import type { Variant } from '../../engine/explore/types.ts';
import { PullPacker } from '../../engine/stack/packed-pulls.ts';
import { Gathered } from './gathered.ts';
import type { SentBatch, SentTile, WallMap, WallTile } from './wall-api.ts';

/**
 * Packs the prints of a batch as they come. Each list that waited for its batch by itself would be copied by the collector of
 * the worker's young space, which grows by that, and cross to the page with a buffer of its own.
 */
export class BatchPacker {
  private maps: SentBatch['maps'] = [];
  private tiles: SentTile[] = [];
  private small: SentBatch['small'] = { columns: 0, rows: 0 };
  private readonly bytes = new Gathered((length) => new Uint8Array(length));
  private readonly words = new Gathered((length) => new Uint16Array(length));
  private readonly colours = new Gathered((length) => new Uint32Array(length));
  private readonly smalls = new Gathered((length) => new Uint32Array(length));
  private readonly measures = new Gathered((length) => new Float64Array(length));
  private readonly pulls = new PullPacker();

  /** How many prints wait to be sent. */
  get count(): number {
    return this.tiles.length;
  }

  addMap({ name, columns, rows, cells }: WallMap): void {
    const long = cells instanceof Uint16Array;
    this.maps.push({ name, columns, rows, long });
    if (long) this.words.add(cells);
    else this.bytes.add(cells);
  }

  add({ pulls, ...head }: Variant, { map, colours, small, measures }: Omit<WallTile, 'variant' | 'look'>, look: string): void {
    this.pulls.add(pulls);
    this.colours.add(colours);
    const { columns, rows, words } = small;
    this.small = { columns, rows };
    this.smalls.add(words);
    this.measures.add(MEASURES.map(({ key }) => measures[key]));
    this.tiles.push({ variant: head, map, look, cells: colours.length });
  }

  /** All that waits, as it crosses: handed over in the place of being copied. */
  take(found: number, asked: number): SentBatch {
    const { maps, tiles, small } = this;
    const [bytes, words, colours, smalls, measures, pulls] = [
      this.bytes.take(),
      this.words.take(),
      this.colours.take(),
      this.smalls.take(),
      this.measures.take(),
      this.pulls.take(),
    ];
    this.maps = [];
    this.tiles = [];
    const batch: SentBatch = { found, asked, maps, tiles, small, bytes, words, colours, smalls, measures, pulls };
    const lists = [bytes, words, colours, smalls, measures, pulls.words, pulls.reals, pulls.ends];
    return Comlink.transfer(
      batch,
      lists.map(({ buffer }) => buffer),
    );
  }
}
