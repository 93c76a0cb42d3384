import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { build } from 'vite';
import type { ReaderName } from './readers.ts';
import type { Fault, Task } from './worker.ts';

/** Memory that one text may take. */
const MOST_MB = 500;

/** Which texts a reader is given, and how long it may take over one of them. */
interface Tried {
  reader: ReaderName;
  files: readonly string[];
  /** How many changed ones, from which seed; null to read the files as they are. */
  changed: { seed: number; count: number } | null;
  /** Of the processor's time. */
  mostMs: number;
}

let script: Promise<string> | undefined;

/** The worker with all that it imports, as one file that Node can run. */
function workerScript(): Promise<string> {
  script ??= (async () => {
    const outDir = mkdtempSync(join(tmpdir(), 'fuzz-'));
    await build({
      configFile: false,
      logLevel: 'error',
      build: {
        lib: { entry: join(process.cwd(), 'tests/fuzz/worker.ts'), formats: ['es'], fileName: () => 'worker.mjs' },
        outDir,
        rollupOptions: { external: /^node:/ },
      },
    });
    return join(outDir, 'worker.mjs');
  })();
  return script;
}

/**
 * Reads texts in a worker that is ended when one of them takes too long or more than 500 MB; another goes
 * on with the next.
 * @returns those that a reader did not bear
 */
export async function guarded({ reader, files, changed, mostMs }: Tried): Promise<Fault[]> {
  const path = await workerScript();
  const faults: Fault[] = [];
  const count = changed?.count ?? files.length;
  for (let from = 0; from < count;) {
    const rest = changed === null ? files.slice(from) : files;
    const task: Task = { reader, files: rest, changed: changed && { ...changed, from }, at: new SharedArrayBuffer(4) };
    const ended = await runWorker(path, task, mostMs);
    const first = changed === null ? from : 0;
    faults.push(...ended.faults.map((fault) => ({ ...fault, index: fault.index + first })));
    if (ended.at === null) return faults;
    from = ended.at + first + 1;
  }
  return faults;
}

interface Ended {
  faults: Fault[];
  /** The text at which the worker was ended; null when it got through. */
  at: number | null;
}

/** Time that processors gave to this process: on a busy machine a text waits, and no reader is to blame. */
function usedMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function runWorker(path: string, task: Task, mostMs: number): Promise<Ended> {
  return new Promise((resolve) => {
    const faults: Fault[] = [];
    const place = new Int32Array(task.at);
    const worker = new Worker(path, {
      workerData: task,
      resourceLimits: { maxOldGenerationSizeMb: MOST_MB, maxYoungGenerationSizeMb: 64 },
    });
    let [last, since] = [-1, usedMs() + 3000];
    let ended = false;
    const end = (what: string | null): void => {
      if (ended) return;
      ended = true;
      clearInterval(timer);
      const at = Atomics.load(place, 0);
      void worker.terminate();
      if (what !== null) faults.push({ index: at, what });
      resolve({ faults, at: what === null ? null : at });
    };
    const timer = setInterval(() => {
      const now = Atomics.load(place, 0);
      if (now !== last) [last, since] = [now, usedMs()];
      else if (usedMs() - since > mostMs) end(`took more than ${mostMs} ms`);
    }, 100);
    worker.on('message', (fault: Fault) => faults.push(fault));
    worker.on('error', (error) => end(`ended the worker: ${String(error).slice(0, 200)}`));
    worker.on('exit', () => end(null));
  });
}
