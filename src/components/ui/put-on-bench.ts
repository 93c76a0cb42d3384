import { defined, entryAt } from '../../engine/base/at.ts';
import { printInks } from '../../engine/ink/mix/mix.ts';
import { firstPulls } from '../../engine/project/first-pulls.ts';
import type { Screen } from '../../engine/shapes/types.ts';
import type { AppStore } from '../app-store.ts';
import { say } from '../words/en/ui/room.ts';
import { newId } from './new-id.ts';

/**
 * Puts a first pull of each screen on top of the stack on the Bench, the inks in turn.
 * @returns whether it could be done; if not, the store has told why
 */
export function putOnBench(store: AppStore, screens: readonly Screen[]): boolean {
  const { drawer: studio, bench } = store.project;
  const inks = printInks(studio.inks);
  if (inks.length === 0) {
    store.tell(say.thereIsNoInk);
    return false;
  }
  const pulls = firstPulls(screens, inks, bench.length, newId);
  const [first] = pulls;
  if (first === undefined) return false;
  const done =
    pulls.length === 1
      ? store.dispatch({ kind: 'add-pull', pull: first, at: bench.length })
      : store.dispatch({ kind: 'open-stack', pulls: [...bench, ...pulls] });
  if (!done) return false;
  const inkName = defined(inks.find((ink) => ink.id === first.ink)).name;
  store.tell(pulls.length === 1 ? say.screenIsOnBench(entryAt(screens, 0).number, inkName) : say.screensAreOnBench(pulls.length), 'news');
  return true;
}
