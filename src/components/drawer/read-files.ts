import { entryAt } from '../../engine/base/at.ts';
import type { Problem } from '../../engine/base/error.ts';
import type { PageSize } from '../../engine/shapes/place/lay-out.ts';
import type { WhiteAs } from '../../engine/shapes/read/white.ts';
import type { Shape } from '../../engine/shapes/types.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import { ReadingEnded, readShapeFile } from '../../workers/client/file-reader.ts';
import { newId } from '../ui/new-id.ts';

/** Larger files are refused before they are read. */
const MAX_FILE_BYTES = 20_000_000;

/** What came of some files. */
export interface FilesRead {
  shapes: Shape[];
  /** The page of each shape; null where the file gives none. */
  pages: (PageSize | null)[];
  /** Whether the file of each shape gives its size in a unit of length. */
  sized: boolean[];
  /** Files with white areas beside others, each with the place of its shape. */
  whites: { at: number; file: File }[];
  /** One sentence each; `kept` tells whether the file became a shape all the same. */
  remarks: { text: string; kept: boolean }[];
}

/**
 * Reads shape files one after the other.
 * @param signal stops the file that is being read, and leaves out those after it
 * @param onNext told the number of files done before each file
 */
export async function readShapeFiles(files: readonly File[], signal: AbortSignal, onNext: (done: number) => void): Promise<FilesRead> {
  const read: FilesRead = { shapes: [], pages: [], sized: [], whites: [], remarks: [] };
  for (const [done, file] of inNameOrder(files).entries()) {
    if (signal.aborted) {
      read.remarks.push({ text: `${file.name}: the file was not read, as you stopped; choose it again to read it.`, kept: false });
      continue;
    }
    onNext(done);
    if (file.size > MAX_FILE_BYTES) {
      const megabytes = (file.size / 1e6).toFixed(1);
      read.remarks.push({
        text: `${file.name}: the file has ${megabytes} MB, over the 20 MB that a shape file may have; simplify the drawing or split it.`,
        kept: false,
      });
      continue;
    }
    try {
      const text = await file.text();
      const { shape, page, sized, problems } = await readShapeFile({ text, name: file.name, id: newId() }, signal);
      if (shape !== null) {
        if (problems.some(({ code }) => code === 'shape.white')) read.whites.push({ at: read.shapes.length, file });
        read.shapes.push(shape);
        read.pages.push(page);
        read.sized.push(sized);
      }
      for (const text of countedSentences(problems)) read.remarks.push({ text, kept: shape !== null });
    } catch (error) {
      const why =
        error instanceof ReadingEnded
          ? error.message
          : `the file could not be read (${sentenceOf(error)}); choose an SVG file, not a folder`;
      read.remarks.push({ text: `${file.name}: ${why}.`, kept: false });
    }
  }
  return read;
}

/**
 * Reads one of some files again with its white taken otherwise.
 * @returns what came of all of them then, with its shape under the same id; a sentence where nothing is left of it
 */
export async function readOtherwise(
  read: FilesRead,
  { at, file, white }: { at: number; file: File; white: WhiteAs },
): Promise<{ files: FilesRead; shape: Shape } | string> {
  const { id } = entryAt(read.shapes, at);
  const { shape, problems } = await readShapeFile({ text: await file.text(), name: file.name, id, white }, new AbortController().signal);
  if (shape === null) return problems[0]?.message ?? `${file.name}: nothing is left of it.`;
  const remarks = read.remarks.filter(({ text }) => !text.startsWith(`${file.name}: its white areas`));
  const said = problems.filter(({ code }) => code === 'shape.white').map(({ message }) => ({ text: message, kept: true }));
  return { shape, files: { ...read, shapes: read.shapes.with(at, shape), remarks: [...said, ...remarks] } };
}

/**
 * Files that were dropped, those in folders too; of folders only the SVG files.
 * Must be called while the drop is being handled: the browser forgets it afterwards.
 */
export async function droppedFiles(transfer: DataTransfer): Promise<File[]> {
  const plain = [...transfer.files];
  const entries = [...transfer.items].filter(({ kind }) => kind === 'file').map((item) => item.webkitGetAsEntry());
  if (!entries.some((entry) => entry?.isDirectory === true)) return plain;
  const found: File[] = [];
  for (const entry of entries) if (entry !== null) await gather(entry, true, found);
  return found;
}

async function gather(entry: FileSystemEntry, chosen: boolean, found: File[]): Promise<void> {
  if (entry.isFile) {
    if (!chosen && !/\.svg$/iu.test(entry.name)) return;
    found.push(await new Promise<File>((resolve, reject) => (entry as FileSystemFileEntry).file(resolve, reject)));
    return;
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  // A folder comes in parts; an empty one ends it.
  for (;;) {
    const part = await new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject));
    if (part.length === 0) return;
    for (const inner of part) await gather(inner, false, found);
  }
}

/** As an artist numbers them: leaf-2 before leaf-10. */
function inNameOrder(files: readonly File[]): File[] {
  const order = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
  return files.toSorted((a, b) => order.compare(a.name, b.name));
}

/** Each sentence once, with how often it holds. */
function countedSentences(problems: readonly Problem[]): string[] {
  const times = new Map<string, number>();
  for (const { message } of problems) times.set(message, (times.get(message) ?? 0) + 1);
  return [...times].map(([message, count]) => (count === 1 ? message : `${message} (${count} times)`));
}
