import { say } from '../words/en/client.ts';

/** What a desk needs of a worker. */
interface DeskWorker {
  terminate(): void;
  addEventListener(type: 'error' | 'messageerror', listener: (event: Event) => void): void;
}

/** A worker and how it is called. */
export interface Seated<Remote> {
  worker: DeskWorker;
  remote: Remote;
  /** Resolves when the worker has died without a word; absent where that cannot be known. */
  gone?: Promise<void>;
  /** Whether `gone` is heard: then silence means only that it works, or never comes to an end. */
  deathHeard?: boolean;
}

export interface DeskOptions<Remote> {
  /** Starts a worker; called anew after one has died. */
  start(): Seated<Remote>;
  /** Asks the worker for any answer. */
  ping(remote: Remote): Promise<unknown>;
  /** So many ms without any answer, while something waits, count as death. */
  silenceMs: number;
  /** The same where its death would be heard; absent = no longer. On a machine that has much else to do, one step of a large print may take half a minute. */
  patienceMs?: number;
  /** What the worker does, for the sentence: 'The part of the app that saves'. */
  what: string;
  /** After so many ms without work the worker is ended, as each takes 10 to 20 MB; absent = it stays. */
  restMs?: number | undefined;
}

/** That a worker was ended, with a sentence for the user. */
export class WorkerEnded extends Error {
  override readonly name = 'WorkerEnded';
  /** Whether the fault lay with other work, so that this may be asked again as it is. */
  readonly elsewhere: boolean;

  constructor(message: string, elsewhere: boolean) {
    super(message);
    this.elsewhere = elsewhere;
  }
}

/** Looks at a silent worker so many times before it counts as dead: one look may come late, as after a sleep. */
const LOOKS = 5;

/**
 * A worker that is replaced when it dies: when it throws outside a call, ends by itself, sends what cannot
 * be read, or gives no answer for too long. What waited is rejected with one sentence; the next call starts another.
 */
export class Desk<Remote> {
  private readonly options: DeskOptions<Remote>;
  private seated: Seated<Remote> | null = null;
  private readonly waiting = new Set<(error: WorkerEnded) => void>();
  private clock: ReturnType<typeof setInterval> | undefined;
  private silentLooks = 0;
  private resting: ReturnType<typeof setTimeout> | undefined;
  private restMs: number | undefined;

  constructor(options: DeskOptions<Remote>) {
    this.options = options;
    this.restMs = options.restMs;
  }

  /**
   * Has the worker do something.
   * @throws WorkerEnded when the worker died or was ended before it answered, and what the work throws
   */
  async call<Found>(work: (remote: Remote) => Promise<Found>): Promise<Found> {
    for (;;) {
      try {
        return await this.once(work);
      } catch (error) {
        if (!(error instanceof WorkerEnded) || !error.elsewhere) throw error;
      }
    }
  }

  /** As `call`, and asks a second worker when the first died: for work that may be done twice. */
  async callAgain<Found>(work: (remote: Remote) => Promise<Found>): Promise<Found> {
    try {
      return await this.call(work);
    } catch (error) {
      if (!(error instanceof WorkerEnded)) throw error;
      return this.call(work);
    }
  }

  /** Says something to the worker, if there is one; nothing waits for an answer. */
  tell(say: (remote: Remote) => unknown): void {
    if (this.seated !== null) say(this.seated.remote);
  }

  private once<Found>(work: (remote: Remote) => Promise<Found>): Promise<Found> {
    const { remote } = (this.seated ??= this.start());
    return new Promise((resolve, reject) => {
      const answer = work(remote);
      this.waiting.add(reject);
      clearTimeout(this.resting);
      this.watch();
      const settle = (done: () => void): void => {
        if (!this.waiting.delete(reject)) return;
        this.silentLooks = 0;
        if (this.waiting.size === 0) this.rest();
        done();
      };
      answer.then(
        (found) => settle(() => resolve(found)),
        (error: unknown) => settle(() => reject(error)),
      );
    });
  }

  /**
   * Ends the worker and rejects what waits for it; nothing happens when there is none.
   * @param elsewhere whether what waits is not at fault: it goes to the next worker as it is
   */
  end(reason: string, elsewhere = false): void {
    const { seated, waiting } = this;
    if (seated === null) return;
    this.seated = null;
    clearTimeout(this.resting);
    this.unwatch();
    seated.worker.terminate();
    const error = new WorkerEnded(say.stoppedAndAnew(this.options.what, reason), elsewhere);
    const rejects = [...waiting];
    waiting.clear();
    for (const reject of rejects) reject(error);
  }

  /** Has the worker ended after other ms without work than it was begun with; undefined = it stays. */
  restAfter(restMs: number | undefined): void {
    this.restMs = restMs;
    clearTimeout(this.resting);
    if (this.seated !== null && this.waiting.size === 0) this.rest();
  }

  private rest(): void {
    this.unwatch();
    const { restMs } = this;
    if (restMs !== undefined) this.resting = setTimeout(() => this.end('it had nothing to do'), restMs);
  }

  private start(): Seated<Remote> {
    const seated = this.options.start();
    const onEnd =
      <Sign = Event>(reason: (sign: Sign) => string) =>
      (sign: Sign): void => {
        if (this.seated === seated) this.end(reason(sign));
      };
    seated.worker.addEventListener(
      'error',
      onEnd((event: Event) =>
        'message' in event && typeof event.message === 'string' && event.message !== '' ? event.message : say.itFailed,
      ),
    );
    seated.worker.addEventListener(
      'messageerror',
      onEnd(() => say.answerUnreadable),
    );
    // Where its lock cannot be asked for, silence tells.
    seated.gone?.then(
      onEnd<void>(() => say.endedByItself),
      () => undefined,
    );
    return seated;
  }

  private watch(): void {
    if (this.clock !== undefined) return;
    this.silentLooks = 0;
    this.clock = setInterval(() => this.look(), this.silenceMs / LOOKS);
    this.ping();
  }

  private get silenceMs(): number {
    const { silenceMs, patienceMs = silenceMs } = this.options;
    return this.seated?.deathHeard === true ? patienceMs : silenceMs;
  }

  private unwatch(): void {
    clearInterval(this.clock);
    this.clock = undefined;
  }

  private look(): void {
    this.silentLooks++;
    if (this.silentLooks < LOOKS) this.ping();
    else this.end(say.noAnswerFor(Math.round(this.silenceMs / 1000)));
  }

  private ping(): void {
    const { seated } = this;
    if (seated === null) return;
    const heard = (): void => {
      if (this.seated === seated) this.silentLooks = 0;
    };
    // A refusal is an answer, too.
    this.options.ping(seated.remote).then(heard, heard);
  }
}
