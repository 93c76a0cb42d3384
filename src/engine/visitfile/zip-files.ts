import { zipSync } from 'fflate';

/** ZIP knows no earlier day; the same files give the same bytes. */
export const NO_DAY = '1980-01-01T12:00:00';

/** A file to be packed. */
export interface FileToPack {
  name: string;
  bytes: Uint8Array;
  /** What is packed already is stored as it is. */
  packed: boolean;
}

/**
 * Files in one zip, in their order; a name that comes again gets a number.
 * Source: APPNOTE.TXT of the zip format, by fflate.
 */
export function zipFiles(files: readonly FileToPack[]): Uint8Array {
  const entries: Record<string, [Uint8Array, { level: 0 | 6; mtime: string }]> = {};
  for (const { name, bytes, packed } of files) {
    let free = name;
    for (let n = 2; free in entries; n++) free = name.replace(/(\.[^.]*)?$/, (ending) => `-${n}${ending}`);
    entries[free] = [bytes, { level: packed ? 0 : 6, mtime: NO_DAY }];
  }
  return zipSync(entries);
}
