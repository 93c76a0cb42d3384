import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { at64, from64 } from './base64url.ts';

/** A value as the fragment of an address: what stands behind the sign # never leaves the browser. */
export function packFragment(begins: string, value: unknown): string {
  return `${begins}${at64(deflateSync(strToU8(JSON.stringify(value)), { level: 9 }))}`;
}

/**
 * The value that was packed.
 * @param mostBytes of the fragment and of what it unpacks to: a few packed bytes may stand for millions
 * @returns why there is none, or the value, of any kind
 */
export function unpackFragment(begins: string, fragment: string, mostBytes: number): { raw: unknown } | { fault: 'none' | 'cut' } {
  if (!fragment.startsWith(begins) || fragment.length > mostBytes) return { fault: 'none' };
  const packed = from64(fragment.slice(begins.length));
  if (packed === null) return { fault: 'cut' };
  try {
    // Into so many bytes and no more.
    return { raw: JSON.parse(strFromU8(inflateSync(packed, { out: new Uint8Array(mostBytes) }))) as unknown };
  } catch {
    return { fault: 'cut' };
  }
}
