import { ProjectLock } from './project-lock.ts';

/** What this browser, or the way this page is served, does not give; a sentence each. */
export function missingHere(): string[] {
  const missing: string[] = [];
  if (!ProjectLock.possible) missing.push('Two tabs are not guarded against each other: keep this project open in one tab only.');
  if (!('wakeLock' in navigator)) missing.push('The screen cannot be kept awake at the press: set the device so that it stays on.');
  if ((navigator as { storage?: Partial<StorageManager> }).storage?.persist === undefined)
    missing.push('The browser cannot be asked to keep the project when space runs short: save it as a file now and then.');
  if (missing.length > 0 && !isSecureContext)
    missing.push('The page came over plain http; served over https, or on this device itself, it has all of these. The README says how.');
  return missing;
}
