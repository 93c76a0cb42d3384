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
import { say } from './words/en/app/frame.ts';

/** Opens what was saved, or the demo project when nothing was saved; where nothing can be saved, it works in memory and says so. */
export async function boot(): Promise<{ store: AppStore; saver: AutoSaver }> {
  const saver = new AutoSaver();
  let read: { project: Project | null; notice: string | null } = { project: null, notice: null };
  try {
    const stored = await saver.open();
    read = await readStored(saver, stored, saver.writable);
  } catch (error) {
    saver.hold('memory', say.whatItKeepsCould(sentenceOf(error)));
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
  if (saver.lost.length > 0) store.tell(say.thisBrowserHadLost(saver.lost.join(', ')));
  handOver(store, saver);
  followOther(store, saver);
  askToPersist(store);
  remindOfCopies(store);
  followWidening(store, ({ drawer: studio, bench: pulls }) => engineFor('picture').printError({ studio, pulls }));
  keepOffline((load) =>
    store.tell(say.newerPullstackIsHere, 'news', {
      label: say.openIt,
      act: load,
    }),
  );
  return { store, saver };
}
