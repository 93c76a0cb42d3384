import * as Comlink from 'comlink';
import type { WhiteAs } from '../../engine/shapes/read/white.ts';
import type { InkApi, ReadShapeResult } from '../api/ink-api.ts';

/** A file that takes longer than this is given up, ms. */
const MOST_MS = 10_000;

interface Reader {
  worker: Worker;
  remote: Comlink.Remote<Pick<InkApi, 'readShapeFile'>>;
}

/** Reading was given up; the message is a sentence about the file without its name and full stop. */
export class ReadingEnded extends Error {}

/** Kept for the next file; started again after it had to be ended. */
let reader: Reader | null = null;

function readerNow(): Reader {
  if (reader !== null) return reader;
  const worker = new Worker(new URL('../entry/engine.worker.ts', import.meta.url), { type: 'module' });
  reader = { worker, remote: Comlink.wrap<Pick<InkApi, 'readShapeFile'>>(worker) };
  return reader;
}

/**
 * Reads a shape file in a worker of its own, so that no file holds up the picture on the Bench.
 * @param signal ends the worker, in the midst of whatever it does
 * @throws ReadingEnded after 10 s, when stopped, or when the worker dies
 */
export async function readShapeFile(
  file: { text: string; name: string; id: string; white?: WhiteAs },
  signal: AbortSignal,
): Promise<ReadShapeResult> {
  const { worker, remote } = readerNow();
  let onAbort = (): void => undefined;
  let timer = 0;
  const given = new Promise<never>((_, reject) => {
    const end = (why: string): void => {
      worker.terminate();
      reader = null;
      reject(new ReadingEnded(why));
    };
    onAbort = () => end('reading it was stopped; choose it again to read it');
    signal.addEventListener('abort', onAbort);
    if (signal.aborted) end('reading it was stopped; choose it again to read it');
    timer = self.setTimeout(() => end(`reading it took more than ${MOST_MS / 1000} s; simplify the drawing or split it`), MOST_MS);
    worker.addEventListener('error', () => end('reading it broke down; simplify the drawing or split it'), { once: true });
  });
  try {
    return await Promise.race([remote.readShapeFile(file.text, file.name, file.id, file.white), given]);
  } finally {
    self.clearTimeout(timer);
    signal.removeEventListener('abort', onAbort);
  }
}
