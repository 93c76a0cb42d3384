import type { Reading } from '../../engine/shapes/read/read-shapes.ts';
import { fixed } from '../../engine/words/language.ts';
import type { FileFound, FileKind, ReaderApi } from '../api/reader-api.ts';
import { say } from '../words/en/client.ts';
import { awakeTimeout } from './awake-timeout.ts';
import type { Seated } from './desk.ts';
import { type Api, seat } from './seat.ts';

/** What a kind of file may take, and how its sentences go on. */
interface Allowed {
  what: string;
  mostMb: number;
  mostS: number;
  /** What makes a file of this kind smaller. */
  mend: string;
  /** What to choose instead of something that cannot be opened. */
  choose: string;
}

const saved = (): Omit<Allowed, 'what'> => ({
  mostMb: 256,
  mostS: 30,
  mend: say.chooseSaved,
  choose: say.chooseSavedNoFolder,
});

const allowed = (): Readonly<Record<FileKind, Allowed>> => ({
  shape: {
    what: say.shapeFile,
    mostMb: 20,
    mostS: 10,
    mend: say.simplifyDrawing,
    choose: say.chooseSvg,
  },
  measurements: {
    what: say.measurementFile,
    mostMb: 40,
    mostS: 20,
    mend: say.exportFewer,
    choose: say.chooseText,
  },
  recipe: { what: say.recipe, ...saved() },
  project: { what: say.project, ...saved() },
  log: { what: say.log, ...saved() },
  visit: { what: say.visit, ...saved() },
  photo: { what: say.photo, mostMb: 200, mostS: 20, mend: say.scaleItDown, choose: say.choosePhoto },
  picture: { what: say.picture, mostMb: 200, mostS: 20, mend: say.scaleItDown, choose: say.choosePicture },
});

/** Reading was refused or given up; the message is a sentence that names the file. */
class ReadingEnded extends Error {
  override readonly name = 'ReadingEnded';
}

/** Kept for the next file. */
let idle: Seated<Api<ReaderApi>> | null = null;

function takeReader(): Seated<Api<ReaderApi>> {
  const kept = idle;
  idle = null;
  if (kept !== null) return kept;
  const reader = seat<ReaderApi>(new Worker(new URL('../entry/reader.worker.ts', import.meta.url), { type: 'module' }));
  void reader.gone?.then(() => {
    if (idle === reader) idle = null;
  });
  return reader;
}

/**
 * Reads a file in a worker of its own, so that no file holds up anything else.
 * @param reading how a drawing is taken: white as paper, and as one shape, when left out
 * @param signal ends the worker, in the midst of whatever it does
 * @throws ReadingEnded when the file is too large, takes too long or cannot be opened, when the worker
 *   dies, and when it was stopped
 */
export async function readFile<Kind extends FileKind>(
  kind: Kind,
  file: File,
  signal: AbortSignal,
  reading?: Reading,
): Promise<FileFound[Kind]> {
  const { what, mostMb, mostS, mend, choose } = allowed()[kind];
  const ended = (why: string): ReadingEnded => new ReadingEnded(`${file.name}: ${why}.`);
  if (file.size > mostMb * 1e6) throw ended(say.fileTooLarge(fixed(file.size / 1e6, 1), mostMb, what, mend));
  const stopped = ended(say.readingWasStopped);
  if (signal.aborted) throw stopped;
  const reader = takeReader();
  const watch = new AbortController();
  let unwatch = (): void => undefined;
  const given = new Promise<never>((_, reject) => {
    const broke = (): void => reject(ended(say.readingBrokeDown(mend)));
    signal.addEventListener('abort', () => reject(stopped), { signal: watch.signal });
    reader.worker.addEventListener('error', broke);
    void reader.gone?.then(broke);
    unwatch = awakeTimeout(() => reject(ended(say.readingTookLong(mostS, mend))), mostS * 1000);
  });
  try {
    const read = reader.remote[kind] as unknown as (file: File, reading?: Reading) => Promise<FileFound[Kind]>;
    const found = await Promise.race([read(file, reading), given]);
    if (idle === null) idle = reader;
    else reader.worker.terminate();
    return found;
  } catch (error) {
    reader.worker.terminate();
    if (error instanceof ReadingEnded) throw error;
    throw ended(say.couldNotBeRead(error instanceof Error ? error.message.slice(0, 200) : say.noReason, choose));
  } finally {
    unwatch();
    watch.abort();
  }
}
