import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/keep/copies.ts';

const UNITS = [say.bytes, 'kB', 'MB', 'GB', 'TB'];

/** Bytes as a person reads them: '3.4 MB'. */
export function bytesText(bytes: number): string {
  const step = Math.min(UNITS.length - 1, Math.floor(Math.log10(Math.max(1, bytes)) / 3));
  const shown = bytes / 1000 ** step;
  return `${shown < 10 && step > 0 ? fixed(shown, 1) : Math.round(shown)} ${UNITS[step]}`;
}

/** What the app takes of the browser's room, in a sentence; null where the browser does not say. */
export async function roomUsed(): Promise<string | null> {
  const { storage } = navigator as { storage?: Partial<StorageManager> };
  if (storage?.estimate === undefined) return null;
  try {
    const { usage, quota } = await storage.estimate();
    if (usage === undefined || quota === undefined) return null;
    const kept = (await storage.persisted?.()) === true ? say.browserKeepsItAlso : '';
    return say.pullstackTakesOfThat(bytesText(usage), bytesText(quota), kept);
  } catch {
    return null;
  }
}
