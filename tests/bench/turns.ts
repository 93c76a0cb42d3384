import { type ChildProcess, fork } from 'node:child_process';

/** Does a job once, for all its variants; gives a number that depends on all that it did. */
type Round = () => number;

/** What one side has to do for a case: a round of each of its jobs. */
export type Jobs = Record<string, Round>;

/** Rounds last at least as long, so that most hold collections of garbage. */
const LEAST_MS = 30;

interface Asked<Case> {
  /** A case to prepare, or the job to do. */
  begin?: Case;
  job?: string;
}

interface Answer {
  /** Processor time for once through all variants, ms. */
  tookMs: number;
  checksum: number;
}

/**
 * A side of a race in a process of its own, so that the garbage that it leaves is collected in its own time, and nothing of it while the other
 * side works. Its clock is the processor time of its process, user and system, from the end of its round before to the end of this: whatever
 * the process did counts, threads that collect garbage and messages too, and other work on the machine does not.
 */
export class Side<Case> {
  private readonly process: ChildProcess;

  /** @param name as the script is called with it again, see `sideAsked` */
  constructor(name: string) {
    this.process = fork(process.argv[1]!, [name]);
  }

  /** Prepares a case. */
  async begin(asked: Case): Promise<void> {
    await this.ask({ begin: asked });
  }

  /** @returns processor time for once through all variants of a job, ms */
  async round(job: string): Promise<number> {
    const { tookMs, checksum } = await this.ask({ job });
    if (!Number.isFinite(checksum) || checksum === 0) throw new Error('nothing was measured');
    return tookMs;
  }

  end(): void {
    this.process.disconnect();
  }

  private ask(asked: Asked<Case>): Promise<Answer> {
    return new Promise((resolve, reject) => {
      const ended = (code: number | null): void => reject(new Error(`a side of the race ended with ${code}`));
      this.process.once('exit', ended);
      this.process.once('message', (answer) => {
        this.process.off('exit', ended);
        resolve(answer as Answer);
      });
      this.process.send(asked);
    });
  }
}

/** The side that this process was started for; undefined in the one that runs the race. */
export function sideAsked(): string | undefined {
  return process.argv[2];
}

/** Works as one side of a race until that is over. */
export function beSide<Case>(prepare: (asked: Case) => Jobs): void {
  let jobs: Jobs = {};
  let times: Record<string, number> = {};
  let since = 0;
  process.on('message', ({ begin, job }: Asked<Case>) => {
    let checksum = 0;
    if (begin !== undefined) {
      jobs = prepare(begin);
      times = {};
    }
    const round = job === undefined ? undefined : jobs[job];
    if (job !== undefined && round !== undefined) {
      times[job] ??= timesFor(round);
      for (let i = 0; i < times[job]; i++) checksum += round();
    }
    const now = processorMs();
    process.send!({ tookMs: (now - since) / (times[job ?? ''] ?? 1), checksum } satisfies Answer);
    since = now;
  });
}

/** How often a job is done in a round. */
function timesFor(round: Round): number {
  const start = processorMs();
  round();
  const second = processorMs();
  round();
  return Math.max(1, Math.ceil(LEAST_MS / Math.max(0.1, Math.min(second - start, processorMs() - second))));
}

function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
