import { emptyProject } from '../../engine/project/empty.ts';
import { isNewer } from '../../engine/project/newer.ts';
import type { Project } from '../../engine/project/types.ts';
import type { StoredProject } from '../../workers/api/storage-api.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import type { AutoSaver } from '../saver.ts';
import { say } from '../words/en/keep/room.ts';

/** A project read from sections that were kept, and what could not be read of them, in sentences. */
export interface KeptRead {
  project: Project;
  sentences: string[];
}

/** Sentences that a notice holds; all stand with what was put aside. */
const MOST_TOLD = 4;

/**
 * Reads what this browser kept of a project, part by part.
 * @param name of it, for the sentences
 */
export async function readKeptProject(sections: Record<string, unknown>, name: string): Promise<KeptRead> {
  // The schemas are large, and a newcomer has nothing to read.
  const { checkProject } = await import('../../engine/project/read.ts');
  const whole = checkProject(sections, name);
  if (whole.value !== null) return { project: whole.value, sentences: [] };
  const [{ readSections }, { demo }] = await Promise.all([import('../../engine/project/read-sections.ts'), import('../demo.ts')]);
  const { project, aside } = readSections(sections, emptyProject(demo()), name);
  return { project, sentences: aside.map(({ message }) => message) };
}

/** A notice that tells of parts that were put aside. */
function asideWords(sentences: readonly string[]): string {
  const told = sentences.slice(0, MOST_TOLD).join(' ');
  const more = sentences.length - MOST_TOLD;
  return say.ofSavedProjectCould(
    sentences.length === 1 ? say.onePart : say.parts(sentences.length),
    sentences.length,
    told,
    more > 0 ? say.andMore(more) : '',
  );
}

/**
 * Reads the saved project; what cannot be read is put aside before anything is written over it.
 * @param write whether this tab may write over it then
 * @returns null when there is none to work on, and a sentence to tell or null
 */
export async function readStored(
  saver: AutoSaver,
  stored: StoredProject,
  write: boolean,
): Promise<{ project: Project | null; notice: string | null }> {
  if (stored.project === null && stored.unread.length === 0) return { project: null, notice: null };
  const sections = stored.project ?? {};
  if (isNewer(sections)) {
    saver.hold('memory', say.projectSavedHereIs);
    return { project: null, notice: null };
  }
  const { project, sentences } = await readKeptProject(sections, say.savedProject);
  const lost = stored.unread.map((section) => say.savedProjectBrowserCannot(section));
  const all = [...lost, ...sentences];
  if (all.length === 0) return { project, notice: null };
  if (write) {
    try {
      await saver.keep('unreadable', sections, all.join(' '));
      await saver.replace(project);
    } catch (error) {
      saver.hold('memory', say.partsOfSavedProject(sentenceOf(error)));
    }
  }
  return { project, notice: asideWords(all) };
}
