import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { VeilOptions } from '../../engine/explore/index.ts';
import type { Drawer, Pull } from '../../engine/stack/types.ts';
import { desk, newJob, onMessage, sentenceOf } from '../../workers/client.ts';
import type { VeilFind } from '../../workers/wire.ts';

/** What veils are looked for. */
export interface VeilQuestion {
  pulls: readonly Pull[];
  drawer: Drawer;
  options: VeilOptions;
  heightPx: number;
  relative: boolean;
}

/** Looks for veils in a worker, for one stack at a time; the latest start wins. */
export class VeilRun implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private job: string | null = null;
  /** Share that is done, 0–1. */
  share = 0;
  found: VeilFind | null = null;
  /** Why there is none, in a sentence. */
  refusal = '';

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  get running(): boolean {
    return this.job !== null;
  }

  async start({ pulls, drawer, options, heightPx, relative }: VeilQuestion): Promise<void> {
    this.stop();
    const job = newJob();
    this.job = job;
    this.share = 0;
    this.found = null;
    this.refusal = '';
    this.host.requestUpdate();
    const place = desk('plan');
    try {
      const found = await place.engine.veils(
        place.key(drawer),
        job,
        pulls,
        options,
        heightPx,
        relative,
        onMessage((share: number) => {
          if (this.job !== job) return;
          this.share = share;
          this.host.requestUpdate();
        }),
      );
      if (this.job === job) this.found = found;
    } catch (error) {
      if (this.job === job) this.refusal = sentenceOf(error);
    }
    if (this.job === job) this.job = null;
    this.host.requestUpdate();
  }

  stop(): void {
    if (this.job === null) return;
    void desk('plan').engine.cancel(this.job);
    this.job = null;
    this.host.requestUpdate();
  }
}
