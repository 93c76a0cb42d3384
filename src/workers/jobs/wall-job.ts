import { defined, entryAt } from '../../engine/base/at.ts';
import type { createDerivedExplorer } from '../../engine/explore/derived/derived-explorer.ts';
import { descriptorText } from '../../engine/explore/look/descriptor.ts';
import { createExplorer } from '../../engine/explore/search/explorer.ts';
import { MOST_SEEN_PRINTS } from '../../engine/explore/search/seen.ts';
import type { Variant } from '../../engine/explore/types.ts';
import { BatchPacker } from '../api/batch-packer.ts';
import type { Job, Keyed } from '../api/request.ts';
import type { SentBatch, WallEnd, WallRequest } from '../api/wall-api.ts';
import { type RemoteHelper, WallHelpers } from '../helpers/wall-helpers.ts';
import type { Jobs } from './jobs.ts';
import type { StudioPictures } from './pictures.ts';
import { type DrawnTile, WallPainter } from './wall-painter.ts';

/** Draws a step at most; fewer when they take long, so that a stop is heard within a tenth of a second. */
const MOST_DRAWS = 8;
const LONG_MS = 40;
/** Prints are handed over so often, ms: each batch costs the page a frame. Of a large wall, the later ones mostly hang out of view. */
const BATCH_MS = 80;
const LATER_BATCH_MS = 400;
const FIRST_PRINTS = 200;

/** So long after the page has the first prints, its room stands open, ms. */
const OPENS_MS = 1000;

/** So long after a search began that has not found a print yet, it stands open too, and it is said what is drawn, so often, ms. */
const LONG_MS_TO_FIRST = 2500;
const TELL_MS = 500;

/** Steps whose prints wait to be painted at most. */
const MOST_WAITING = 12;
const WAIT_MS = 2;

type OnBatch = (batch: SentBatch) => void | Promise<void>;

/** Hands prints over to the page, some at a time. */
class Batches {
  private readonly onBatch: OnBatch;
  private readonly asked: number;
  private readonly mapsSent = new Set<string>();
  private readonly packer = new BatchPacker();
  private found = 0;
  // The first prints go at once.
  private sentAt = -Infinity;
  private taken: void | Promise<void> = undefined;
  /** When the page had the first prints. */
  private shownAt = Infinity;
  private readonly begunAt = performance.now();
  private toldAt = this.begunAt;

  constructor(asked: number, onBatch: OnBatch) {
    this.asked = asked;
    this.onBatch = onBatch;
  }

  /** How many prints there are so far. */
  get count(): number {
    return this.found;
  }

  /** Whether the page has done what it does when the first prints come. */
  get opened(): boolean {
    const now = performance.now();
    return now - this.shownAt >= OPENS_MS || now - this.begunAt >= LONG_MS_TO_FIRST;
  }

  /** Says how far it is to the first print. */
  tell(candidates: SentBatch['candidates']): void {
    const now = performance.now();
    if (this.found > 0 || candidates === undefined || now - this.toldAt < TELL_MS) return;
    this.toldAt = now;
    void this.onBatch({ ...this.packer.take(0, this.asked), candidates });
  }

  add(variant: Variant, { fresh, ...tile }: DrawnTile, look: string): void {
    // Two helpers may have drawn the same map.
    if (fresh !== null && !this.mapsSent.has(fresh.name)) {
      this.mapsSent.add(fresh.name);
      this.packer.addMap(fresh);
    }
    this.packer.add(variant, tile, look);
    this.found++;
  }

  sendWhenDue(): void {
    const due = this.found < FIRST_PRINTS ? BATCH_MS : LATER_BATCH_MS;
    if (performance.now() - this.sentAt >= due) this.send();
  }

  private send(): void {
    if (this.packer.count === 0) return;
    this.taken = this.onBatch(this.packer.take(this.found, this.asked));
    this.sentAt = performance.now();
    if (this.shownAt === Infinity) void Promise.resolve(this.taken).then(() => (this.shownAt = performance.now()));
  }

  /** Sends the last and waits until it is taken: batches and a job's end go different ways. */
  async end(): Promise<void> {
    this.send();
    await this.taken;
  }
}

/** A search for the prints of a wall, and their painting, here or by helpers. */
class WallJob {
  private readonly explorer: ReturnType<typeof createDerivedExplorer> | ReturnType<typeof createExplorer>;
  /** The explorer when it starts from the base stack: only then helpers can draw ahead of it. */
  private readonly fromBase: ReturnType<typeof createExplorer> | null;
  private readonly helpers: WallHelpers;
  private readonly painter: WallPainter;
  private readonly batches: Batches;
  private readonly waiting: { variants: Variant[]; tiles: DrawnTile[] | null }[] = [];

  /** @param derive finds prints from prints, where the request asks for them */
  constructor({ pictures, helpers = [] }: WallPlace, request: WallRequest, derive: typeof createDerivedExplorer | null, onBatch: OnBatch) {
    const { bench, explore, derived, seen = [], rows, relative } = request;
    const input = { drawer: pictures.studio, bench: [...bench], explore };
    this.helpers = new WallHelpers(helpers, { input, rows, relative });
    this.fromBase = derived === undefined ? createExplorer(input, seen, this.helpers.first) : null;
    this.explorer = this.fromBase ?? defined(derive)(input, defined(derived));
    this.painter = new WallPainter(pictures, { rows, relative });
    this.batches = new Batches(this.explorer.asked, onBatch);
  }

  async run(jobs: Jobs, job: string): Promise<WallEnd> {
    const cancelled = await jobs.run(job, this.steps(), (variants) => {
      if (variants.length > 0) this.paint(variants);
      this.deliver();
    });
    await this.batches.end();
    const { asked, reason } = this.explorer;
    return { found: this.batches.count, asked, cancelled, reason: cancelled ? '' : reason };
  }

  /** Goes on where nothing need be waited for; each step is short, so that a stop is heard. */
  private async *steps(): AsyncGenerator<Variant[], void> {
    const { explorer } = this;
    // Of two hundred pulls, one may take a second or two.
    let draws = 1;
    while (!explorer.done || this.waiting.length > 0) {
      if (this.mustWait(draws)) {
        if (!this.lend()) await new Promise((done) => setTimeout(done, WAIT_MS));
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

  /** Draws ahead of itself, where it waits for nothing but draws. */
  private lend(): boolean {
    const { fromBase } = this;
    if (fromBase === null || fromBase.next === null || fromBase.done || this.waiting.length > MOST_WAITING) return false;
    return this.helpers.lend((candidate) => fromBase.firstDraw(candidate));
  }

  private mustWait(draws: number): boolean {
    const next = this.fromBase?.next ?? null;
    if (this.explorer.done || this.waiting.length > MOST_WAITING) return true;
    return next !== null && !this.helpers.ahead(next, draws);
  }

  private paint(variants: Variant[]): void {
    const entry: (typeof this.waiting)[number] = { variants, tiles: null };
    const paintHere = (): DrawnTile[] => variants.map(({ pulls }) => this.painter.tile(pulls));
    this.waiting.push(entry);
    if (!this.helpers.any) entry.tiles = paintHere();
    else
      void this.helpers.paint(variants).then((tiles) => {
        entry.tiles = tiles ?? paintHere();
      });
  }

  /** Hands over what is painted, in the order in which it was found. */
  private deliver(): void {
    const { waiting } = this;
    for (; waiting[0]?.tiles != null; waiting.shift()) {
      const { variants, tiles } = waiting[0];
      variants.forEach((variant, i) => {
        // Of a later print nobody asks.
        const look = variant.index < MOST_SEEN_PRINTS ? this.explorer.lookOf(variant.index) : null;
        this.batches.add(variant, entryAt(tiles, i), look === null ? '' : descriptorText(look));
      });
    }
    this.batches.sendWhenDue();
    this.batches.tell(this.fromBase?.candidates);
    if (this.batches.opened) this.helpers.beginLate();
  }
}

/** Where a wall is found: the jobs that can be cancelled, the studio's pictures, and helpers. */
export interface WallPlace {
  jobs: Jobs;
  pictures: StudioPictures;
  /** The helpers that this machine has to spare; the wall is the same without. */
  helpers?: readonly RemoteHelper[];
}

/** Explores and hands over prints as they are found, in their order. */
export async function runWall(
  place: WallPlace,
  { job, ...request }: Job<WallRequest> | Keyed<Job<WallRequest>>,
  onBatch: OnBatch,
): Promise<WallEnd> {
  const { jobs } = place;
  // No first wall needs it.
  const load = () => import('../../engine/explore/derived/derived-explorer.ts');
  const derive = request.derived === undefined ? null : (await jobs.loading(job, load)).createDerivedExplorer;
  return new WallJob(place, request, derive, onBatch).run(jobs, job);
}
