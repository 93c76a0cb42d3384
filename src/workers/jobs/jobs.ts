/** Lets messages in between two steps of long work, so that a stop is heard. */
const channel = new MessageChannel();
const waiting: (() => void)[] = [];
channel.port1.addEventListener('message', () => waiting.shift()?.());
channel.port1.start();

/** Goes on when the messages that wait now were heard. */
export function breathe(): Promise<void> {
  return new Promise((resolve) => {
    waiting.push(resolve);
    channel.port2.postMessage(null);
  });
}

/** Which jobs run and which are to stop. An AbortSignal does not cross a worker boundary. */
export class Jobs {
  private readonly running = new Map<string, { cancelled: boolean }>();

  cancel(job: string): void {
    const found = this.running.get(job);
    if (found !== undefined) found.cancelled = true;
  }

  /** Loads the part of the program that a job takes; a stop that comes meanwhile is heard by the job. */
  async loading<T>(job: string, load: () => Promise<T>): Promise<T> {
    this.running.set(job, { cancelled: false });
    try {
      return await load();
    } catch (error) {
      this.running.delete(job);
      throw error;
    }
  }

  /**
   * Takes steps until they end or the job is cancelled.
   * @param onStep gets what each step gives
   * @returns true when the job was cancelled
   */
  async run<T>(job: string, steps: Iterator<T, void> | AsyncIterator<T, void>, onStep: (value: T) => void): Promise<boolean> {
    return (await this.find(job, steps, onStep)) === null;
  }

  /**
   * Takes steps to what they find at their end.
   * @param onStep gets what each step gives
   * @returns null when the job was cancelled
   */
  async find<T, R>(job: string, steps: Iterator<T, R> | AsyncIterator<T, R>, onStep: (value: T) => void = () => {}): Promise<R | null> {
    const state = this.running.get(job) ?? { cancelled: false };
    this.running.set(job, state);
    try {
      // A stop that was sent right after the start is heard before the first step.
      await breathe();
      while (!state.cancelled) {
        const step = await steps.next();
        if (step.done === true) return step.value;
        onStep(step.value);
        await breathe();
      }
      return null;
    } finally {
      this.running.delete(job);
    }
  }
}
