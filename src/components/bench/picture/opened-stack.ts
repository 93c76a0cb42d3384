import type { StackOrigin } from '../../../engine/project/types.ts';
import { type PrintLineage, printTitle } from '../../../engine/recipe/lineage.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/bench/picture.ts';

/** The stack as it came to the Bench, to compare with what became of it. */
export class OpenedStack {
  private readonly store: AppStore;
  private bench: readonly Pull[];
  private origin: StackOrigin | undefined;
  /** Which of the projects opened so far this is of, and the stack that it opened with. */
  private opened: number;
  private first: readonly Pull[];
  /** The drawer when the stack was opened, and the stack without pulls whose screen or ink it has no more. */
  drawer: Studio;
  pulls: readonly Pull[];

  constructor(store: AppStore) {
    this.store = store;
    const { project, opened } = store;
    this.opened = opened;
    this.bench = this.first = project.bench;
    this.origin = project.origin;
    this.drawer = project.drawer;
    this.pulls = this.drawable();
  }

  /** To be called when the store has changed. @returns whether the stack on the Bench changed */
  follow(): boolean {
    const { project, opened } = this.store;
    if (opened !== this.opened) this.first = project.bench;
    if (opened !== this.opened || project.origin !== this.origin) {
      this.opened = opened;
      this.origin = project.origin;
      this.drawer = project.drawer;
      this.pulls = this.drawable();
    }
    const changed = project.bench !== this.bench;
    this.bench = project.bench;
    return changed;
  }

  private drawable(): readonly Pull[] {
    const { screens, inks } = this.drawer;
    const pulls = this.origin?.pulls ?? this.first;
    const left = pulls.filter((pull) => screens.some(({ id }) => id === pull.screen) && inks.some(({ id }) => id === pull.ink));
    return left.length === pulls.length ? pulls : left;
  }

  get changed(): boolean {
    const { bench, origin } = this.store.project;
    return JSON.stringify(origin?.pulls ?? this.first) !== JSON.stringify(bench);
  }

  /** The wall print that the stack on the Bench still is, if it is one. */
  get wallPrint(): PrintLineage | null {
    const source = this.store.project.origin?.source;
    return source?.kind === 'wall' && !this.changed ? source.print : null;
  }

  /** The kept recipe that the stack came of; null when there is none, or it is kept no more. */
  get parent(): string | null {
    const { origin, recipes } = this.store.project;
    const id = origin?.source.kind === 'recipe' ? origin.source.recipe : undefined;
    return recipes.find((recipe) => recipe.id === id)?.id ?? null;
  }

  /** What the stack is called until the user names it. */
  get name(): string {
    const { origin, title } = this.store.project;
    const source = origin?.source ?? { kind: 'hand' };
    if (source.kind === 'hand') return title;
    const from = source.kind === 'recipe' ? source.title : nameOfPrint(source.print);
    return this.changed ? say.changed(from) : from;
  }
}

function nameOfPrint(print: PrintLineage): string {
  return print.way === undefined ? `${print.seed} ${print.index + 1}` : printTitle(print);
}
