import { stackChange } from '../../../engine/stack/edit/stack-change.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { OverlapEdge } from '../../../workers/api/picture-api.ts';
import type { AppStore } from '../../app-store.ts';
import { changeWords } from './change-words.ts';

/** What the last change of the stack changed in the print, in words. */
export class LastChange {
  private readonly store: AppStore;
  private before: readonly Pull[] | null = null;
  private now: readonly Pull[];
  private origin: unknown;
  private opened: number;
  private told: { words: string; of: readonly Pull[] } | null = null;
  private said = '';
  private of: readonly unknown[] = [];

  constructor(store: AppStore) {
    this.store = store;
    this.now = store.project.bench;
    this.origin = store.project.origin;
    this.opened = store.opened;
  }

  /** To be called when the store has changed. */
  follow(): void {
    const { project, opened } = this.store;
    // Another stack is no change of this one.
    const another = opened !== this.opened || project.origin !== this.origin;
    if (!another && project.bench === this.now) return;
    this.before = another ? null : this.now;
    this.now = project.bench;
    this.origin = project.origin;
    this.opened = opened;
  }

  /** Says of the last change what is known better than from the stack. */
  tell(words: string): void {
    this.told = { words, of: this.now };
  }

  /** @param edges overlapping pairs of the stack as it is; null while they are not known */
  words(edges: readonly OverlapEdge[] | null): string {
    const { before, now } = this;
    if (this.told?.of === now) return this.told.words;
    if (before === null) return '';
    const { drawer: studio, explore } = this.store.project;
    const of = [before, now, edges, studio, explore];
    if (of.every((part, i) => part === this.of[i])) return this.said;
    this.of = of;
    const seen = edges?.filter(({ areaMm2, deltaE }) => areaMm2 > 0 && deltaE >= explore.minDeltaE) ?? null;
    this.said = changeWords(stackChange(before, now, seen), { pulls: now, studio, known: seen !== null, minDeltaE: explore.minDeltaE });
    return this.said;
  }
}
