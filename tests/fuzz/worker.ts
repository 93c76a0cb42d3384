import { parentPort, workerData } from 'node:worker_threads';
import { mutated } from './mutations.ts';
import { type ReaderName, tryReader } from './readers.ts';

/** What a worker is started with. */
export interface Task {
  reader: ReaderName;
  /** Texts to read as they are, or to change. */
  files: readonly string[];
  /** Which runs of changed texts; none to read the texts as they are. */
  changed: { seed: number; from: number; count: number } | null;
  /** Where the worker writes the number of the text that it reads. */
  at: SharedArrayBuffer;
}

/** A text that a reader did not bear. */
export interface Fault {
  index: number;
  what: string;
}

/** Of changed documents that are read, one in so many is used as the app would. */
const USED_ONE_IN = 10;

const { reader, files, changed, at } = workerData as Task;
const place = new Int32Array(at);
const texts = changed === null ? files : mutated(files, changed.seed, changed.count);
let index = 0;
for (const text of texts) {
  if (index >= (changed?.from ?? 0)) {
    Atomics.store(place, 0, index);
    const what = tryReader(reader, text, changed === null || index % USED_ONE_IN === 0);
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a port of Node has no origin
    if (what !== null) parentPort!.postMessage({ index, what } satisfies Fault);
  }
  index++;
}
