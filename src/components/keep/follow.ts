import type { Project } from '../../engine/project/types.ts';
import type { AppStore } from '../app-store.ts';
import type { AutoSaver } from '../saver.ts';
import { say } from '../words/en/keep/room.ts';
import type { Shared } from './other-tabs.ts';
import { readKeptProject } from './read-stored.ts';

/**
 * While another tab saves the project, this one shows what is saved there as it is saved, until something
 * is changed here.
 */
export function followOther(store: AppStore, saver: AutoSaver): void {
  let reading = false;
  let again = false;
  const follows = (): boolean => saver.state === 'elsewhere' && !saver.unsaved;
  const follow = async (): Promise<void> => {
    if (reading) {
      again = true;
      return;
    }
    reading = true;
    do {
      again = false;
      const { project: sections } = await saver.readAgain();
      if (sections === null) continue;
      const { project, sentences } = await readKeptProject(sections, say.savedProject);
      // What cannot be read is for the tab that saves to say.
      if (follows() && sentences.length === 0) store.reopen(withUnchanged(project, store.project));
    } while (again);
  };
  saver.addEventListener('elsewhere', (event) => {
    if (!follows()) return;
    if ((event as CustomEvent<Shared>).detail === 'press') store.dispatchEvent(new Event('press-saved'));
    else
      follow()
        .catch(() => undefined)
        .finally(() => {
          reading = false;
        });
  });
}

/** A project with the sections that did not change as the objects that they were, so that nothing is drawn anew for them. */
export function withUnchanged(next: Project, before: Project): Project {
  return Object.fromEntries(
    Object.entries(next).map(([section, value]) => {
      const known = before[section as keyof Project];
      return [section, JSON.stringify(value) === JSON.stringify(known) ? known : value];
    }),
  ) as unknown as Project;
}
