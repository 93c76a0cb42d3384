import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk, newJob, onMessage, sentenceOf } from '../../workers/client/client.ts';

/** The worker that a job runs in. */
export type Place = ReturnType<typeof desk>;

/**
 * A job in a worker whose progress a component shows: one at a time, the latest start wins, and it
 * can be stopped.
 */
export class JobRun<Found> implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly kind: Parameters<typeof desk>[0];
  private job: string | null = null;
  /** What the job last told of itself: a share from 0 to 1, or rounds. */
  progress = 0;
  found: Found | null = null;
  /** Why there is nothing found, in a sentence. */
  refusal = '';

  /** @param kind the worker that the job runs in */
  constructor(host: ReactiveControllerHost, kind: Parameters<typeof desk>[0]) {
    this.host = host;
    this.kind = kind;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  get running(): boolean {
    return this.job !== null;
  }

  /**
   * Ends the job before, and starts another.
   * @param work gets the worker, the job's name to give it, and what to tell progress to
   */
  async start(work: (place: Place, job: string, tell: (progress: number) => void) => Promise<Found | null>): Promise<void> {
    this.clear();
    const job = newJob();
    this.job = job;
    this.host.requestUpdate();
    const tell = onMessage((progress: number) => {
      if (this.job !== job) return;
      this.progress = progress;
      this.host.requestUpdate();
    });
    try {
      const found = await work(desk(this.kind), job, tell);
      if (this.job === job) this.found = found;
    } catch (error) {
      if (this.job === job) this.refusal = sentenceOf(error);
    }
    if (this.job === job) this.job = null;
    this.host.requestUpdate();
  }

  /** Refuses without asking the worker. */
  refuse(sentence: string): void {
    this.clear();
    this.refusal = sentence;
    this.host.requestUpdate();
  }

  /** Ends the job and forgets what the one before found. */
  clear(): void {
    this.stop();
    this.progress = 0;
    this.found = null;
    this.refusal = '';
  }

  /** Ends the job; what it would have found does not come. */
  stop(): void {
    if (this.job === null) return;
    void desk(this.kind).engine.cancel(this.job);
    this.job = null;
    this.host.requestUpdate();
  }
}
