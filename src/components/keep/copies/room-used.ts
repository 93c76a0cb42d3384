const UNITS = ['bytes', 'kB', 'MB', 'GB', 'TB'];

/** Bytes as a person reads them: '3.4 MB'. */
export function bytesText(bytes: number): string {
  const step = Math.min(UNITS.length - 1, Math.floor(Math.log10(Math.max(1, bytes)) / 3));
  const shown = bytes / 1000 ** step;
  return `${shown < 10 && step > 0 ? shown.toFixed(1) : Math.round(shown)} ${UNITS[step]}`;
}

/** What the app takes of the browser's room, in a sentence; null where the browser does not say. */
export async function roomUsed(): Promise<string | null> {
  const { storage } = navigator as { storage?: Partial<StorageManager> };
  if (storage?.estimate === undefined) return null;
  try {
    const { usage, quota } = await storage.estimate();
    if (usage === undefined || quota === undefined) return null;
    const kept = (await storage.persisted?.()) === true ? ' The browser keeps it also when space runs short.' : '';
    return `Pullstack takes ${bytesText(usage)} of the ${bytesText(quota)} that this browser gives.${kept}`;
  } catch {
    return null;
  }
}
