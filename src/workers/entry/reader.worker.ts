import * as Comlink from 'comlink';
import { readCgats } from '../../engine/ink/cgats/read-cgats.ts';
import { readProject } from '../../engine/project/read.ts';
import { readRecipe } from '../../engine/recipe/read.ts';
import { readShapes } from '../../engine/shapes/read/read-shapes.ts';
import { mayCarry, readCarried } from '../../engine/visitfile/carried/carried-recipe.ts';
import { readAnyLog, readVisit } from '../../engine/visitfile/visit-file.ts';
import type { PhotoRead, ReaderApi } from '../api/reader-api.ts';
import { serve } from '../api/serve.ts';
import { readPhoto, TRACED_PX } from '../jobs/read-photo.ts';

async function bytesOf(file: File): Promise<Uint8Array> {
  return new Uint8Array(await file.arrayBuffer());
}

/** Text in UTF-8, or in UTF-16 when the file begins with its mark. */
function textIn(bytes: Uint8Array): string {
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  return new TextDecoder(wide ? (bytes[0] === 0xff ? 'utf-16le' : 'utf-16be') : 'utf-8').decode(bytes);
}

async function textOf(file: File): Promise<string> {
  return textIn(await bytesOf(file));
}

/** Handed over, not copied. */
function moved(found: PhotoRead): PhotoRead {
  return found.pixels === null ? found : Comlink.transfer(found, [found.pixels.data.buffer]);
}

const readers: ReaderApi = {
  async shape(file, reading) {
    const found = readShapes(await textOf(file), file.name, reading);
    return Comlink.transfer(
      found,
      found.shapes.flatMap(({ rings }) => rings.map(({ buffer }) => buffer as ArrayBuffer)),
    );
  },
  measurements: async (file) => readCgats(await textOf(file), file.name),
  async recipe(file) {
    const bytes = await bytesOf(file);
    return mayCarry(bytes) ? readCarried(bytes, file.name) : readRecipe(textIn(bytes), file.name);
  },
  project: async (file) => readProject(await textOf(file), file.name),
  log: async (file) => readAnyLog(await bytesOf(file), file.name),
  visit: async (file) => readVisit(await bytesOf(file), file.name),
  photo: async (file) => moved(await readPhoto(file)),
  picture: async (file) => moved(await readPhoto(file, TRACED_PX)),
};

serve(readers);
