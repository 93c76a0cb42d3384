import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { ReadResult } from '../../../engine/recipe/read.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { type DatedVisit, visitDays } from '../../../engine/visitfile/calendar.ts';
import type { VisitFile } from '../../../engine/visitfile/visit-file.ts';
import { EMPTY_WEEK, MOST_VISITS, type Week, withVisit } from '../../../engine/visitfile/week.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { download } from '../../ui/download.ts';
import { FileReading } from '../../ui/files/file-reading.ts';
import { say } from '../../words/en/press/week.ts';
import { type KeptWeek, keepWeek, openWeek } from '../kept-beside.ts';
import type { PressVisit } from '../press-visit.ts';

const DAY_MS = 86_400_000;

/** The visit that is open, as the week shows it. */
export interface OwnVisit {
  id: string;
  title: string;
  plan: PressPlan;
}

/** The visit that is open, on the clock of what was ticked; null without an order. */
export function ownVisit({ made, now, log }: Pick<PressVisit, 'made' | 'now' | 'log'>, title: string): OwnVisit | null {
  return made === null ? null : { id: log.head?.id ?? 'open', title, plan: now ?? made.plan };
}

/** Today by this device's calendar, whole days since 1970. */
function today(): number {
  const now = new Date();
  return Math.floor(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / DAY_MS);
}

/** Several visits on one press: kept in this browser, each change one step of undo. */
export class KeptWeekPlan implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly storeOf: () => AppStore;
  /** Reads the files that are added. */
  readonly file: FileReading;
  private kept: KeptWeek = { week: EMPTY_WEEK, aside: [] };

  constructor(host: ReactiveControllerHost, store: () => AppStore) {
    this.host = host;
    this.storeOf = store;
    this.file = new FileReading(host);
    host.addController(this);
  }

  hostConnected(): void {
    this.storeOf().addEventListener('press-saved', this.onOtherTab);
    void this.open();
  }

  hostDisconnected(): void {
    this.storeOf().removeEventListener('press-saved', this.onOtherTab);
  }

  private readonly onOtherTab = (): void => void this.open();

  private async open(): Promise<void> {
    const store = this.storeOf();
    this.show(await openWeek({ saver: store.saver, tell: (sentence) => store.tell(sentence) }));
  }

  private show(kept: KeptWeek): void {
    this.kept = kept;
    this.host.requestUpdate();
  }

  /** How much was put aside because it could not be read. */
  get aside(): number {
    return this.kept.aside.length;
  }

  /** The visit that is open, then the others. */
  visits(own: OwnVisit): DatedVisit[] {
    const { week } = this.kept;
    const firstDay = week.own?.id === own.id ? week.own.firstDay : today();
    return [{ title: own.title, days: visitDays(own.plan), firstDay }, ...week.others];
  }

  /** Keeps what was changed, and lets one undo take it back. */
  private change(label: string, kept: KeptWeek): void {
    const store = this.storeOf();
    const before = this.kept;
    const keep = (next: KeptWeek): void => {
      this.show(next);
      keepWeek({ saver: store.saver, tell: (sentence) => store.tell(sentence) }, next);
    };
    keep(kept);
    store.did({ label, undo: () => keep(before) });
  }

  private changeWeek(label: string, week: Week): void {
    this.change(label, { ...this.kept, week });
  }

  /** Sets the first days of the visits, the open one first. */
  date(own: OwnVisit, firstDays: readonly number[]): void {
    const { week } = this.kept;
    const [first = today(), ...rest] = firstDays;
    this.changeWeek(say.dateVisits, {
      own: { id: own.id, firstDay: first },
      others: week.others.map((visit, at) => ({ ...visit, firstDay: rest[at] ?? visit.firstDay })),
    });
  }

  /** @param at among the others, from 0 */
  rename(at: number, title: string): void {
    const { week } = this.kept;
    const name = title.trim();
    const visit = week.others[at];
    if (visit === undefined || name === '' || name === visit.title) return;
    this.changeWeek(say.rename(visit.title), {
      ...week,
      others: week.others.map((each, i) => (i === at ? { ...each, title: name } : each)),
    });
  }

  /** @param at among the others, from 0 */
  takeOut(at: number): void {
    const { week } = this.kept;
    const visit = week.others[at];
    if (visit === undefined) return;
    this.changeWeek(say.takeOutOfWeek(visit.title), { ...week, others: week.others.filter((_, i) => i !== at) });
    this.storeOf().tell(say.wasTakenOutOf(visit.title), 'news', {
      label: say.putBack,
      act: () => {
        const now = this.kept.week;
        if (now.others.every(({ id }) => id !== visit.id))
          this.changeWeek(say.putBackTitle(visit.title), { ...now, others: now.others.toSpliced(at, 0, visit) });
      },
    });
  }

  /** Adds visits out of their files. @param own is there already */
  async add(files: readonly File[], own: OwnVisit): Promise<void> {
    const store = this.storeOf();
    let { week } = this.kept;
    const added: string[] = [];
    for (const file of files) {
      let read: ReadResult<VisitFile>;
      try {
        read = await this.file.read('visit', file);
      } catch (error) {
        store.refuse(sentenceOf(error));
        continue;
      }
      const { value, problems } = read;
      const made = value?.made ?? null;
      if (value === null || made === null || value.log === null) store.refuse(problems[0]?.message ?? say.noPullOrderIs(file.name));
      else if (value.log.head.id === own.id) store.tell(say.isVisitThatIs(file.name), 'news');
      else if (week.others.length >= MOST_VISITS) store.refuse(say.weekHasVisitsTake(file.name, MOST_VISITS));
      else {
        const { title } = value.project;
        const found = withVisit(week, { id: value.log.head.id, title, days: visitDays(made.plan), firstDay: today() });
        ({ week } = found);
        added.push(title);
        if (found.replaced) store.tell(say.wasInWeekBefore(title, file.name), 'news');
      }
    }
    if (added.length > 0) this.changeWeek(say.addToWeek(added.join(', ')), week);
  }

  /** Hands out what could not be read. */
  saveAside(): void {
    download('visits-that-could-not-be-read.json', JSON.stringify(this.kept.aside), 'application/json');
  }

  dropAside(): void {
    this.change(say.throwAwayWhatCould, { ...this.kept, aside: [] });
  }
}
