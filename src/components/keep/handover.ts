import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';
import type { AutoSaver } from '../saver.ts';
import { say } from '../words/en/keep/room.ts';
import { withUnchanged } from './follow.ts';
import { readStored } from './read-stored.ts';

const WHY = say.twoTabsHadChanged;

/**
 * When the tab that held the project closes, this one takes it over: it reads what was saved there, or,
 * when something was changed here meanwhile, lets the user choose.
 */
export function handOver(store: AppStore, saver: AutoSaver): void {
  saver.addEventListener('handover', () => {
    if (saver.state !== 'elsewhere') return;
    if (saver.unsaved) saver.hold('asking');
    else void takeSaved(store, saver);
  });
}

/** Opens what the other tab saved; what was changed here is put aside first. */
export async function takeSaved(store: AppStore, saver: AutoSaver): Promise<void> {
  const here = store.project;
  try {
    const stored = await saver.readAgain();
    if (saver.unsaved) await saver.keep('replaced', { ...here }, WHY);
    const { project, notice } = await readStored(saver, stored, true);
    if (store.project !== here) {
      // Changed while the disk was read: that is for the user to decide.
      saver.hold('asking');
      return;
    }
    if (notice !== null) store.tell(notice);
    if (saver.state === 'memory') return;
    saver.release();
    if (project === null) saver.save(here, null);
    else store.reopen(withUnchanged(project, store.project));
    store.dispatchEvent(new Event('press-saved'));
    store.tell(say.otherTabWasClosed, 'news');
  } catch (error) {
    saver.hold('asking');
    store.tell(say.whatOtherTabSaved(sentenceOf(error)));
  }
}

/** Goes on with what is here; what the other tab saved is put aside first. */
export async function keepHere(store: AppStore, saver: AutoSaver): Promise<void> {
  try {
    const { project } = await saver.readAgain();
    if (project !== null) await saver.keep('replaced', project, WHY);
    const here = store.project;
    await saver.replace(here);
    await saver.keepHeldPress();
    saver.release();
    store.dispatchEvent(new Event('took-over'));
    if (store.project !== here) saver.save(store.project, here);
  } catch (error) {
    store.tell(say.thisProjectCouldNot(sentenceOf(error)));
  }
}
