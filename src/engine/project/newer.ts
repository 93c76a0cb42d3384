import { PROJECT_VERSION } from './types.ts';

/** Whether a later version of the program saved it: then not a byte of it may be touched. */
export function isNewer(raw: unknown): boolean {
  const version = typeof raw === 'object' && raw !== null ? (raw as Record<string, unknown>)['version'] : undefined;
  return typeof version === 'number' && version > PROJECT_VERSION;
}
