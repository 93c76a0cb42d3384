import type { ReactiveControllerHost } from 'lit';
import { pullsBetween } from '../../../engine/stack/edit/choose-pulls.ts';
import type { AppStore } from '../../app-store.ts';
import type { PullAlso } from '../../ui/print/state-strip.ts';

/** Which pulls are selected together: the one that the store knows, and those beside it. */
export class PullChoice {
  private readonly store: AppStore;
  private readonly host: ReactiveControllerHost;
  private held: ReadonlySet<string> = new Set();
  /** Where a range begins. */
  private from: string | null = null;

  constructor(store: AppStore, host: ReactiveControllerHost) {
    this.store = store;
    this.host = host;
  }

  /** Ids of all that are selected; the same set as long as they are the same. */
  get ids(): ReadonlySet<string> {
    const { selectedPull, project } = this.store;
    const there = new Set(project.bench.map(({ id }) => id));
    const left = selectedPull !== null && this.held.has(selectedPull) ? [...this.held].filter((id) => there.has(id)) : [];
    const ids = left.length > 0 || selectedPull === null ? left : [selectedPull];
    if (ids.length !== this.held.size || ids.some((id) => !this.held.has(id))) this.held = new Set(ids);
    return this.held;
  }

  /** The same, first down first. */
  get inOrder(): string[] {
    const { ids } = this;
    return this.store.project.bench.filter(({ id }) => ids.has(id)).map(({ id }) => id);
  }

  /** Selects one alone. */
  one(id: string): void {
    this.from = id;
    this.take(new Set([id]), id);
  }

  /** Selects several; the one that the panel would show is the last of them. */
  all(ids: readonly string[]): void {
    this.take(new Set(ids), ids.at(-1) ?? null);
  }

  /** Selects further pulls, or takes one out. */
  also({ pull, how }: PullAlso): void {
    const { ids } = this;
    const { selectedPull, project } = this.store;
    if (how === 'range') {
      const from = this.from !== null && ids.has(this.from) ? this.from : (selectedPull ?? pull);
      this.from = from;
      this.take(new Set(pullsBetween(project.bench, from, pull)), pull);
      return;
    }
    const next = new Set(ids);
    const out = next.delete(pull);
    if (!out) next.add(pull);
    this.from = pull;
    this.take(next, out ? ([...next].at(-1) ?? null) : pull);
  }

  private take(ids: ReadonlySet<string>, selected: string | null): void {
    this.held = ids;
    this.store.select(selected);
    this.host.requestUpdate();
  }
}
