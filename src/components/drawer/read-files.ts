import { entryAt } from '../../engine/base/at.ts';
import type { Problem } from '../../engine/base/error.ts';
import { drawerShape } from '../../engine/shapes/place/drawer-shape.ts';
import type { PageSize } from '../../engine/shapes/place/lay-out.ts';
import type { ShapeOf } from '../../engine/shapes/read/parts.ts';
import type { WhiteAs } from '../../engine/shapes/read/white.ts';
import type { Shape } from '../../engine/shapes/types.ts';
import { numberLocale } from '../../engine/words/language.ts';
import type { FileFound } from '../../workers/api/reader-api.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import { readFile } from '../../workers/client/file-reader.ts';
import { newId } from '../ui/new-id.ts';
import { say } from '../words/en/drawer/room.ts';

/** A file of several groups or colours. */
export interface Divided {
  file: File;
  /** The shapes of each way that there is to divide it. */
  ways: Partial<Record<ShapeOf, Shape[]>>;
  /** The way it was taken. */
  each: ShapeOf;
  /** The page it was drawn on; null where the file gives none. */
  page: PageSize | null;
}

/** What came of some files. */
export interface FilesRead {
  shapes: Shape[];
  /** The page of each shape; null where the file gives none. */
  pages: (PageSize | null)[];
  /** Whether the file of each shape gives its size in a unit of length. */
  sized: boolean[];
  /** Files with white areas beside others, each with the place of its shape. */
  whites: { at: number; file: File }[];
  /** Files that could become several shapes. */
  divided: Divided[];
  /** One sentence each; `kept` tells whether the file became a shape all the same. */
  remarks: { text: string; kept: boolean }[];
}

/**
 * Reads shape files one after the other.
 * @param signal stops the file that is being read, and leaves out those after it
 * @param onNext told the number of files done before each file
 */
export async function readShapeFiles(files: readonly File[], signal: AbortSignal, onNext: (done: number) => void): Promise<FilesRead> {
  const read: FilesRead = { shapes: [], pages: [], sized: [], whites: [], divided: [], remarks: [] };
  for (const [done, file] of inNameOrder(files).entries()) {
    if (signal.aborted) {
      read.remarks.push({ text: say.fileWasNotRead(file.name), kept: false });
      continue;
    }
    onNext(done);
    try {
      const {
        shapes: [shape],
        problems,
        parts,
      } = await readFile('shape', file, signal);
      if (shape !== undefined) {
        if (problems.some(({ code }) => code === 'shape.white')) read.whites.push({ at: read.shapes.length, file });
        const drawn = drawerShape(shape, newId());
        read.shapes.push(drawn);
        read.pages.push(shape.page);
        read.sized.push(shape.sized);
        const each = (['group', 'colour'] as const).filter((way) => parts[way === 'group' ? 'groups' : 'colours'].length > 1);
        if (each.length > 0) read.divided.push({ file, each: 'drawing', page: shape.page, ways: await waysOf(file, drawn, each, signal) });
      }
      for (const text of countedSentences(problems)) read.remarks.push({ text, kept: shape !== undefined });
    } catch (error) {
      read.remarks.push({ text: sentenceOf(error), kept: false });
    }
  }
  return read;
}

/** The shapes of each way to take a file. */
async function waysOf(file: File, drawing: Shape, each: readonly ('group' | 'colour')[], signal: AbortSignal): Promise<Divided['ways']> {
  const ways: Divided['ways'] = { drawing: [drawing] };
  for (const way of each) {
    const { shapes } = await readFile('shape', file, signal, { each: way });
    if (shapes.length > 1) ways[way] = shapes.map((shape) => drawerShape(shape, newId()));
  }
  return ways;
}

/** What came of the files with one of them divided otherwise: other shapes at its place. */
export function dividedAs(read: FilesRead, at: number, each: ShapeOf): FilesRead {
  const one = entryAt(read.divided, at);
  const [before, after] = [shapesOf(one), one.ways[each] ?? []];
  const from = read.shapes.findIndex(({ id }) => id === before[0]?.id);
  const put = <T>(list: readonly T[], values: T[]): T[] => list.toSpliced(from, before.length, ...values);
  return {
    ...read,
    shapes: put(read.shapes, after),
    pages: put(
      read.pages,
      after.map(() => one.page),
    ),
    sized: put(
      read.sized,
      after.map(() => entryAt(read.sized, from)),
    ),
    // White is asked about as long as the file is one shape.
    whites: read.whites.flatMap((white) =>
      white.at === from ? [] : [{ ...white, at: white.at < from ? white.at : white.at + after.length - before.length }],
    ),
    divided: read.divided.with(at, { ...one, each }),
  };
}

/** The shapes that a file was taken as. */
export function shapesOf({ ways, each }: Divided): Shape[] {
  return ways[each] ?? [];
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
  let found: FileFound['shape'];
  try {
    found = await readFile('shape', file, new AbortController().signal, { white });
  } catch (error) {
    return sentenceOf(error);
  }
  const {
    shapes: [drawn],
    problems,
  } = found;
  if (drawn === undefined) return problems[0]?.message ?? say.nothingIsLeftOf(file.name);
  const shape = drawerShape(drawn, id);
  const remarks = read.remarks.filter(({ text }) => !text.startsWith(`${file.name}: its white areas`));
  const said = problems.filter(({ code }) => code === 'shape.white').map(({ message }) => ({ text: message, kept: true }));
  const divided = read.divided.map((one) => (one.ways.drawing?.[0]?.id === id ? { ...one, ways: { ...one.ways, drawing: [shape] } } : one));
  return { shape, files: { ...read, divided, shapes: read.shapes.with(at, shape), remarks: [...said, ...remarks] } };
}

/**
 * Files that were dropped, those in folders too; of folders only drawings and pictures.
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
    if (!chosen && !/\.(?:svg|png|jpe?g|webp)$/iu.test(entry.name)) return;
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
  const order = new Intl.Collator(numberLocale(), { numeric: true, sensitivity: 'base' });
  return files.toSorted((a, b) => order.compare(a.name, b.name));
}

/** Each sentence once, with how often it holds. */
function countedSentences(problems: readonly Problem[]): string[] {
  const times = new Map<string, number>();
  for (const { message } of problems) times.set(message, (times.get(message) ?? 0) + 1);
  return [...times].map(([message, count]) => (count === 1 ? message : say.times(message, count)));
}
