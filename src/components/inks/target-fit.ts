import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { OverprintFit } from '../../engine/ink/fit-overprints.ts';
import type { Ink, Paper } from '../../engine/ink/types.ts';
import type { MeasuredSquare } from '../../engine/project/types.ts';
import { desk, newJob, onMessage, sentenceOf } from '../../workers/client.ts';

/** What inks are fitted to. */
export interface FitInputs {
  squares: readonly MeasuredSquare[];
  inks: readonly Ink[];
  paper: Paper;
}

/** Fits inks to a pulled target in a worker, one fit at a time; the latest start wins. */
export class FitRun implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private job: string | null = null;
  rounds = 0;
  /** The last fit and what it was made from. */
  found: { fit: OverprintFit; inputs: FitInputs } | null = null;
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

  async start(inputs: FitInputs): Promise<void> {
    this.stop();
    const job = newJob();
    this.job = job;
    this.rounds = 0;
    this.found = null;
    this.refusal = '';
    this.host.requestUpdate();
    const { squares, inks, paper } = inputs;
    try {
      const fit = await desk('plan').engine.fitOverprints(
        job,
        squares,
        inks,
        paper,
        onMessage((rounds: number) => {
          if (this.job !== job) return;
          this.rounds = rounds;
          this.host.requestUpdate();
        }),
      );
      if (this.job === job && fit !== null) this.found = { fit, inputs };
    } catch (error) {
      if (this.job === job) this.refusal = sentenceOf(error);
    }
    if (this.job === job) this.job = null;
    this.host.requestUpdate();
  }

  /** Refuses without asking the worker. */
  refuse(sentence: string): void {
    this.stop();
    this.found = null;
    this.refusal = sentence;
    this.host.requestUpdate();
  }

  /** Ends the fit; the inks stay as they are. */
  stop(): void {
    if (this.job === null) return;
    void desk('plan').engine.cancel(this.job);
    this.job = null;
    this.host.requestUpdate();
  }
}
