import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/keep/copies.ts';
import { saveProjectFile } from '../visit-files.ts';
import { readCopies, writeCopies } from './copies-noted.ts';
import { copyIsDue } from './copy-due.ts';

/** Counts what is changed, and now and then says that a copy outside the browser would be good. */
export function remindOfCopies(store: AppStore): void {
  let before = store.project;
  let { opened } = store;
  store.addEventListener('change', () => {
    const { project } = store;
    if (project === before) return;
    const sameProject = opened === store.opened;
    before = project;
    ({ opened } = store);
    if (!sameProject || store.undoLabel === null) return;
    const now = Date.now();
    const state = readCopies();
    const next = { ...state, changes: state.changes + 1, changedMs: state.changedMs ?? now };
    const due = copyIsDue(next, now);
    writeCopies(due ? { ...next, toldMs: now } : next);
    if (!due) return;
    store.tell(say.muchWasDoneSince, 'news', {
      label: say.saveAsFile,
      act: () => void saveProjectFile(store, 'the same'),
    });
  });
}
