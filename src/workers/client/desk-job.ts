import { awakeTimeout } from './awake-timeout.ts';
import type { Desk } from './desk.ts';
import { type JobControl, runJob } from './job-control.ts';

/** Work that does not end for so long after it was told to stop ends with its worker, ms: a stop is heard within a tenth of a second. */
const STOP_MS = 100;

/** How a job is done and stopped. */
export interface DeskJob<Remote, Progress, Found> {
  cancel(remote: Remote, job: string): unknown;
  work(remote: Remote, job: string, onProgress: (progress: Progress) => void): Promise<Found>;
}

/**
 * Runs a job at a desk; one that does not stop when told ends with its worker, and other work that waits
 * there goes to the next.
 * @throws as `runJob` and `Desk.call` do
 */
export async function runAtDesk<Remote, Progress, Found>(
  desk: Desk<Remote>,
  control: JobControl<Progress>,
  { cancel, work }: DeskJob<Remote, Progress, Found>,
): Promise<Found> {
  let stopWaiting: (() => void) | undefined;
  const stop = (job: string): void => {
    desk.tell((remote) => cancel(remote, job));
    stopWaiting = awakeTimeout(() => desk.end('it did not stop when told', true), STOP_MS);
  };
  try {
    return await runJob(control, stop, (job, onProgress) =>
      desk.call((remote) => {
        control.signal.throwIfAborted();
        return work(remote, job, onProgress);
      }),
    );
  } finally {
    stopWaiting?.();
  }
}
