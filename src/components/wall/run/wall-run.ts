import { entryAt } from '../../../engine/base/at.ts';
import type { Clash } from '../../../engine/explore/search/clash.ts';
import type { SeenPrint } from '../../../engine/explore/search/explorer.ts';
import { MOST_SEEN_PRINTS } from '../../../engine/explore/search/seen.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Pin } from '../../../engine/recipe/prints/pinned-prints.ts';
import { missingPins, pinnedVariant } from '../../../engine/recipe/prints/pinned-prints.ts';
import type { WallBatch } from '../../../workers/api/wall-api.ts';
import { engineFor, restBeside, sentenceOf } from '../../../workers/client/client.ts';
import type { EngineClient } from '../../../workers/client/engine-client.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/run.ts';
import { parentsOf } from './derived-ask.ts';
import { type Parent, rememberOrigin } from './wall-origins.ts';
import { goesOn, newSearch, sameInputs, sameValue, type WallAsk, type WallInputs, type WallSearch } from './wall-search.ts';

const BENCH_NAME = say.stackOnBench;
/** More prints than this take so much memory that others give theirs back. */
const MANY = 2500;

/** What a run asks of its worker. */
export type WallEngine = Pick<EngineClient, 'wall' | 'pinTiles' | 'findClash'>;

/** Who hears of a run. */
export interface RunListener {
  /** The first prints of a search are here: the wall before it comes down. */
  begin(search: WallSearch): void;
  /** The prints that hang stay, and more are to come. */
  extend(search: WallSearch): void;
  /** The prints that hang give way to others that come from them, and may hang again as they do now. */
  putAside(): void;
  /** A wall that was put aside hangs again, at once. */
  again(): void;
  /** Prints that do not hang yet. */
  batch(batch: WallBatch): void;
  /** Pinned prints of other walls hang after the wall's own. */
  pinned(batch: WallBatch): void;
  /** State or counts changed. */
  changed(): void;
}

/** A wall found from the base stack, with all that it takes to hang it. */
interface WholeWall {
  search: WallSearch;
  variants: Variant[];
  shown: SeenPrint[];
}

/**
 * What is looked for and what hangs; it alone decides whether a wall goes on or hangs anew. One search
 * at a time; a new one takes the place of the one before.
 */
export class WallRun {
  /** The search that runs, or ran last. */
  search: WallSearch | null = null;
  /** The search whose prints hang: while another has found nothing yet, the one before it. */
  hung: WallSearch | null = null;
  /** The prints that hang, by their number on the wall. */
  variants: Variant[] = [];
  /** What hangs, as a later search gets it. */
  shown: SeenPrint[] = [];
  private readonly listener: RunListener;
  private readonly engine: () => WallEngine;
  private readonly work = new Work<null>(null);
  /** How many of the prints that hang are the wall's own; pinned prints of other walls hang after them. */
  private own = 0;
  /** True while pinned prints are drawn. */
  private pinning = false;
  /** The wall from the base stack, while prints from its prints hang. */
  private aside: WholeWall | null = null;

  constructor(listener: RunListener, engine: () => WallEngine = () => engineFor('wall')) {
    this.listener = listener;
    this.engine = engine;
  }

  get state(): WallSearch['state'] | 'idle' {
    return this.search?.state ?? 'idle';
  }

  get found(): number {
    return this.search?.found ?? 0;
  }

  get asked(): number {
    return this.search?.asked ?? 0;
  }

  get reason(): string {
    return this.search?.reason ?? '';
  }

  get clash(): WallSearch['clash'] {
    return this.search?.clash ?? null;
  }

  get derived(): WallSearch['derived'] {
    return this.search?.derived ?? null;
  }

  /** Whether the search has come to its end, or was brought to it. */
  get ended(): boolean {
    return this.state === 'done' || this.state === 'stopped';
  }

  /** Whether the last search started from other inputs than these. */
  startedElsewhere(inputs: WallInputs): boolean {
    return this.search !== null && !sameInputs(this.search.inputs, inputs);
  }

  /** Whether the last search started from another stack on the Bench. */
  startedFromOther(bench: WallInputs['bench']): boolean {
    return this.search !== null && !sameValue(this.search.inputs.bench, bench);
  }

  /** Looks for prints; those that hang stay until the first is found. */
  start(ask: WallAsk): Promise<void> {
    const search = newSearch(ask);
    this.search = search;
    return this.work.start(({ signal }) => this.find(search, signal));
  }

  /** Looks once more for what the last search looked for. */
  again(): void {
    if (this.search !== null) void this.start(this.search);
  }

  private async find(search: WallSearch, signal: AbortSignal): Promise<null> {
    this.listener.changed();
    const { inputs, derived, seen, rows } = search;
    const { studio, bench, explore, relative } = inputs;
    const from = derived === null ? { seen } : { derived: derived.request };
    restBeside(search.asked > MANY);
    try {
      const end = await this.engine().wall(
        { studio, bench, explore, rows, relative, ...from },
        { signal, onProgress: (batch) => this.take(batch, search, signal) },
      );
      if (signal.aborted) return null;
      this.takeDown(search);
      const { found, asked, reason } = end;
      Object.assign(search, { found, asked, reason, state: end.cancelled ? 'stopped' : 'done' } satisfies Partial<WallSearch>);
    } catch (error) {
      if (signal.aborted) return null;
      search.state = 'failed';
      search.reason = sentenceOf(error);
    } finally {
      if (this.state !== 'running') restBeside(false);
    }
    const bare = this.state === 'done' && search.found === 0 && derived === null;
    if (bare) search.clash = 'looking';
    this.listener.changed();
    if (bare) await this.lookForClash(search, signal);
    return null;
  }

  /** Makes room for what a search finds, once. */
  private takeDown(search: WallSearch): void {
    const before = this.hung;
    if (before === search) return;
    this.hung = search;
    if (search.derived === null) this.aside = null;
    else if (before !== null && before.derived === null) this.layAside(before);
    this.shown = [];
    // Pinned prints of other walls are hung again when this one stands.
    const stay = before !== null && goesOn(before, search) ? this.variants.slice(0, this.own) : null;
    this.variants = stay ?? [];
    this.own = this.variants.length;
    if (stay !== null) return this.listener.extend(search);
    this.listener.begin(search);
  }

  private layAside(search: WallSearch): void {
    this.aside = { search, variants: this.variants.slice(0, this.own), shown: this.shown };
    this.listener.putAside();
  }

  /**
   * Hangs the wall that the prints which hang now came from, as it hung.
   * @returns false when there is none
   */
  back(): boolean {
    const { aside } = this;
    if (aside === null) return false;
    this.work.stop();
    this.aside = null;
    const { search, variants, shown } = aside;
    if (search.state === 'running') search.state = 'stopped';
    Object.assign(this, { search, hung: search, variants, own: variants.length, shown });
    this.listener.again();
    this.listener.changed();
    return true;
  }

  private take(batch: WallBatch, search: WallSearch, signal: AbortSignal): void {
    if (signal.aborted) return;
    if (batch.candidates !== undefined) {
      search.candidates = batch.candidates;
      this.listener.changed();
      return;
    }
    this.takeDown(search);
    const { variants } = this;
    if (batch.tiles.some(({ variant }) => (variants[variant.index]?.key ?? variant.key) !== variant.key)) {
      // With more asked for, the same search may list what it drew before; then all hangs anew.
      this.hung = null;
      void this.start(search);
      return;
    }
    const fresh = batch.tiles.filter(({ variant }) => variants[variant.index] === undefined);
    const base = benchParent(search.inputs);
    for (const { variant, measures, look } of batch.tiles) {
      if (this.shown.length < MOST_SEEN_PRINTS) this.shown.push({ key: variant.key, look });
      variants[variant.index] = variant;
      rememberOrigin(variant, { measures, parents: search.derived === null ? base : parentsOf(search.derived, variant) });
    }
    this.own = variants.length;
    search.found = batch.found;
    this.listener.batch({ ...batch, tiles: fresh });
    this.listener.changed();
  }

  /** Hangs pinned prints that are not of this wall, once it stands. */
  async hangPins(pins: readonly Pin[]): Promise<void> {
    const { hung } = this;
    if (pins.length === 0 || hung === null || hung !== this.search || this.pinning || !this.ended) return;
    const { inputs, rows } = hung;
    const missing = missingPins(pins, this.variants, inputs.studio);
    if (missing.length === 0) return;
    const at = this.variants.length;
    this.pinning = true;
    try {
      const batch = await this.engine().pinTiles({ studio: inputs.studio, relative: inputs.relative, pins: missing, at, rows });
      if (this.search !== hung || this.variants.length !== at) return;
      const parents = benchParent(inputs);
      const variants = missing.map(pinnedVariant);
      variants.forEach((variant, i) =>
        rememberOrigin(variant, { measures: entryAt(batch.tiles, i).measures, parents, lineage: entryAt(missing, i).lineage }),
      );
      this.variants = [...this.variants, ...variants];
      this.listener.pinned(batch);
      this.listener.changed();
    } catch (error) {
      if (this.search === hung) hung.reason = sentenceOf(error);
    } finally {
      this.pinning = false;
    }
  }

  private async lookForClash(search: WallSearch, signal: AbortSignal): Promise<void> {
    const { studio, bench, explore } = search.inputs;
    let found: Clash | null = null;
    try {
      found = await this.engine().findClash({ studio, bench, explore }, { signal });
    } catch (error) {
      search.reason = sentenceOf(error);
    }
    if (signal.aborted) return;
    search.clash = found;
    this.listener.changed();
  }

  /** Ends the search and forgets what hangs. */
  clear(): void {
    this.work.stop();
    this.search = null;
    this.hung = null;
    this.variants = [];
    this.shown = [];
    this.own = 0;
    this.aside = null;
  }

  /** Ends the running search at once, however long the worker takes to hear of it; what was found stays. */
  stop(): void {
    this.work.stop();
    const { search } = this;
    if (search?.state !== 'running') return;
    search.state = 'stopped';
    this.takeDown(search);
    this.listener.changed();
  }
}

/** What the prints of a wall come from when they come from the base stack. */
function benchParent({ bench }: WallInputs): readonly Parent[] {
  return bench.length === 0 ? [] : [{ name: BENCH_NAME, pulls: bench }];
}
