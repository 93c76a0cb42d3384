import { defined } from '../../../engine/base/at.ts';
import type { PullChange } from '../../../engine/project/commands/bench.ts';
import { recipeOf } from '../../../engine/recipe/write.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { counted, screenWords } from '../../ui/words.ts';
import type { OpenedStack } from '../picture/opened-stack.ts';
import type { NewPull } from './add-pull.ts';
import type { RecipeWords } from './keep-recipe.ts';

/**
 * What can be done to the stack on the Bench. Each gives the sentence that a screen reader says,
 * or null when nothing was done; the store then tells why.
 */
export class BenchEdits {
  private readonly store: AppStore;
  private readonly opened: OpenedStack;

  constructor(store: AppStore, opened: OpenedStack) {
    this.store = store;
    this.opened = opened;
  }

  private get pulls(): readonly Pull[] {
    return this.store.project.bench;
  }

  /** Puts a pull at a position, first down 0, and selects it. */
  move(id: string, to: number): string | null {
    const { store } = this;
    if (!store.dispatch({ kind: 'move-pull', pull: id, to })) return null;
    const pull = defined(this.pulls.find((entry) => entry.id === id));
    store.select(id);
    const words = screenWords(pull.screen, store.project.drawer);
    return `${defined(words[0]).toUpperCase()}${words.slice(1)} is now pull ${to + 1} of ${this.pulls.length}.`;
  }

  /** Changes the selected pull. */
  change(change: PullChange): void {
    const { selectedPull } = this.store;
    if (selectedPull !== null) this.store.dispatch({ kind: 'change-pull', pull: selectedPull, change });
  }

  /** Shifts the selected pull, mm. @returns false when none is selected */
  nudge(dxMm: number, dyMm: number): boolean {
    const pull = this.pulls.find((entry) => entry.id === this.store.selectedPull);
    if (pull === undefined) return false;
    // One field at a time, so that a run of nudges is undone as one.
    this.change(dxMm === 0 ? { dyMm: pull.dyMm + dyMm } : { dxMm: pull.dxMm + dxMm });
    return true;
  }

  /** Removes a pull and selects the one that takes its place. */
  remove(id: string): string | null {
    const { store } = this;
    const at = this.pulls.findIndex((pull) => pull.id === id);
    if (!store.dispatch({ kind: 'remove-pull', pull: id })) return null;
    store.select(this.pulls[Math.min(at, this.pulls.length - 1)]?.id ?? null);
    return `Pull ${at + 1} is removed; ${counted(this.pulls.length, 'pull')} left.`;
  }

  /** Puts a new pull down last and selects it. */
  add({ screen, ink }: NewPull): string | null {
    // Ids of the stack as it was opened stay taken, so that comparing and holds never mix pulls up.
    const taken = new Set([...this.pulls, ...this.opened.pulls].map((pull) => pull.id));
    let n = this.pulls.length + 1;
    while (taken.has(`pull-${n}`)) n++;
    const pull: Pull = { id: `pull-${n}`, screen, ink, dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 };
    if (!this.store.dispatch({ kind: 'add-pull', pull, at: this.pulls.length })) return null;
    this.store.select(pull.id);
    return `Pull ${this.pulls.length} is added, last down.`;
  }

  /** Keeps the stack as a recipe; with the seed that finds it again as long as it is unchanged. */
  keep({ title, note }: RecipeWords): void {
    const { store } = this;
    const taken = new Set(store.project.recipes.map((recipe) => recipe.id));
    let id = `recipe-${Date.now().toString(36)}`;
    while (taken.has(id)) id += 'x';
    try {
      const print = this.opened.wallPrint;
      const found = print === null ? {} : { seed: print.seed, index: print.index, lineage: print };
      const recipe = recipeOf(this.pulls, store.project.drawer, { id, title, note, ...found });
      if (store.dispatch({ kind: 'keep-recipe', recipe })) store.tell(`Kept in the Chest: ${title}.`, 'news');
    } catch (error) {
      store.tell(sentenceOf(error));
    }
  }
}
