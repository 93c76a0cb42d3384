import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { askedInVain, sentenceOf } from '../../workers/client/client.ts';
import type { JobControl } from '../../workers/client/job-control.ts';

/** Something to be worked out; gives null when it was cancelled. */
export type Task<Found> = (control: Required<JobControl<number>>) => Promise<Found | null>;

/** Who hears how work ended. */
export interface WorkListener<Found> {
  found?(found: Found): void;
  failed?(sentence: string): void;
  /** It was done, so that why it failed before is of no account any more. */
  settled?(): void;
}

/**
 * Work that an element waits for, one at a time, with its progress, what it found or why it failed.
 * Either the latest call ends the one before (`start`), or what is on its way arrives first and only the
 * newest call waits (`follow`): for work that cannot be cancelled.
 */
export class Work<Found> implements ReactiveController {
  private readonly host: ReactiveControllerHost | null;
  private readonly listener: WorkListener<Found>;
  private current: AbortController | null = null;
  private next: Task<Found> | null = null;
  /** What the work last said of itself: a share from 0 to 1, or rounds. */
  progress = 0;
  found: Found | null = null;
  /** Why there is nothing found, in a sentence. */
  failure = '';
  /** Starts the same work once more; null when its worker did not die. */
  again: (() => void) | null = null;

  /** @param host drawn anew when something changes, and ends the work when it goes; null for none */
  constructor(host: ReactiveControllerHost | null, listener: WorkListener<Found> = {}) {
    this.host = host;
    this.listener = listener;
    host?.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  get running(): boolean {
    return this.current !== null;
  }

  /** Ends the work before, forgets what it found, and starts other work. */
  start(task: Task<Found>): Promise<void> {
    this.clear();
    return this.run(task);
  }

  /** Starts work when that on its way has ended; what waited before is dropped. */
  follow(task: Task<Found>): void {
    this.next = task;
    if (!this.running) void this.runNext();
  }

  private async runNext(): Promise<void> {
    while (this.next !== null && !this.running) {
      const task = this.next;
      this.next = null;
      await this.run(task);
    }
  }

  private async run(task: Task<Found>): Promise<void> {
    const current = new AbortController();
    const { signal } = current;
    this.current = current;
    this.host?.requestUpdate();
    const onProgress = (progress: number): void => {
      if (signal.aborted || this.current !== current) return;
      this.progress = progress;
      this.host?.requestUpdate();
    };
    let found: Found | null = null;
    let failure: string | null = null;
    let again: (() => void) | null = null;
    try {
      found = await task({ signal, onProgress });
    } catch (error) {
      failure = sentenceOf(error);
      if (askedInVain(error)) again = () => void this.start(task);
    }
    if (signal.aborted) return;
    this.current = null;
    this.found = found;
    this.failure = failure ?? '';
    this.again = again;
    if (failure === null) this.listener.settled?.();
    if (failure !== null) this.listener.failed?.(failure);
    else if (found !== null) this.listener.found?.(found);
    this.host?.requestUpdate();
  }

  /** Fails without any work. */
  refuse(sentence: string): void {
    this.clear();
    this.failure = sentence;
    this.host?.requestUpdate();
  }

  /** Ends the work and forgets what the one before found. */
  clear(): void {
    this.stop();
    this.progress = 0;
    this.found = null;
    this.failure = '';
    this.again = null;
  }

  /** Drops what waits; what is on its way still arrives. */
  forget(): void {
    this.next = null;
  }

  /** Ends the work; what it would have found does not come. */
  stop(): void {
    this.next = null;
    if (this.current === null) return;
    this.current.abort();
    this.current = null;
    this.host?.requestUpdate();
  }
}
