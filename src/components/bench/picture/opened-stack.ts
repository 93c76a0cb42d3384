import { commandLabel } from '../../../engine/project/commands.ts';
import { type PrintLineage, printTitle } from '../../../engine/recipe/lineage.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { AppStore } from '../../app-store.ts';

const FROM_WALL = commandLabel({ kind: 'open-stack', pulls: [] });
const FROM_RECIPE = commandLabel({ kind: 'open-recipe', recipe: '' });

/** Remembers the stack as it came to the Bench, to compare with what became of it. */
export class OpenedStack {
  private readonly store: AppStore;
  private seen: readonly Pull[];
  private fromWall: boolean;
  private recipeTitle: string | null;
  pulls: readonly Pull[];
  drawer: Studio;

  constructor(store: AppStore) {
    this.store = store;
    this.seen = this.pulls = store.project.bench;
    this.drawer = store.project.drawer;
    this.fromWall = store.undoLabel !== FROM_RECIPE;
    this.recipeTitle = this.fromWall ? null : store.recipeTitle;
  }

  /** To be called when the store has changed. @returns whether the stack on the Bench changed */
  follow(): boolean {
    const { project, undoLabel } = this.store;
    if (project.bench === this.seen) return false;
    this.seen = project.bench;
    if (undoLabel === null || undoLabel === FROM_WALL || undoLabel === FROM_RECIPE) {
      this.pulls = project.bench;
      this.drawer = project.drawer;
      this.fromWall = undoLabel !== FROM_RECIPE;
      this.recipeTitle = this.fromWall ? null : this.store.recipeTitle;
    }
    return true;
  }

  get changed(): boolean {
    return JSON.stringify(this.pulls) !== JSON.stringify(this.store.project.bench);
  }

  /** The wall print that the stack on the Bench still is, if it is one. */
  get wallPrint(): PrintLineage | null {
    return this.fromWall && !this.changed ? this.store.origin : null;
  }

  /** What the stack is called until the user names it. */
  get name(): string {
    const { origin, project } = this.store;
    const from =
      this.recipeTitle ??
      (this.fromWall && origin !== null ? (origin.way === undefined ? `${origin.seed} ${origin.index + 1}` : printTitle(origin)) : null);
    if (from === null) return project.title;
    return this.changed ? `${from}, changed` : from;
  }
}
