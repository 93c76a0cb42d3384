import type { Project } from '../../engine/project/types.ts';
import type { ReadResult } from '../../engine/recipe/read.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { FileReading } from '../ui/files/file-reading.ts';
import { say } from '../words/en/keep/room.ts';
import { openInstead, type Shelf } from './projects.ts';
import { isVisitFile, openVisitFile } from './visit-files.ts';

/** Opens a project, with its pull order and log where they are in the file, in place of the open one. @returns whether it was opened */
export async function openProjectFile(shelf: Shelf, file: File, reading: FileReading): Promise<boolean> {
  const { store } = shelf;
  if (await isVisitFile(file)) return openVisitFile(shelf, file, reading);
  let read: ReadResult<Project>;
  try {
    read = await reading.read('project', file);
  } catch (error) {
    store.refuse(sentenceOf(error));
    return false;
  }
  if (read.value === null) {
    store.refuseFile(read.problems);
    return false;
  }
  return openInstead(shelf, read.value, say.isOpen(file.name));
}
