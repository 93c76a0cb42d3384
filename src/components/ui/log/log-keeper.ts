import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import { recipesAsPulled, type SheetAsPulled, sheetsAsPulled } from '../../../engine/log/as-pulled.ts';
import { type TestSheet, testSheetOf } from '../../../engine/log/test-sheet.ts';
import { minDeltaEOf, type OrderPairs } from '../../../engine/log/turns.ts';
import type { Happening, LogEvent, VisitHead } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { inkText } from '../../../engine/visit/registry.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/ui/log.ts';
import { loggedWords } from '../../words/logged-words.ts';
import { newId } from '../new-id.ts';
import { workerPairs } from './order-pairs.ts';

interface Message {
  visit: string;
  events: LogEvent[];
}

/** Of this tab: two tabs are two devices. */
const device = newId();

/** Whether a recipe as pulled is the one that was shown before. */
function sameInks(recipe: Recipe, before: Recipe | undefined): boolean {
  if (before === undefined || before.id !== recipe.id || before.pulls !== recipe.pulls || before.inks.length !== recipe.inks.length)
    return false;
  return recipe.inks.every(
    (ink, at) => ink === before.inks[at] || (ink.id === entryAt(before.inks, at).id && inkText(ink) === inkText(entryAt(before.inks, at))),
  );
}

/**
 * The log of the visit at the press. Each event is on the disk before it shows; other tabs of the
 * same visit hear of it.
 */
export class LogKeeper implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly store: () => AppStore;
  private channel: BroadcastChannel | null = null;
  private lastMs = 0;
  head: VisitHead | null = null;
  /** Which pulls must keep their order, as far as it is known. */
  pairs: OrderPairs = () => null;
  /** Which pulls touch at all, as far as it is known. */
  touching: OrderPairs = () => null;
  events: readonly LogEvent[] = [];
  /** All sheets of the visit as they are. */
  sheets: readonly SheetAsPulled[] = [];
  /** The test sheet as it is; null where the visit has none. */
  test: TestSheet | null = null;
  /** The visit's recipes, with inks that were pulled instead of theirs. */
  recipes: readonly Recipe[] = [];

  constructor(host: ReactiveControllerHost, store: () => AppStore) {
    this.host = host;
    this.store = store;
    host.addController(this);
  }

  hostConnected(): void {
    this.channel = new BroadcastChannel('pullstack-log');
    this.channel.addEventListener('message', ({ data }: MessageEvent<Message>) => {
      if (data.visit === this.head?.id) this.take(data.events);
    });
  }

  hostDisconnected(): void {
    this.channel?.close();
  }

  /** Starts the log of another visit, or of none. */
  begin(head: VisitHead | null, events: readonly LogEvent[] = []): void {
    this.head = head;
    this.pairs = head === null ? () => null : workerPairs(minDeltaEOf(head), () => this.take([]));
    this.touching = head === null ? () => null : workerPairs(0, () => this.host.requestUpdate());
    this.events = [];
    this.take(events);
  }

  /** Goes on as another device began the visit. */
  adopt(head: VisitHead): Promise<void> {
    return this.resume(head);
  }

  /** Takes a log up where it was left. */
  async resume(head: VisitHead): Promise<void> {
    const events = (await this.store().saver.readEvents?.(head.id)) ?? [];
    this.begin(head, events);
  }

  /** Logs what happened to one or more sheets, as a step to undo; resolves when it is on the disk. */
  async add(happenings: readonly Happening[]): Promise<void> {
    if (happenings.length === 0) return;
    const label = loggedWords(happenings, this.events);
    const events = await this.write(happenings);
    this.store().did({ label, ...this.wayBack(events) });
  }

  /** How entries are taken back, and logged once more: nothing is ever taken out of a log. */
  wayBack(events: readonly LogEvent[]): { undo(): void; redo(): void; stands(): boolean } {
    const visit = this.head?.id;
    let taken: LogEvent[] = [];
    const takeBack = (these: readonly LogEvent[]): LogEvent[] => {
      const undone = this.stamped(these.toReversed().map(({ id, sheet }): Happening => ({ kind: 'undone', sheet, event: id })));
      void this.bringIn(undone);
      return undone;
    };
    return {
      undo: () => void (taken = takeBack(events)),
      redo: () => void takeBack(taken),
      stands: () => this.head?.id === visit,
    };
  }

  /** Logs what happened, without a step to undo. */
  async write(happenings: readonly Happening[]): Promise<LogEvent[]> {
    const events = this.stamped(happenings);
    await this.bringIn(events);
    return events;
  }

  private stamped(happenings: readonly Happening[]): LogEvent[] {
    // Never two events at one time, and never back in time when the clock is set.
    this.lastMs = Math.max(this.lastMs, ...this.events.map((event) => event.atMs), this.head?.begunMs ?? 0);
    return happenings.map((happening): LogEvent => {
      this.lastMs = Math.max(this.lastMs + 1, Date.now());
      return { ...happening, id: newId(), atMs: this.lastMs, device };
    });
  }

  /** Adds events as they are, as from another device. */
  async bringIn(events: readonly LogEvent[]): Promise<void> {
    const { head } = this;
    if (head === null || events.length === 0) return;
    const { saver, tell } = { saver: this.store().saver, tell: (sentence: string) => this.store().tell(sentence) };
    try {
      if (saver.addEvents === undefined) throw new Error(say.nothingIsKeptHere);
      await saver.addEvents(head, events);
      this.channel?.postMessage({ visit: head.id, events: [...events] } satisfies Message);
    } catch (error) {
      // The work goes on all the same, but nobody shall trust a tick that will be lost.
      tell(say.logCouldNotBe(sentenceOf(error)));
    }
    if (this.head?.id === head.id) this.take(events);
  }

  private take(events: readonly LogEvent[]): void {
    const known = new Set(this.events.map((event) => event.id));
    this.events = [...this.events, ...events.filter((event) => !known.has(event.id))];
    this.sheets = this.head === null ? [] : sheetsAsPulled(this.head, this.events, this.pairs);
    this.test = this.head === null ? null : testSheetOf(this.head, this.events);
    // A picture goes by its recipe, so one with a borrowed ink stays the object that it was.
    const before = this.recipes;
    this.recipes =
      this.head === null
        ? []
        : recipesAsPulled(this.head, this.events).map((recipe, at) => (sameInks(recipe, before[at]) ? entryAt(before, at) : recipe));
    this.host.requestUpdate();
  }
}
