import type { Project } from '../../engine/project/types.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AppStore } from '../app-store.ts';

/**
 * Opens a project in place of the open one, which is put aside first; the notice brings it back.
 * @param news what is open now: 'spring.json is open'
 * @returns whether it was opened: when the open one cannot be put aside, the user is asked
 */
export async function replaceProject(store: AppStore, next: Project, news: string): Promise<boolean> {
  const before = store.project;
  try {
    await store.saver.keepReplaced?.(before, `${news} in its place.`);
  } catch (error) {
    if (!confirm(`The open project could not be put aside (${sentenceOf(error)}). Replace it all the same?`)) return false;
  }
  store.open(next);
  store.tell(`${news}. ${before.title} was put aside.`, 'news', {
    label: 'Bring back',
    act: () => void replaceProject(store, before, `${before.title} is open again`),
  });
  return true;
}
