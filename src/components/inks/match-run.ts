import type { MatchOptions, MatchResult } from '../../engine/ink/match.ts';
import type { Ink, Lab } from '../../engine/ink/types.ts';
import { desk, newJob, onMessage, sentenceOf } from '../../workers/client.ts';

/** A search for mixes: one at a time, the latest wins, and it can be stopped. */
export class MatchRun {
  private readonly changed: () => void;
  private job: string | null = null;
  /** Share that is done, 0–1; null when nothing is searched. */
  progress: number | null = null;
  result: MatchResult | null = null;
  problem = '';

  constructor(changed: () => void) {
    this.changed = changed;
  }

  async start(target: Lab, stocks: readonly Ink[], options: MatchOptions): Promise<void> {
    this.stop();
    const job = newJob();
    this.job = job;
    this.progress = 0;
    this.result = null;
    this.problem = '';
    this.changed();
    const onProgress = onMessage((share: number) => {
      if (job !== this.job) return;
      this.progress = share;
      this.changed();
    });
    try {
      const result = await desk('picture').engine.matchInk(job, target, stocks, options, onProgress);
      if (job === this.job) this.result = result;
    } catch (error) {
      if (job === this.job) this.problem = sentenceOf(error);
    }
    if (job !== this.job) return;
    this.job = null;
    this.progress = null;
    this.changed();
  }

  stop(): void {
    if (this.job === null) return;
    void desk('picture').engine.cancel(this.job);
    this.job = null;
    this.progress = null;
    this.changed();
  }
}
