import type { Project } from '../engine/project/types.ts';
import { engineFor, sentenceOf } from '../workers/client/client.ts';
import { keepOffline } from '../workers/client/offline.ts';
import { AppStore } from './app-store.ts';
import { remindOfCopies } from './keep/copies/copy-reminder.ts';
import { followOther } from './keep/follow.ts';
import { handOver } from './keep/handover.ts';
import { askToPersist } from './keep/persist.ts';
import { readStored } from './keep/read-stored.ts';
import { AutoSaver } from './saver.ts';
import { followWidening } from './ui/widening.ts';

/** Opens what was saved, or the demo project when nothing was saved; where nothing can be saved, it works in memory and says so. */
export async function boot(): Promise<{ store: AppStore; saver: AutoSaver }> {
  const saver = new AutoSaver();
  let read: { project: Project | null; notice: string | null } = { project: null, notice: null };
  try {
    const stored = await saver.open();
    read = await readStored(saver, stored, saver.writable);
  } catch (error) {
    saver.hold('memory', `what it keeps could not be opened (${sentenceOf(error)})`);
  }
  let { project } = read;
  if (project === null) {
    // Reading SVG takes parsers that a saved project does not need.
    const { demo } = await import('./demo.ts');
    project = demo();
    saver.save(project, null);
  }
  const store = new AppStore(project, saver);
  if (read.notice !== null) store.tell(read.notice);
  if (saver.lost.length > 0)
    store.tell(
      `This browser had lost what it kept of ${saver.lost.join(', ')}; the place for it was made again. Earlier copies, if there are any, are in the project menu.`,
    );
  handOver(store, saver);
  followOther(store, saver);
  askToPersist(store);
  remindOfCopies(store);
  followWidening(store, ({ drawer: studio, bench: pulls }) => engineFor('picture').printError({ studio, pulls }));
  keepOffline((load) =>
    store.tell('A newer Pullstack is here. It opens when you say so, or when all its tabs were closed.', 'news', {
      label: 'Open it',
      act: load,
    }),
  );
  return { store, saver };
}
