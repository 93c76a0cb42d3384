import { dayLocale } from '../../../engine/words/language.ts';
import { say } from '../../words/en/keep/copies.ts';
import { type CopyState, NO_COPY } from './copy-due.ts';

const KEY = 'pullstack-copies';

const day = new Intl.DateTimeFormat(dayLocale(), { dateStyle: 'medium' });

/** What is known of copies outside this browser. */
export function readCopies(): CopyState {
  try {
    return { ...NO_COPY, ...(JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<CopyState>) };
  } catch {
    return NO_COPY;
  }
}

/** Keeps what is known of them. */
export function writeCopies(state: CopyState): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(state));
  } catch {
    // Where nothing can be kept, the frame says so all the time.
  }
}

/** Notes that a copy was saved outside the browser. */
export function copySaved(): void {
  writeCopies({ ...NO_COPY, savedMs: Date.now() });
}

/** When the last copy was saved, in a sentence. */
export function copyWords(): string {
  const { savedMs } = readCopies();
  return savedMs === null ? say.noProjectWasSaved : say.projectWasLastSaved(day.format(savedMs));
}
