import { html, nothing, type PropertyValues } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { entryAt } from '../../engine/base/at.ts';
import { LESSON_AREA_MM2, LESSON_PULLS } from '../../engine/base/limits.ts';
import { chooseCopies, copyAnew, copyChoices, isMoved, isOutdated, moveCopy, putBack } from '../../engine/stack/copied-pulls.ts';
import type { Pull } from '../../engine/stack/types.ts';
import { StoreElement } from '../store-element.ts';
import '../ui/cautions.ts';
import '../ui/kit/number-field.ts';
import '../ui/kit/progress.ts';
import '../ui/print/order-graph.ts';
import { controls } from '../ui/controls-style.ts';
import { headline, wideRoom } from '../ui/layout-style.ts';
import { counted } from '../ui/words.ts';
import './contact-sheet.ts';
import './guess-game.ts';
import './lesson-limits.ts';
import type { LessonLimits } from './lesson-limits.ts';
import { type LessonAnswer, LessonRun } from './lesson-run.ts';
import './lesson-sheet.ts';
import type { PullOffset } from './lesson-sheet.ts';
import { lessonStyles } from './lesson-style.ts';
import { countWords, orderWords, reasonLines } from './lesson-words.ts';
import { chipStyles, pullChip } from './order-chips.ts';
import './pull-picker.ts';
import { lookStyles, twoLooks } from './two-looks.ts';
import '../ui/kit/empty.ts';

/** Rows of the contact sheet's pictures by number of pulls: six have up to 720 pictures. */
const ROWS = [0, 0, 560, 560, 360, 240, 180];
/** While a shape is dragged, many pictures are drafts. */
const DRAFT_ROWS = 150;
const DRAFT_FROM = 4;
const SHEET_ROWS = 800;

/** The teacher's room: all orders of a few pulls, and which of them print the same picture. */
@customElement('lesson-room')
export class LessonRoom extends StoreElement {
  static override styles = [controls, wideRoom, headline, chipStyles, lookStyles, lessonStyles];

  @state() private selected: string | null = null;
  /** Index of the order shown on the sheet. */
  @state() private shown = 0;
  @state() private guessing = false;
  @state() private dragging = false;
  /** What of the limits was set here; else the Wall's threshold counts, and the usual size. */
  @state() private ownLimits: Partial<LessonLimits> = {};
  /** Drags so far: each is undone by itself. */
  private drags = 0;
  private readonly run = new LessonRun(this, {
    failed: (sentence) => this.store.trouble('lesson', sentence),
    settled: () => this.store.settled('lesson'),
  });
  private readonly tell = (sentence: string): void => this.store.tell(sentence);

  override shouldUpdate(changed: PropertyValues): boolean {
    return !this.hasUpdated || this.store.room === 'lesson' || changed.size > 0;
  }

  private get limits(): LessonLimits {
    return { minDeltaE: this.store.project.explore.minDeltaE, minAreaMm2: LESSON_AREA_MM2.usual, ...this.ownLimits };
  }

  /** Bench pulls, then those of the lesson that the Bench no longer has. */
  private get choices(): Pull[] {
    const { bench, lesson } = this.store.project;
    return copyChoices(bench, lesson);
  }

  private set(pulls: Pull[]): void {
    this.store.dispatch({ kind: 'set-lesson', pulls });
  }

  private choose(ids: readonly string[]): void {
    const { bench, lesson } = this.store.project;
    this.set(chooseCopies(bench, lesson, ids));
  }

  private copyAnew(): void {
    const { bench, lesson } = this.store.project;
    this.set(copyAnew(bench, lesson));
  }

  private moveTo({ pull, ...to }: PullOffset): void {
    const pulls = moveCopy(this.store.project.lesson, pull, to);
    this.store.dispatch({ kind: 'set-lesson', pulls, move: `${pull} ${this.drags}` });
  }

  private setDragging(dragging: boolean): void {
    this.dragging = dragging;
    this.drags++;
  }

  private setGuessing(guessing: boolean): void {
    this.guessing = guessing;
    // The print to guess from needs the whole height.
    if (guessing) void this.updateComplete.then(() => this.renderRoot.querySelector('.result')?.scrollIntoView({ block: 'start' }));
  }

  private putBack(): void {
    const { bench, lesson } = this.store.project;
    this.set(putBack(bench, lesson));
  }

  protected override willUpdate(): void {
    const { lesson, drawer: studio } = this.store.project;
    if (!lesson.some((pull) => pull.id === this.selected)) this.selected = lesson[0]?.id ?? null;
    if (this.store.room !== 'lesson') return;
    if (lesson.length < LESSON_PULLS.least) {
      this.run.clear();
      return;
    }
    const { relative } = this.store;
    const rows = ROWS[lesson.length] ?? DRAFT_ROWS;
    const heightPx = this.dragging && lesson.length >= DRAFT_FROM ? DRAFT_ROWS : rows;
    this.run.ask({ studio, pulls: lesson, ...this.limits, heightPx, relative });
    const { answer } = this.run;
    if (answer !== null && this.shown >= answer.result.orders.length) this.shown = 0;
    this.run.askSheet({ studio, pulls: this.shownOrder.map((at) => entryAt(lesson, at)), heightPx: SHEET_ROWS, relative });
  }

  /** The order that the sheet shows, as places in the lesson. */
  private get shownOrder(): readonly number[] {
    const { lesson } = this.store.project;
    const order = this.run.answer?.result.orders[this.shown];
    return order?.length === lesson.length ? order : lesson.map((_, at) => at);
  }

  private renderEmpty() {
    return html`<ps-empty heading="Nothing to compare yet">
      A lesson compares the orders of a few pulls. Put at least two pulls on the Bench, then come back.
      <button slot="actions" class="main" @click=${() => this.store.go('bench')}>Go to the Bench</button>
    </ps-empty>`;
  }

  private renderPicker() {
    const { bench, lesson, drawer: studio } = this.store.project;
    const room = LESSON_PULLS.most - lesson.length;
    return html`<section aria-labelledby="pick">
      <h2 id="pick">Choose two to six pulls</h2>
      <p class="lead soft">
        They are copies: what you move here stays as it is on the Bench.
        ${room === 0 ? 'Six are chosen; take one out to add another.' : nothing}
      </p>
      <ps-pull-picker
        .pulls=${this.choices}
        .chosen=${lesson}
        .studio=${studio}
        @pulls=${(event: CustomEvent<string[]>) => this.choose(event.detail)}
      ></ps-pull-picker>
      ${
        isOutdated(bench, lesson)
          ? html`<p class="stale row">
            Inks or strokes have changed on the Bench since. <button @click=${() => this.copyAnew()}>Take them over</button>
          </p>`
          : nothing
      }
    </section>`;
  }

  private renderSheet() {
    const { lesson, drawer: studio } = this.store.project;
    const { answer, sheet } = this.run;
    const select = (event: CustomEvent<string>): void => void (this.selected = event.detail);
    return html`<aside aria-label="The sheet">
      <div class="move">
        <p class="soft small">Drag a shape, or choose one and press the arrow keys. Move two apart and see which prints become one.</p>
        <ps-lesson-sheet
          .pulls=${lesson}
          .studio=${studio}
          .picture=${sheet}
          .selected=${this.selected}
          label="Print of ${orderWords(this.shownOrder)}"
          @pull-select=${select}
          @pull-offset=${(event: CustomEvent<PullOffset>) => this.moveTo(event.detail)}
          @drag-state=${(event: CustomEvent<boolean>) => this.setDragging(event.detail)}
        ></ps-lesson-sheet>
        ${this.renderPlace()}
        ${answer === null ? nothing : html`<p class="count-here" aria-hidden="true">${countWords(answer.result)}</p>`}
      </div>
      ${
        answer === null
          ? nothing
          : html`<ps-order-graph
            .pulls=${lesson}
            .drawer=${studio}
            .edges=${answer.result.pairs.filter(({ areaMm2 }) => areaMm2 > 0)}
            .minDeltaE=${this.limits.minDeltaE}
            .selected=${this.selected}
            @pull-select=${select}
          ></ps-order-graph>`
      }
    </aside>`;
  }

  /** Where the chosen pull lies, in figures. */
  private renderPlace() {
    const { bench, lesson, drawer: studio } = this.store.project;
    const at = lesson.findIndex((entry) => entry.id === this.selected);
    const pull = lesson[at];
    if (pull === undefined) return nothing;
    const { widthMm, heightMm } = studio.paper;
    const screen = studio.screens.find((entry) => entry.id === pull.screen);
    const field = (label: string, most: number, value: number, put: (mm: number) => void) =>
      html`<ps-number label=${label} unit="mm" .min=${-most} .max=${most} .step=${0.1} .value=${value} @pick=${(event: CustomEvent<number>) => put(event.detail)}></ps-number>`;
    return html`<p class="chosen">${pullChip(pull, at, studio)} ${screen?.name}</p>
      <div class="where">
        ${field('Right', widthMm, pull.dxMm, (dxMm) => this.moveTo({ pull: pull.id, dxMm, dyMm: pull.dyMm }))}
        ${field('Down', heightMm, pull.dyMm, (dyMm) => this.moveTo({ pull: pull.id, dxMm: pull.dxMm, dyMm }))}
        <button ?disabled=${!isMoved(bench, lesson)} @click=${() => this.putBack()}>Put back</button>
      </div>`;
  }

  /** For a sorting that takes long enough to be followed, or was stopped. */
  private renderSorting() {
    const { progress, stopped } = this.run;
    if (stopped)
      return html`<p class="row soft">Stopped before all orders were compared. <button @click=${() => this.run.again()}>Go on</button></p>`;
    if (progress === null || progress === 0) return nothing;
    const words = `${Math.round(progress * 100)} % compared`;
    return html`<ps-progress label="Comparing all orders" .value=${progress} words=${words} @stop=${() => this.run.stop()}></ps-progress>`;
  }

  private renderReasons({ result, question }: LessonAnswer) {
    return html`<ul class="reasons" aria-label="Why they are so many">
      ${reasonLines(result.pairs, question).map(({ pairs, words }) => html`<li><b>${pairs}</b> ${words}.</li>`)}
    </ul>`;
  }

  private renderResult() {
    const { answer, outdated } = this.run;
    const { lesson } = this.store.project;
    if (lesson.length < LESSON_PULLS.least) {
      return html`<section class="result"><p>${lesson.length === 1 ? 'One more pull, and there are two orders to compare.' : 'Tick two pulls to begin.'}</p></section>`;
    }
    if (answer === null)
      return html`<section class="result"><p class="soft" role="status">Printing all orders…</p>${this.renderSorting()}</section>`;
    // Until a changed lesson is sorted, the sheet beside it and the old prints would not belong together.
    const current = answer.question.pulls.length === lesson.length;
    return html`<section class="result ${outdated && !this.dragging ? 'behind' : ''}" aria-labelledby="count">
      <h2 id="count" class="headline" aria-live="polite">${current ? countWords(answer.result) : `Sorting ${counted(factorial(lesson.length), 'order')}…`}</h2>
      ${this.renderSorting()} ${current ? this.renderReasons(answer) : nothing}
      <div class="tools">
        <div class="modes" role="group" aria-label="Show">
          <button aria-pressed=${!this.guessing} @click=${() => this.setGuessing(false)}>All prints</button>
          <button aria-pressed=${this.guessing} @click=${() => this.setGuessing(true)}>Guess</button>
        </div>
        <ps-lesson-limits
          .limits=${this.limits}
          @limits=${(event: CustomEvent<Partial<LessonLimits>>) => (this.ownLimits = { ...this.ownLimits, ...event.detail })}
        ></ps-lesson-limits>
      </div>
      ${
        !current
          ? nothing
          : this.guessing
            ? html`<ps-guess-game .answer=${answer} .tell=${this.tell}></ps-guess-game>`
            : html`<div class="columns">
              <ps-contact-sheet
                .answer=${answer}
                .shown=${this.shown}
                @order-select=${(event: CustomEvent<number>) => (this.shown = event.detail)}
              ></ps-contact-sheet>
              ${this.renderSheet()}
            </div>`
      }
    </section>`;
  }

  override render() {
    if (this.choices.length < LESSON_PULLS.least) return html`<div class="room">${this.renderEmpty()}</div>`;
    return html`<div class="room">
      ${this.renderPicker()} ${this.renderResult()}
      <section class="two" aria-labelledby="two">
        <h2 id="two">Two different things that look alike</h2>
        ${twoLooks()}
      </section>
      <ps-cautions topic="lesson"></ps-cautions>
    </div>`;
  }
}

function factorial(n: number): number {
  return n < 2 ? 1 : n * factorial(n - 1);
}

declare global {
  interface HTMLElementTagNameMap {
    'lesson-room': LessonRoom;
  }
}
