import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { DifferenceResult, LessonResult, Picture } from '../../../workers/api/picture-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { JobControl } from '../../../workers/client/job-control.ts';
import { Work, type WorkListener } from '../../ui/work.ts';

/** What the contact sheet shows. */
export interface LessonQuestion {
  studio: Studio;
  pulls: readonly Pull[];
  minDeltaE: number;
  /** What differs on no more than this does not count, mm². */
  minAreaMm2: number;
  /** Rows of each picture. */
  heightPx: number;
  /** Whether the paper is shown white. */
  relative: boolean;
}

export interface LessonAnswer {
  question: LessonQuestion;
  result: LessonResult;
}

type SheetQuestion = Omit<LessonQuestion, 'minDeltaE' | 'minAreaMm2'>;

/** Two orders of the same pulls. */
export interface DifferenceQuestion extends Omit<LessonQuestion, 'minAreaMm2'> {
  other: readonly Pull[];
}

/** The second print, and where it differs from the first. */
export interface Difference extends DifferenceResult {
  question: DifferenceQuestion;
  other: Picture;
}

function sameOrder(a: readonly Pull[], b: readonly Pull[]): boolean {
  return a.length === b.length && a.every((pull, i) => pull === b[i]);
}

function same<T extends { studio: Studio; pulls: readonly Pull[] }>(a: T | null, b: T): boolean {
  if (a === null) return false;
  return (Object.keys(b) as (keyof T)[]).every((key) => {
    const [one, other] = [a[key], b[key]];
    return Array.isArray(one) && Array.isArray(other) ? sameOrder(one as Pull[], other as Pull[]) : one === other;
  });
}

/** Asks for the contact sheet and for the sheet one moves shapes on; each has the newest answer. */
export class LessonRun implements ReactiveController {
  private asked: LessonQuestion | null = null;
  private askedSheet: SheetQuestion | null = null;
  private readonly groups: Work<LessonAnswer>;
  private readonly sheets: Work<Picture>;
  private askedDifference: DifferenceQuestion | null = null;
  private readonly differences: Work<Difference>;
  answer: LessonAnswer | null = null;
  /** Whether the sorting was ended by hand. */
  stopped = false;
  sheet: Picture | null = null;
  difference: Difference | null = null;

  /** @param listener hears why work failed, and that it was done */
  constructor(host: ReactiveControllerHost, listener: Pick<WorkListener<unknown>, 'failed' | 'settled'>) {
    this.groups = new Work(host, { ...listener, found: (answer) => (this.answer = answer) });
    this.sheets = new Work(host, { ...listener, found: (picture) => (this.sheet = picture) });
    this.differences = new Work(host, { ...listener, found: (difference) => (this.difference = difference) });
    host.addController(this);
  }

  hostDisconnected(): void {
    this.asked = null;
    this.askedSheet = null;
    this.askedDifference = null;
  }

  /** Whether the contact sheet shown is not the one last asked for. */
  get outdated(): boolean {
    return this.asked !== null && this.answer?.question !== this.asked && this.groups.running;
  }

  ask(question: LessonQuestion): void {
    if (same(this.asked, question)) return;
    this.asked = question;
    this.stopped = false;
    this.groups.follow((control) => findGroups(question, control));
  }

  askSheet(question: SheetQuestion): void {
    if (same(this.askedSheet, question)) return;
    this.askedSheet = question;
    this.sheets.follow(() => engineFor('picture').thumbnail(question));
  }

  /** @param question null when nothing is compared any more */
  askDifference(question: DifferenceQuestion | null): void {
    if (question === null) {
      this.askedDifference = null;
      this.difference = null;
      this.differences.forget();
    } else if (!same(this.askedDifference, question)) {
      this.askedDifference = question;
      this.differences.follow(() => findDifference(question));
    }
  }

  /** Share of the orders compared, 0 to 1; null when nothing is sorted. */
  get progress(): number | null {
    return this.groups.running ? this.groups.progress : null;
  }

  /** Ends the sorting; the next `ask` of the same question does not start it again. */
  stop(): void {
    this.stopped = true;
    this.groups.stop();
  }

  /** Sorts again what was stopped. */
  again(): void {
    const { asked } = this;
    this.asked = null;
    if (asked !== null) this.ask(asked);
  }

  /** For when too few pulls are chosen to compare. */
  clear(): void {
    this.asked = null;
    this.answer = null;
    this.groups.forget();
  }
}

async function findGroups(question: LessonQuestion, control: JobControl<number>): Promise<LessonAnswer | null> {
  const result = await engineFor('lesson').lesson(question, control);
  return result === null ? null : { question, result };
}

async function findDifference(question: DifferenceQuestion): Promise<Difference> {
  const { studio, other: pulls, heightPx, relative } = question;
  const [found, other] = await Promise.all([
    engineFor('picture').difference(question),
    engineFor('picture').thumbnail({ studio, pulls, heightPx, relative }),
  ]);
  return { ...found, question, other };
}
