import { createHash } from 'node:crypto';
import { describe, expect, it, vi } from 'vitest';
import { type PagesAside, PrintPages } from '../../../../src/components/canvas/draw/print-pages.ts';
import type { TexelPage } from '../../../../src/components/canvas/draw/texel-page.ts';
import { derivedAsk } from '../../../../src/components/wall/run/derived-ask.ts';
import { type RunListener, type WallEngine, WallRun } from '../../../../src/components/wall/run/wall-run.ts';
import type { WallAsk, WallInputs } from '../../../../src/components/wall/run/wall-search.ts';
import type { Pin } from '../../../../src/engine/recipe/prints/pinned-prints.ts';
import type { WallBatch, WallTile } from '../../../../src/workers/api/wall-api.ts';
import { unpackedBatch } from '../../../../src/workers/client/unpacked-batch.ts';
import type { RemoteHelper } from '../../../../src/workers/helpers/wall-helpers.ts';
import { Jobs } from '../../../../src/workers/jobs/jobs.ts';
import { StudioPictures } from '../../../../src/workers/jobs/pictures.ts';
import { pinTiles } from '../../../../src/workers/jobs/pin-tiles.ts';
import { runWall } from '../../../../src/workers/jobs/wall-job.ts';
import { slowHelper } from '../../../helpers/slow-helper.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench, explore } = smallProject();

/** A wall as the canvas keeps it, without a graphics card. */
class PageWall implements RunListener {
  readonly pages = new PrintPages();
  private counts = new Map<number, number>();
  private aside: { pages: PagesAside; counts: Map<number, number> } | null = null;
  /** How often the prints came down. */
  begun = 0;

  begin(): void {
    this.begun++;
    this.counts = new Map();
    this.pages.clear();
  }

  extend(): void {}

  putAside(): void {
    this.aside = { pages: this.pages.putAside(), counts: this.counts };
  }

  again(): void {
    this.begun++;
    this.pages.hangAgain(this.aside!.pages);
    this.counts = this.aside!.counts;
  }

  batch(batch: WallBatch): void {
    this.pages.add(batch);
    for (const { variant, colours } of batch.tiles) this.counts.set(variant.index, colours.length);
  }

  pinned(batch: WallBatch): void {
    this.batch(batch);
  }

  changed(): void {}

  /** Of each print all that is drawn: the colour of every cell of its map, and its small picture. */
  pixels(count: number): string[] {
    const { map: mapSize, small: smallSize } = this.pages.sizes!;
    return Array.from({ length: count }, (_, index) => {
      const { map, colours, small } = this.pages.placesOf(index);
      const cells = texels(map, mapSize);
      const table = new Uint32Array(colours.page.bytes.buffer, colours.offset * 4, this.counts.get(index));
      const print = cells.map((cell) => table[cell] ?? 0);
      return createHash('md5').update(mapSize.join()).update(print).update(texels(small, smallSize)).digest('hex');
    });
  }
}

/** Texels of a grid in its page, row by row. */
function texels({ page, x, y }: { page: TexelPage; x: number; y: number }, size: [number, number]) {
  const { buffer } = page.bytes;
  const kinds: Record<string, () => Uint8Array | Uint16Array | Uint32Array> = {
    byte: () => new Uint8Array(buffer),
    word: () => new Uint16Array(buffer),
    colour: () => new Uint32Array(buffer),
  };
  const all = kinds[page.texel]!();
  const [columns, rows] = size;
  const out = new Uint32Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const from = (y + row) * page.width + x;
    out.set(all.subarray(from, from + columns), row * columns);
  }
  return out;
}

function askFor(count: number): WallAsk {
  const inputs: WallInputs = { studio: drawer, bench, explore: { ...explore, count, offsetRangeMm: 5 }, relative: true };
  return { inputs, derived: null, seen: [] };
}

/** The real search and painting, in this thread. */
function realEngine(helpers: readonly RemoteHelper[]): WallEngine {
  const pictures = new StudioPictures(drawer);
  return {
    wall: (request, { onProgress }) =>
      runWall({ jobs: new Jobs(), pictures, helpers }, { ...request, job: 'wall' }, (batch) => onProgress!(unpackedBatch(batch))),
    pinTiles: async (request) => unpackedBatch(pinTiles(pictures, request)),
    findClash: async () => null,
  };
}

/** Prints of a few maps and colours each, told by their number; for walls too large to be searched for in a test. */
const numberedEngine: WallEngine = {
  async wall({ explore: { count }, rows }, { onProgress }) {
    const named = new Set<string>();
    for (let from = 0; from < count; from += 100) {
      const batch: WallBatch = { maps: [], tiles: [], found: Math.min(count, from + 100), asked: count };
      for (let index = from; index < batch.found; index++) {
        const name = `${rows} ${index % 7}`;
        const columns = 4;
        if (!named.has(name))
          batch.maps.push({ name, columns, rows, cells: Uint8Array.from({ length: columns * rows }, (_, at) => (at + index) % 5) });
        named.add(name);
        batch.tiles.push(numberedTile(index, name));
      }
      onProgress!(batch);
      await Promise.resolve();
    }
    return { found: count, asked: count, cancelled: false, reason: '' };
  },
  pinTiles: () => Promise.reject(new Error('no pins here')),
  findClash: async () => null,
};

function numberedTile(index: number, map: string): WallTile {
  return {
    variant: { id: String(index), seed: 'numbers', index, pulls: bench, key: String(index) },
    map,
    colours: Uint32Array.from({ length: 5 }, (_, cell) => index * 5 + cell),
    small: { columns: 2, rows: 2, words: Uint32Array.from({ length: 4 }, (_, at) => index * 4 + at) },
    measures: {} as WallTile['measures'],
    look: '',
  };
}

/** A wall found in steps of more and more, as it hangs after the last. */
async function hang(engine: WallEngine, counts: readonly number[], pins: readonly Pin[] = []): Promise<PageWall> {
  const wall = new PageWall();
  const run = new WallRun(wall, () => engine);
  for (const count of counts) {
    await run.start(askFor(count));
    await run.hangPins(pins);
    expect(run).toMatchObject({ state: 'done', found: count, reason: '' });
    expect(run.hung).toBe(run.search);
    expect(run.variants).toHaveLength(count + pins.length);
  }
  return wall;
}

describe('a wall that goes on', () => {
  // Delays of the helpers' answers in steps of the search: even, uneven, one far behind, changing places.
  const timings: readonly (readonly number[][])[] = [
    [[0], [0]],
    [[3, 0, 1], [0, 5], [2]],
    [[40, 0], [1]],
    [
      [0, 0, 9],
      [7, 1, 0, 2],
    ],
    [[1], [6, 0, 0], [0, 13]],
  ];

  it('should look as if it were found in one go, whatever the timing of the helpers', async () => {
    const pins: Pin[] = [
      { key: 'a pin', pulls: bench.map((pull) => ({ ...pull, dxMm: 11 })), lineage: { seed: 'other', index: 4 } },
      { key: 'another', pulls: bench.toReversed(), lineage: { seed: 'other', index: 9 } },
    ];
    const atOnce = await hang(realEngine([]), [100], pins);
    const expected = atOnce.pixels(102);
    expect(new Set(expected).size).toBeGreaterThan(90);
    for (const [round, timing] of timings.entries()) {
      // With each search the helpers are in other places in their delays, as they are on a machine.
      const helpers = timing.map((delays) => slowHelper(delays));
      const inSteps = await hang(realEngine(helpers), [40, 70, 100], pins);
      expect(inSteps.begun).toBe(1);
      expect(inSteps.pixels(102), `timing ${round}`).toEqual(expected);
    }
  });

  it.each([
    [600, 800, 1],
    [800, 1000, 2],
    [2300, 2500, 1],
    [2500, 2700, 2],
    [4800, 5000, 1],
    [5000, 5200, 2],
  ])('should go on from %i to %i only when the maps are as fine', async (few, many, begun) => {
    const inSteps = await hang(numberedEngine, [few, many]);
    expect(inSteps.begun).toBe(begun);
    expect(inSteps.pixels(many)).toEqual((await hang(numberedEngine, [many])).pixels(many));
  });

  it('should hang anew when the longer search lists other prints at the beginning', async () => {
    const other: WallEngine = {
      ...numberedEngine,
      wall: (request, control) => {
        const onProgress = (batch: WallBatch): void => {
          const tiles = batch.tiles.map((tile) =>
            request.explore.count > 200 && tile.variant.index === 150 ? { ...tile, variant: { ...tile.variant, key: 'other' } } : tile,
          );
          control.onProgress!({ ...batch, tiles });
        };
        return numberedEngine.wall(request, { ...control, onProgress });
      },
    };
    const wall = new PageWall();
    const run = new WallRun(wall, () => other);
    await run.start(askFor(200));
    await run.start(askFor(400));
    await vi.waitFor(() => expect(run.state).toBe('done'));
    expect(wall.begun).toBe(2);
    expect(run.variants[150]?.key).toBe('other');
    expect(wall.pixels(400)).toEqual((await hang(other, [400])).pixels(400));
  });
});

describe('a wall that prints were found from', () => {
  it('should hang again as it hung, without a search, after walls of other prints', async () => {
    let searches = 0;
    const engine = realEngine([]);
    const counted: WallEngine = {
      ...engine,
      wall: (request, control) => {
        searches++;
        return engine.wall(request, control);
      },
    };
    const wall = new PageWall();
    const run = new WallRun(wall, () => counted);
    expect(run.back()).toBe(false);
    await run.start(askFor(40));
    await run.start(askFor(60));
    const [variants, shown, pixels] = [run.variants, run.shown, wall.pixels(60)];
    for (const kind of ['nearer', 'away'] as const) {
      const derived = derivedAsk(kind, [run.variants[3]!]);
      await run.start({ ...askFor(60), derived: { ...derived, request: { ...derived.request, count: 12 } } });
      expect(run.derived).not.toBeNull();
      expect(run.variants.map(({ key }) => key)).not.toEqual(variants.map(({ key }) => key).slice(0, run.variants.length));
    }
    expect(run.back()).toBe(true);
    expect(run).toMatchObject({ state: 'done', found: 60, asked: 60, derived: null, shown });
    expect(run.hung).toBe(run.search);
    expect(run.variants).toEqual(variants);
    expect(wall.pixels(60)).toEqual(pixels);
    expect(searches).toBe(4);
    expect(run.back()).toBe(false);
    // More can be found from it as before.
    await run.start(askFor(80));
    // Packed with others now, they are the same prints.
    const plain = ({ id, key, pulls }: (typeof variants)[number]) => ({ id, key, pulls });
    expect(run.variants.slice(0, 60).map(plain)).toEqual(variants.map(plain));
    expect(wall.pixels(80).slice(0, 60)).toEqual(pixels);
  });
});
