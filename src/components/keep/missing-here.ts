import { say } from '../words/en/keep/room.ts';
import { ProjectLock } from './project-lock.ts';

/** What this browser, or the way this page is served, does not give; a sentence each. */
export function missingHere(): string[] {
  const missing: string[] = [];
  if (!ProjectLock.possible) missing.push(say.twoTabsAreNot);
  if (!('wakeLock' in navigator)) missing.push(say.screenCannotBeKept);
  if ((navigator as { storage?: Partial<StorageManager> }).storage?.persist === undefined) missing.push(say.browserCannotBeAsked);
  if (missing.length > 0 && !isSecureContext) missing.push(say.pageCameOverPlain);
  return missing;
}
