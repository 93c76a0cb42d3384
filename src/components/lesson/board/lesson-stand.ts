import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { entryAt, num } from '../../../engine/base/at.ts';
import { LESSON_PULLS } from '../../../engine/base/limits.ts';
import { type LessonSheet, lessonStudio } from '../../../engine/lesson/lesson-sheet.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { WorkListener } from '../../ui/work.ts';
import { type LessonAnswer, LessonRun } from './lesson-run.ts';

/** Rows of the small pictures by number of pulls: six have up to 720 pictures. */
const ROWS = [0, 0, 560, 560, 360, 240, 180];
/** While a shape or an ink is changed, many pictures are drafts. */
const DRAFT_ROWS = 150;
const DRAFT_FROM = 4;
const SHEET_ROWS = 900;

/** How a lesson is looked at now. */
interface StandQuestion {
  sheet: LessonSheet;
  /** Whether the paper is shown white. */
  relative: boolean;
  /** Whether something is being dragged. */
  draft: boolean;
}

/** The print that stands on the board: its order, how far it is built, and what it is compared with. */
export class LessonStand implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  readonly run: LessonRun;
  private sheet: LessonSheet | null = null;
  /** Places of the lesson's pulls, first down first. */
  order: readonly number[] = [];
  /** Pulls that lie on the sheet now. */
  built = 0;
  /** An order of the picture that it is compared with. */
  against: readonly number[] | null = null;

  /** @param listener hears why work failed, and that it was done */
  constructor(host: ReactiveControllerHost, listener: Pick<WorkListener<unknown>, 'failed' | 'settled'>) {
    this.host = host;
    this.run = new LessonRun(host, listener);
    host.addController(this);
  }

  hostConnected(): void {}

  /** Asks for what the board shows; to be called before it is drawn. */
  follow({ sheet, relative, draft }: StandQuestion): void {
    const { pulls } = sheet;
    if (this.sheet === null || !sameIds(this.sheet.pulls, pulls)) this.take(this.sheet?.pulls ?? [], pulls);
    this.sheet = sheet;
    if (pulls.length < LESSON_PULLS.least) {
      this.run.clear();
      return;
    }
    const studio = lessonStudio(sheet.studio, sheet.inks);
    const rows = ROWS[pulls.length] ?? DRAFT_ROWS;
    const heightPx = draft && pulls.length >= DRAFT_FROM ? DRAFT_ROWS : rows;
    this.run.ask({ studio, pulls, ...sheet.limits, heightPx, relative });
    const down = this.pullsOf(this.order);
    this.run.askSheet({ studio, pulls: down.slice(0, this.built), heightPx: SHEET_ROWS, relative });
    const { against } = this;
    const { minDeltaE } = sheet.limits;
    this.run.askDifference(
      against === null ? null : { studio, pulls: down, other: this.pullsOf(against), minDeltaE, heightPx: SHEET_ROWS, relative },
    );
  }

  /** Other pulls than before: those that stay keep their order. */
  private take(before: readonly Pull[], pulls: readonly Pull[]): void {
    const old = this.order.map((at) => before[at]?.id);
    const rank = (at: number): number => old.indexOf(pulls[at]?.id);
    const kept = pulls.map((_, at) => at).filter((at) => rank(at) >= 0);
    const fresh = pulls.map((_, at) => at).filter((at) => rank(at) < 0);
    // Without any from before, the pulls lie as they are given.
    this.order = [...kept.sort((a, b) => rank(a) - rank(b)), ...fresh];
    this.built = pulls.length;
    this.against = null;
  }

  private pullsOf(order: readonly number[]): Pull[] {
    const pulls = this.sheet?.pulls ?? [];
    return order.map((at) => entryAt(pulls, at));
  }

  /** The sorted orders of these very pulls; null while others' stand there. */
  get answer(): LessonAnswer | null {
    const { answer } = this.run;
    return answer !== null && this.sheet !== null && sameIds(answer.question.pulls, this.sheet.pulls) ? answer : null;
  }

  /** Index of the order shown. */
  get shown(): number {
    return indexOf(this.answer, this.order);
  }

  /** The picture that the order shown prints, counted from 0; −1 until it is known. */
  get picture(): number {
    return pictureOf(this.answer, this.order);
  }

  /** The picture that it is compared with; −1 for none. */
  get otherPicture(): number {
    return this.against === null ? -1 : pictureOf(this.answer, this.against);
  }

  setOrder(order: readonly number[]): void {
    this.order = [...order];
    this.built = order.length;
    this.host.requestUpdate();
  }

  /** Shows the first order of a picture. */
  show(picture: number): void {
    this.setOrder(this.firstOf(picture));
  }

  compare(picture: number | null): void {
    this.compareWith(picture === null ? null : this.firstOf(picture));
  }

  compareWith(order: readonly number[] | null): void {
    this.against = order;
    this.host.requestUpdate();
  }

  private firstOf(picture: number): readonly number[] {
    const { answer } = this;
    if (answer === null) return this.order;
    return entryAt(answer.result.orders, num(entryAt(answer.result.groups, picture), 0));
  }

  /** One pull more, and from the whole print to the bare paper; with −1, the other way. */
  build(step: 1 | -1): void {
    const states = this.order.length + 1;
    this.built = (this.built + step + states) % states;
    this.host.requestUpdate();
  }
}

function sameIds(a: readonly Pull[], b: readonly Pull[]): boolean {
  return a.length === b.length && a.every(({ id }, i) => id === b[i]?.id);
}

function indexOf(answer: LessonAnswer | null, order: readonly number[]): number {
  const name = order.join();
  return answer?.result.orders.findIndex((each) => each.join() === name) ?? -1;
}

function pictureOf(answer: LessonAnswer | null, order: readonly number[]): number {
  const index = indexOf(answer, order);
  return answer?.result.groups.findIndex((group) => group.includes(index)) ?? -1;
}
