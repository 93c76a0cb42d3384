import type { PullChange } from '../../../engine/project/commands/bench.ts';
import { recipeOf } from '../../../engine/recipe/write.ts';
import { placeBeside } from '../../../engine/stack/edit/rearrange.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/bench/pull.ts';
import type { OpenedStack } from '../picture/opened-stack.ts';
import type { NewPull } from './add-pull.ts';
import type { RecipeWords } from './keep-recipe.ts';

/** What can be done to the stack on the Bench. Each gives whether it was done; the store tells why it was not. */
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

  /** Puts pulls at a place, the first of them at `to`, first down 0. */
  move(ids: readonly string[], to: number): boolean {
    const { store } = this;
    const [id] = ids;
    if (ids.length === 1 && id !== undefined) return store.dispatch({ kind: 'move-pull', pull: id, to });
    return ids.length > 0 && store.dispatch({ kind: 'move-pulls', pulls: ids, to });
  }

  /** Brings pulls right over or under another. */
  bring(ids: readonly string[], beside: { pull: string; side: 'over' | 'under' }): boolean {
    const to = placeBeside(this.pulls, new Set(ids), beside);
    return to >= 0 && this.move(ids, to);
  }

  /** Changes pulls alike. */
  change(ids: readonly string[], change: PullChange): boolean {
    const { store } = this;
    const [id] = ids;
    if (ids.length === 1 && id !== undefined) return store.dispatch({ kind: 'change-pull', pull: id, change });
    return ids.length > 0 && store.dispatch({ kind: 'change-pulls', pulls: ids, change });
  }

  /** Moves pulls on the sheet, mm. @param drag whether by a whole move of the hand, undone by itself */
  shift(ids: readonly string[], { dxMm, dyMm }: Pick<Pull, 'dxMm' | 'dyMm'>, drag = false): boolean {
    if (ids.length === 0) return false;
    return this.store.dispatch({ kind: 'offset-pulls', pulls: ids, dxMm, dyMm, ...(drag ? { drag } : {}) });
  }

  /** Removes pulls and selects the one that takes the place of the first. */
  remove(ids: readonly string[]): boolean {
    const { store } = this;
    const at = this.pulls.findIndex(({ id }) => ids.includes(id));
    const [id] = ids;
    if (ids.length === 1 && id !== undefined) {
      if (!store.dispatch({ kind: 'remove-pull', pull: id })) return false;
    } else if (ids.length === 0 || !store.dispatch({ kind: 'remove-pulls', pulls: ids })) return false;
    store.select(this.pulls[Math.min(at, this.pulls.length - 1)]?.id ?? null);
    return true;
  }

  /** Puts an ink in the place of another in the whole stack. */
  replaceInk(ink: string, by: string): boolean {
    return ink !== by && this.store.dispatch({ kind: 'replace-ink', ink, by });
  }

  /** Puts a new pull down last and selects it. */
  add({ screen, ink }: NewPull): boolean {
    // Ids of the stack as it was opened stay taken, so that comparing and holds never mix pulls up.
    const taken = new Set([...this.pulls, ...this.opened.pulls].map((pull) => pull.id));
    let n = this.pulls.length + 1;
    while (taken.has(`pull-${n}`)) n++;
    const pull: Pull = { id: `pull-${n}`, screen, ink, dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 };
    if (!this.store.dispatch({ kind: 'add-pull', pull, at: this.pulls.length })) return false;
    this.store.select(pull.id);
    return true;
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
      const { parent } = this.opened;
      const recipe = recipeOf(this.pulls, store.project.drawer, { id, title, note, ...found, ...(parent === null ? {} : { parent }) });
      if (store.dispatch({ kind: 'keep-recipe', recipe })) store.tell(say.keptInChest(title), 'news');
    } catch (error) {
      store.tell(sentenceOf(error));
    }
  }
}
