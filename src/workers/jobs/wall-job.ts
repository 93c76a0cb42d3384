import * as Comlink from 'comlink';
import { defined, entryAt } from '../../engine/base/at.ts';
import { descriptorText } from '../../engine/explore/look/descriptor.ts';
import { createDerivedExplorer } from '../../engine/explore/search/derived-explorer.ts';
import { createExplorer } from '../../engine/explore/search/explorer.ts';
import type { ExploreSettings, Variant } from '../../engine/explore/types.ts';
import type { Pull } from '../../engine/stack/types.ts';
import type { WallBatch, WallEnd, WallFrom } from '../api/engine-api.ts';
import type { DrawnTile } from '../helpers/wall-helper.ts';
import { type RemoteHelper, WallHelpers } from '../helpers/wall-helpers.ts';
import type { Jobs } from './jobs.ts';
import { type StudioPictures, WallPainter } from './pictures.ts';

/** Draws a step at most; fewer when they take long, so that a stop is heard within a tenth of a second. */
const MOST_DRAWS = 8;
const LONG_MS = 40;
/** Prints are handed over so often, ms: each batch costs the page a drawing of the wall. */
const BATCH_MS = 80;

/** Steps whose prints wait to be painted at most. */
const MOST_WAITING = 12;
const WAIT_MS = 2;

/**
 * Explores and helpers over prints as they are found, in their order.
 * @param rows height of a print, pixels
 * @param makeHelpers makes the helpers that this machine has to spare; the wall is the same without
 */
export async function runWall(
  jobs: Jobs,
  job: string,
  pictures: StudioPictures,
  bench: readonly Pull[],
  explore: ExploreSettings,
  rows: number,
  onBatch: (batch: WallBatch) => void | Promise<void>,
  { derived, seen = [], relative = true }: WallFrom = {},
  makeHelpers: () => RemoteHelper[] = () => [],
): Promise<WallEnd> {
  const input = { drawer: pictures.drawer, bench: [...bench], explore };
  const helpers = new WallHelpers(makeHelpers(), input, rows, relative);
  const fromBase = derived === undefined ? createExplorer(input, seen, helpers.first) : null;
  const explorer = fromBase ?? createDerivedExplorer(input, defined(derived));
  const { asked } = explorer;
  const painter = new WallPainter(pictures, rows, relative);
  let found = 0;
  const mapsSent = new Set<string>();
  let batch: WallBatch = { maps: [], tiles: [], found, asked };
  // The first prints go at once.
  let sentAt = -Infinity;
  let taken: void | Promise<void> = undefined;
  const send = (): void => {
    if (batch.tiles.length === 0) return;
    const buffers = [
      ...batch.maps.map((map) => map.cells.buffer),
      ...batch.tiles.flatMap((tile) => [tile.colours.buffer, tile.small.words.buffer]),
    ];
    taken = onBatch(Comlink.transfer(batch, buffers));
    batch = { maps: [], tiles: [], found, asked };
    sentAt = performance.now();
  };
  const waiting: { variants: Variant[]; tiles: DrawnTile[] | null }[] = [];
  const paintHere = (variants: readonly Variant[]): DrawnTile[] => variants.map(({ pulls }) => painter.tile(pulls));
  const paint = (variants: Variant[]): void => {
    const entry: (typeof waiting)[number] = { variants, tiles: null };
    waiting.push(entry);
    if (!helpers.any) entry.tiles = paintHere(variants);
    else
      void helpers.paint(variants).then((tiles) => {
        entry.tiles = tiles ?? paintHere(variants);
      });
  };
  const deliver = (): void => {
    for (; waiting[0]?.tiles != null; waiting.shift()) {
      const { variants, tiles } = waiting[0];
      tiles.forEach(({ fresh, ...tile }, i) => {
        // Two helpers may have drawn the same map.
        if (fresh !== null && !mapsSent.has(fresh.name)) {
          mapsSent.add(fresh.name);
          batch.maps.push(fresh);
        }
        const look = explorer.lookOf(entryAt(variants, i).index);
        batch.tiles.push({ variant: entryAt(variants, i), ...tile, look: look === null ? '' : descriptorText(look) });
      });
      batch.found = found += variants.length;
    }
    if (performance.now() - sentAt >= BATCH_MS) send();
  };
  const rest = (): Promise<void> => new Promise((done) => setTimeout(done, WAIT_MS));
  /** Goes on where nothing need be waited for; each step is short, so that a stop is heard. */
  async function* steps(): AsyncGenerator<Variant[], void> {
    let draws = MOST_DRAWS;
    while (!explorer.done || waiting.length > 0) {
      const next = fromBase?.next ?? null;
      if (explorer.done || waiting.length > MOST_WAITING || (next !== null && !helpers.ahead(next, draws))) {
        await rest();
        yield [];
        continue;
      }
      const start = performance.now();
      yield explorer.step(draws);
      // Painting here is part of it. A wall is the same however it is cut up.
      const took = performance.now() - start;
      if (took > LONG_MS) draws = Math.max(1, draws >> 1);
      else if (took < LONG_MS / 3) draws = Math.min(MOST_DRAWS, draws * 2);
    }
  }
  const cancelled = await jobs.run(job, steps(), (variants) => {
    if (variants.length > 0) paint(variants);
    deliver();
  });
  send();
  // Batches and the end go different ways: the end must not come before the last batch.
  await taken;
  return { found, asked, cancelled, reason: cancelled ? '' : explorer.reason };
}
