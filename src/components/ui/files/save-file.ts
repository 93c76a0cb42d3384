import { say } from '../../words/en/ui/files.ts';
import { download } from '../download.ts';

/** A place on the disk that the user chose; as some browsers give it. */
interface FileHandle {
  readonly name: string;
  createWritable(): Promise<{ write(content: Blob): Promise<void>; close(): Promise<void> }>;
}

interface Picker {
  showSaveFilePicker?(options: {
    suggestedName: string;
    types: { description: string; accept: Record<string, string[]> }[];
  }): Promise<FileHandle>;
}

/** What is saved. */
interface FileToSave {
  name: string;
  bytes: Uint8Array<ArrayBuffer>;
  /** Which project it is of; each keeps the place that was chosen for it. */
  of: number;
  /** Whether it goes where it went before, or the user is asked for a place. */
  to: 'the same' | 'another';
}

const TYPE = 'application/zip';
const places = new Map<number, FileHandle>();

/** The name of the file that a project was saved in since it was opened; null when there is none that can be written again. */
export function savedIn(of: number): string | null {
  return places.get(of)?.name ?? null;
}

/**
 * Writes a file where the user chooses, or where it was written before; where the browser cannot, it is a download.
 * @returns whether it was written: false when the user thinks better of it
 * @throws when the place cannot be written
 */
export async function saveFile({ name, bytes, of, to }: FileToSave): Promise<boolean> {
  const { showSaveFilePicker } = window as Picker;
  if (showSaveFilePicker === undefined) {
    download(name, bytes, TYPE);
    return true;
  }
  let place = to === 'the same' ? places.get(of) : undefined;
  try {
    place ??= await showSaveFilePicker.call(window, {
      suggestedName: name,
      types: [{ description: say.pullstackProject, accept: { [TYPE]: ['.zip'] } }],
    });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return false;
    download(name, bytes, TYPE);
    return true;
  }
  const writing = await place.createWritable();
  await writing.write(new Blob([bytes], { type: TYPE }));
  await writing.close();
  places.set(of, place);
  return true;
}
