import { entryAt } from '../engine/base/at.ts';
import { checkProject } from '../engine/project/read.ts';
import { sentenceOf } from '../workers/client/client.ts';
import { AppStore } from './app-store.ts';
import { AutoSaver } from './saver.ts';

/** Opens what was saved, or the demo project when there is nothing or it cannot be read. */
export async function boot(): Promise<{ store: AppStore; saver: AutoSaver }> {
  const saver = new AutoSaver();
  let notice: string | null = null;
  try {
    const stored = await saver.open();
    if (stored.project !== null) {
      const read = checkProject(stored.project, 'the saved project');
      if (read.value !== null) {
        const store = new AppStore(read.value, saver);
        if (!stored.writable) store.tell('This project is open in another tab; what you change here is not saved. Close one of the two.');
        return { store, saver };
      }
      notice = `${entryAt(read.problems, 0).message} It was put aside, not deleted, and the demo project was opened.`;
      if (stored.writable) await saver.setAside(notice);
    }
  } catch (error) {
    notice = `This browser does not let the app save (${sentenceOf(error)}); export your recipes before you close the tab.`;
  }
  // Reading SVG takes parsers that a saved project does not need.
  const { demo } = await import('./demo.ts');
  const project = demo();
  const store = new AppStore(project, saver);
  saver.save(project, null);
  if (notice !== null) store.tell(notice);
  return { store, saver };
}
