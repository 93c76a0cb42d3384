import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Pull } from '../../engine/stack/types.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { LessonResult, OverlapEdge, Picture } from '../../workers/api/engine-api.ts';
import { desk, sentenceOf } from '../../workers/client/client.ts';
import { Latest } from '../ui/latest.ts';

/** What the contact sheet shows. */
export interface LessonQuestion {
  studio: Studio;
  pulls: readonly Pull[];
  minDeltaE: number;
  /** Rows of each picture. */
  heightPx: number;
  /** Whether the paper is shown white. */
  relative: boolean;
}

export interface LessonAnswer {
  question: LessonQuestion;
  result: LessonResult;
  /** All pairs that overlap, also those whose order does not show. */
  edges: OverlapEdge[];
}

type SheetQuestion = Omit<LessonQuestion, 'minDeltaE'>;

function same<T extends { studio: Studio; pulls: readonly Pull[] }>(a: T | null, b: T): boolean {
  if (a === null) return false;
  return (
    (Object.keys(b) as (keyof T)[]).every((key) => key === 'pulls' || a[key] === b[key]) &&
    a.pulls.length === b.pulls.length &&
    a.pulls.every((pull, i) => pull === b.pulls[i])
  );
}

/** Asks for the contact sheet and for the sheet one moves shapes on; each has the newest answer. */
export class LessonRun implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private asked: LessonQuestion | null = null;
  private askedSheet: SheetQuestion | null = null;
  private readonly groups: Latest<LessonQuestion, LessonAnswer>;
  private readonly sheets: Latest<SheetQuestion, Picture>;
  answer: LessonAnswer | null = null;
  sheet: Picture | null = null;

  constructor(host: ReactiveControllerHost, tell: (sentence: string) => void) {
    this.host = host;
    host.addController(this);
    const fail = (error: unknown): void => {
      tell(sentenceOf(error));
      this.host.requestUpdate();
    };
    this.groups = new Latest(
      async (question) => {
        const lessons = desk('lesson');
        const key = lessons.key(question.studio);
        const [result, edges] = await Promise.all([
          lessons.engine.lesson(key, question.pulls, question.minDeltaE, question.heightPx, question.relative),
          lessons.engine.overlaps(key, question.pulls, 0),
        ]);
        return { question, result, edges };
      },
      (answer) => {
        this.answer = answer;
        this.host.requestUpdate();
      },
      fail,
    );
    this.sheets = new Latest(
      ({ studio, pulls, heightPx, relative }) => {
        const pictures = desk('picture');
        return pictures.engine.thumbnail(pictures.key(studio), pulls, heightPx, relative);
      },
      (picture) => {
        this.sheet = picture;
        this.host.requestUpdate();
      },
      fail,
    );
  }

  hostDisconnected(): void {
    this.groups.forget();
    this.sheets.forget();
  }

  /** Whether the contact sheet shown is not the one last asked for. */
  get outdated(): boolean {
    return this.asked !== null && this.answer?.question !== this.asked && !this.groups.idle;
  }

  ask(question: LessonQuestion): void {
    if (same(this.asked, question)) return;
    this.asked = question;
    this.groups.ask(question);
  }

  askSheet(question: SheetQuestion): void {
    if (same(this.askedSheet, question)) return;
    this.askedSheet = question;
    this.sheets.ask(question);
  }

  /** For when too few pulls are chosen to compare. */
  clear(): void {
    this.asked = null;
    this.answer = null;
    this.groups.forget();
  }
}
