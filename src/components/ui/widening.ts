import { roundTo } from '../../engine/base/units.ts';
import type { Project } from '../../engine/project/types.ts';
import type { PrintError } from '../../engine/stack/print-error.ts';
import type { AppStore } from '../app-store.ts';

/** How far prints of a project's stack may be from what is predicted. */
type AskError = (project: Project) => Promise<Pick<PrintError, 'mean'>>;

/**
 * What counts as the same, widened by what prints may miss by.
 * @param from before it was widened, ΔE00
 */
export function widenedDeltaE(from: number, { mean }: Pick<PrintError, 'mean'>): number {
  return roundTo(from + mean, 1);
}

/**
 * Keeps what counts as the same as wide as it was asked to be, when inks, paper, surface, trapping or the
 * stack change after it was widened. No step of undo: it follows from them.
 * @param ask the latest call wins; a call that fails leaves things as they are until the next change
 */
export function followWidening(store: AppStore, ask: AskError): void {
  let of: Pick<Project, 'drawer' | 'bench'> | null = null;
  let calls = 0;
  const follow = (): void => {
    const { project } = store;
    const { drawer, bench, explore } = project;
    const from = explore.unwidenedDeltaE;
    if (from === undefined || bench.length === 0 || (of !== null && of.drawer === drawer && of.bench === bench)) return;
    of = { drawer, bench };
    const call = ++calls;
    ask(project).then(
      (error) => {
        // Another project, or no longer widened, by now.
        if (call !== calls || store.project.drawer !== drawer || store.project.explore.unwidenedDeltaE !== from) return;
        store.setSame(widenedDeltaE(from, error));
      },
      () => {
        if (call === calls) of = null;
      },
    );
  };
  store.addEventListener('change', follow);
  follow();
}
