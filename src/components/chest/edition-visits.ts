import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { editionRecord, type EditionRecord, goodSheets } from '../../engine/log/edition/edition-sheets.ts';
import type { Edition } from '../../engine/log/edition/edition.ts';
import { minDeltaEOf, type OrderPairs } from '../../engine/log/turns.ts';
import type { LogEvent, VisitHead } from '../../engine/log/types.ts';
import type { AppStore } from '../app-store.ts';
import { workerPairs } from '../ui/log/order-pairs.ts';
import { Work } from '../ui/work.ts';
import { say } from '../words/en/chest/room.ts';

/** What was logged of a recipe. */
interface VisitsRead {
  heads: readonly VisitHead[];
  /** The visit that the edition is told from. */
  chosen: VisitHead | undefined;
  list: readonly LogEvent[];
  /** Good sheets of the recipe in the chosen visit. */
  good: number;
}

/** The logged visits that print a recipe, and what the log of the chosen one makes of its edition. */
export class EditionVisits implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly store: () => AppStore;
  private events: { visit: string; list: readonly LogEvent[] } | null = null;
  private pairs: OrderPairs = () => null;
  private readonly reading = new Work<VisitsRead>(null, {
    found: (read) => this.take(read),
    failed: (sentence) => this.store().tell(say.logCouldNotBe(sentence)),
  });
  private found: { edition: Edition; events: readonly LogEvent[]; record: EditionRecord } | null = null;
  /** First to last. */
  heads: readonly VisitHead[] = [];
  /** Good sheets of the recipe in the visit that is read; 0 where none was logged. */
  good = 0;

  constructor(host: ReactiveControllerHost, store: () => AppStore) {
    this.host = host;
    this.store = store;
    host.addController(this);
  }

  hostConnected(): void {}

  /** Reads anew what was logged of a recipe. */
  read(recipe: string, visit: string | undefined): Promise<void> {
    return this.reading.start(async () => {
      const { saver } = this.store();
      const all = (await saver.readVisits?.()) ?? [];
      const heads = all
        .filter((head) => head.recipes.some((entry) => entry.id === recipe))
        .sort((a, b) => a.begunMs - b.begunMs || (a.id < b.id ? -1 : 1));
      const chosen = heads.find((head) => head.id === visit) ?? heads.at(-1);
      const list = chosen === undefined ? [] : ((await saver.readEvents?.(chosen.id)) ?? []);
      return { heads, chosen, list, good: chosen === undefined ? 0 : goodSheets(recipe, chosen, list) };
    });
  }

  private take({ heads, chosen, list, good }: VisitsRead): void {
    this.heads = heads;
    this.good = good;
    this.events = chosen === undefined ? null : { visit: chosen.id, list };
    this.pairs = chosen === undefined ? () => null : workerPairs(minDeltaEOf(chosen), () => this.changed());
    this.changed();
  }

  private changed(): void {
    this.found = null;
    this.host.requestUpdate();
  }

  /** The visit that the edition is read from: the chosen one, else the last. */
  get head(): VisitHead | null {
    return this.heads.find((head) => head.id === this.events?.visit) ?? null;
  }

  /** What the visit's log says of the edition; null while nothing of its recipe was logged. */
  recordOf(edition: Edition): EditionRecord | null {
    const { head, events } = this;
    if (head === null || events === null) return null;
    if (this.found?.edition !== edition || this.found.events !== events.list) {
      this.found = { edition, events: events.list, record: editionRecord(edition, head, events.list, this.pairs) };
    }
    return this.found.record;
  }
}
