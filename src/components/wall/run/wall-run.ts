import { entryAt } from '../../../engine/base/at.ts';
import type { Clash } from '../../../engine/explore/search/clash.ts';
import type { SeenPrint } from '../../../engine/explore/search/explorer.ts';
import { MOST_SEEN_PRINTS } from '../../../engine/explore/search/seen.ts';
import type { ExploreSettings, Variant } from '../../../engine/explore/types.ts';
import type { Pin } from '../../../engine/project/types.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { WallBatch } from '../../../workers/api/engine-api.ts';
import { desk, newJob, onMessage, sentenceOf } from '../../../workers/client/client.ts';
import type { DerivedAsk } from './derived-ask.ts';
import { missingPins, pinnedVariant } from './pinned-prints.ts';
import { type Parent, rememberOrigin } from './wall-origins.ts';

const BENCH_NAME = 'the stack on the Bench';

export type RunState = 'idle' | 'running' | 'done' | 'stopped' | 'failed';

/** What a wall is found from. */
export interface WallInputs {
  drawer: Studio;
  bench: readonly Pull[];
  explore: ExploreSettings;
  /** Whether the prints are shown relative to the paper. */
  relative: boolean;
}

/** Whether two plain values are alike. */
export function sameValue(a: unknown, b: unknown): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** Whether the same wall would come of both. */
export function sameInputs(a: WallInputs, b: WallInputs): boolean {
  return a.drawer === b.drawer && a.relative === b.relative && sameValue(a.bench, b.bench) && sameValue(a.explore, b.explore);
}

/** Who hears of a run. */
export interface RunListener {
  /** The first prints of a run are here: the wall before it can come down. */
  begin(inputs: WallInputs): void;
  batch(batch: WallBatch): void;
  /** Pinned prints of other walls hang after the wall's own. */
  pinned(batch: WallBatch): void;
  /** State or counts changed. */
  changed(): void;
}

/** Height of a print in map rows: the larger the wall, the less of each print can be seen at once. */
function rowsFor(count: number): number {
  if (count <= 800) return 256;
  if (count <= 2500) return 160;
  return count <= 5000 ? 96 : 64;
}

/** One search for variants at a time; a new one takes the place of the one before. */
export class WallRun {
  state: RunState = 'idle';
  found = 0;
  asked = 0;
  /** Why it ended with fewer than asked, or why it failed. */
  reason = '';
  /** Conditions that clash, when no print came; 'looking' while they are looked for. */
  clash: Clash | 'looking' | null = null;
  /** By their number on the wall. */
  variants: Variant[] = [];
  /** What hangs, as a later run is told of it. */
  shown: SeenPrint[] = [];
  /** What the wall that hangs was found from. */
  inputs: WallInputs | null = null;
  /** The prints that it was found from; null when it comes from the base stack. */
  derived: DerivedAsk | null = null;
  private readonly listener: RunListener;
  private job: string | null = null;
  private call = 0;
  /** True while pinned prints are drawn. */
  private pinning = false;
  /** Takes down the wall before the running search, if it still hangs. */
  private takeDown: () => void = () => {};

  constructor(listener: RunListener) {
    this.listener = listener;
  }

  /**
   * @param derived the prints that the wall is found from, in the place of the base stack
   * @param seen prints that the wall keeps away from
   */
  async start(inputs: WallInputs, derived: DerivedAsk | null = null, seen: readonly SeenPrint[] = []): Promise<void> {
    this.cancel();
    const call = ++this.call;
    const job = newJob();
    this.job = job;
    this.inputs = inputs;
    this.derived = derived;
    this.state = 'running';
    this.found = 0;
    this.asked = derived === null ? inputs.explore.count : derived.request.count + (derived.request.kind === 'between' ? 2 : 0);
    this.reason = '';
    this.clash = null;
    this.listener.changed();
    const base: Parent[] = inputs.bench.length === 0 ? [] : [{ name: BENCH_NAME, pulls: inputs.bench }];
    const parents = derived?.parents ?? base;
    let begun = false;
    const begin = (): void => {
      if (begun) return;
      begun = true;
      this.variants = [];
      this.shown = [];
      this.listener.begin(inputs);
    };
    this.takeDown = begin;
    const wall = desk('wall');
    try {
      const end = await wall.engine.wall(
        wall.key(inputs.drawer),
        job,
        inputs.bench,
        inputs.explore,
        rowsFor(this.asked),
        onMessage((batch: WallBatch) => {
          if (call !== this.call) return;
          begin();
          for (const { variant, measures, look } of batch.tiles) {
            if (this.shown.length < MOST_SEEN_PRINTS) this.shown.push({ key: variant.key, look });
            this.variants[variant.index] = variant;
            rememberOrigin(variant, { measures, parents });
          }
          this.found = batch.found;
          this.listener.batch(batch);
          this.listener.changed();
        }),
        {
          relative: inputs.relative,
          cores: navigator.hardwareConcurrency,
          ...(derived === null ? { seen } : { derived: derived.request }),
        },
      );
      if (call !== this.call) return;
      begin();
      this.found = end.found;
      this.asked = end.asked;
      this.reason = end.reason;
      this.state = end.cancelled ? 'stopped' : 'done';
    } catch (error) {
      if (call !== this.call) return;
      this.state = 'failed';
      this.reason = sentenceOf(error);
    }
    this.job = null;
    if (this.state === 'done' && this.found === 0 && derived === null) void this.lookForClash(call, inputs);
    this.listener.changed();
  }

  /** Hangs pinned prints that are not of this wall, once it stands. */
  async hangPins(pins: readonly Pin[]): Promise<void> {
    const { inputs, call, state } = this;
    if (pins.length === 0 || inputs === null || this.pinning || (state !== 'done' && state !== 'stopped')) return;
    const missing = missingPins(pins, this.variants, inputs.drawer);
    if (missing.length === 0) return;
    const at = this.variants.length;
    const wall = desk('wall');
    this.pinning = true;
    try {
      const batch = await wall.engine.pinTiles(wall.key(inputs.drawer), missing, at, rowsFor(this.asked), inputs.relative);
      if (call !== this.call || this.variants.length !== at) return;
      const parents: Parent[] = inputs.bench.length === 0 ? [] : [{ name: BENCH_NAME, pulls: inputs.bench }];
      const variants = missing.map(pinnedVariant);
      variants.forEach((variant, i) =>
        rememberOrigin(variant, { measures: entryAt(batch.tiles, i).measures, parents, lineage: entryAt(missing, i).lineage }),
      );
      this.variants = [...this.variants, ...variants];
      this.listener.pinned(batch);
      this.listener.changed();
    } catch (error) {
      if (call === this.call) this.reason = sentenceOf(error);
    } finally {
      this.pinning = false;
    }
  }

  private async lookForClash(call: number, { drawer, bench, explore }: WallInputs): Promise<void> {
    const wall = desk('wall');
    const job = newJob();
    this.job = job;
    this.clash = 'looking';
    let found: Clash | null = null;
    try {
      found = await wall.engine.findClash(wall.key(drawer), job, bench, explore);
    } catch (error) {
      if (call === this.call) this.reason = sentenceOf(error);
    }
    if (call !== this.call) return;
    this.job = null;
    this.clash = found;
    this.listener.changed();
  }

  /** Ends the search and forgets what it found. */
  clear(): void {
    this.cancel();
    this.call++;
    this.job = null;
    this.inputs = null;
    this.derived = null;
    this.state = 'idle';
    this.found = 0;
    this.asked = 0;
    this.reason = '';
    this.clash = null;
    this.variants = [];
  }

  /** Ends the running search at once, however long the worker takes to hear of it; what was found stays. */
  stop(): void {
    this.cancel();
    if (this.state !== 'running') return;
    this.call++;
    this.job = null;
    this.takeDown();
    this.state = 'stopped';
    this.listener.changed();
  }

  private cancel(): void {
    if (this.job !== null) void desk('wall').engine.cancel(this.job);
  }
}
