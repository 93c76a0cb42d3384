import type { Problem } from '../../engine/base/error.ts';
import type { readCgats } from '../../engine/ink/cgats/read-cgats.ts';
import type { Pixels } from '../../engine/ink/characterise/photo-patch.ts';
import type { VisitLog } from '../../engine/log/types.ts';
import type { Project } from '../../engine/project/types.ts';
import type { ReadResult } from '../../engine/recipe/read.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { Reading, readShapes } from '../../engine/shapes/read/read-shapes.ts';
import type { VisitFile } from '../../engine/visitfile/visit-file.ts';

/** What came of a photo: its pixels, or why not, in a sentence. */
export interface PhotoRead {
  pixels: Pixels | null;
  problems: Problem[];
}

/** What each kind of file gives; faults come back as sentences that name the file. */
export interface FileFound {
  shape: ReturnType<typeof readShapes>;
  measurements: ReturnType<typeof readCgats>;
  recipe: ReadResult<Recipe>;
  project: ReadResult<Project>;
  log: ReadResult<VisitLog>;
  visit: ReadResult<VisitFile>;
  photo: PhotoRead;
  /** The same at a size fine enough to be traced. */
  picture: PhotoRead;
}

/** A kind of file that comes in. */
export type FileKind = keyof FileFound;

/** Reads files, one at a time; `reading` is how a drawing is taken. */
export type ReaderApi = { [Kind in FileKind]: (file: File, reading?: Reading) => FileFound[Kind] | Promise<FileFound[Kind]> };
