import * as Comlink from 'comlink';

/** How the page follows work in a worker, and ends it. */
export interface JobControl<Progress> {
  signal: AbortSignal;
  /** Gets what the work says of itself while it runs. */
  onProgress?: (progress: Progress) => void;
}

let nextJob = 1;

/**
 * Runs work in a worker under a name of its own, by which it is cancelled when the signal says so.
 * @param work gets the name and what to send progress to
 * @throws what the work throws, and the signal's reason when it had said so before
 */
export async function runJob<Progress, Found>(
  { signal, onProgress }: JobControl<Progress>,
  cancel: (job: string) => void,
  work: (job: string, onProgress: (progress: Progress) => void) => Promise<Found>,
): Promise<Found> {
  signal.throwIfAborted();
  const job = `job-${nextJob++}`;
  const onAbort = (): void => cancel(job);
  signal.addEventListener('abort', onAbort);
  let ended = false;
  try {
    // Progress goes another way than the end, and may come after it.
    const hear = (progress: Progress): void => {
      if (!signal.aborted && !ended) onProgress?.(progress);
    };
    return await work(job, Comlink.proxy(hear));
  } finally {
    ended = true;
    signal.removeEventListener('abort', onAbort);
  }
}
