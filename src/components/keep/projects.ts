import type { Project } from '../../engine/project/types.ts';
import type { KeptHead } from '../../workers/api/storage-api.ts';
import type { AppStore } from '../app-store.ts';
import type { AutoSaver } from '../saver.ts';
import { say } from '../words/en/keep/room.ts';
import { readKeptProject } from './read-stored.ts';
import { bringing, ORDER_SECTION, replaceProject } from './replace-project.ts';

/** What a list of projects works on. */
export interface Shelf {
  store: AppStore;
  saver: AutoSaver;
}

/** A project as it is kept beside the open one. */
type Sections = Record<string, unknown>;

async function sectionsOf(saver: AutoSaver, id: string): Promise<Sections> {
  const sections = await saver.readKept(id);
  if (sections === null) throw new Error(say.itIsNoLonger);
  return sections;
}

/** Opens a project in place of the open one, which goes into the list; its own way back is the notice. */
export function openInstead({ store, saver }: Shelf, next: Project, news: string, bring?: () => Promise<void>): Promise<boolean> {
  return replaceProject(store, next, news, { bring, back: (id) => openKept({ store, saver }, id, 'again') });
}

/**
 * Opens what is kept beside the open project. A project of the list leaves it once it is saved in its new place;
 * until then it stands in both, so that no crash loses it.
 * @param name for the news; 'again' for its title alone, as after a step back
 * @returns whether it was opened
 * @throws Error with a sentence's end when it is gone or cannot be read
 */
export async function openKept(shelf: Shelf, id: string, name: string, leaves = true): Promise<boolean> {
  const { store, saver } = shelf;
  const { [ORDER_SECTION]: order, ...sections } = await sectionsOf(saver, id);
  const title = String(sections['title'] ?? say.untitled);
  const { project, sentences } = await readKeptProject(sections, name === 'again' ? title : name);
  const news = name === 'again' ? say.isOpenAgain(title) : say.isOpen(name);
  if (!(await openInstead(shelf, project, news, bringing(store, order)))) return false;
  for (const sentence of sentences.slice(0, 3)) store.tell(sentence);
  if (leaves && sentences.length === 0 && (await saver.settled())) await saver.dropKept(id);
  return true;
}

/** A copy of a project of the list, or of the open one, under a title that says so. */
export async function duplicate({ store, saver }: Shelf, head: KeptHead | null): Promise<void> {
  if (head === null) {
    await saver.shelve({ ...store.project, title: say.copyTitle(store.project.title) });
    return;
  }
  const sections = await sectionsOf(saver, head.id);
  await saver.keep('project', { ...sections, title: say.copyTitle(head.title) }, head.reason);
}

/** Gives a project of the list another title. */
export async function retitle({ saver }: Shelf, head: KeptHead, title: string): Promise<void> {
  await saver.keepAs(head, { ...(await sectionsOf(saver, head.id)), title });
}

/** Takes a project from the list into the bin, or back. */
export async function move({ saver }: Shelf, head: KeptHead, kind: 'project' | 'bin'): Promise<void> {
  await saver.keepAs({ ...head, kind }, await sectionsOf(saver, head.id));
}
