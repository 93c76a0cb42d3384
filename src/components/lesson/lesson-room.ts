import { html, nothing, type PropertyValues } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { LESSON_AREA_MM2, LESSON_PULLS } from '../../engine/base/limits.ts';
import type { LessonSheet } from '../../engine/lesson/lesson-sheet.ts';
import { chooseCopies, copyAnew, copyChoices, isMoved, isOutdated, putBack } from '../../engine/stack/copied-pulls.ts';
import type { Pull } from '../../engine/stack/types.ts';
import { StoreElement } from '../store-element.ts';
import '../ui/cautions.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/kit/choice.ts';
import '../ui/kit/empty.ts';
import '../ui/kit/fold.ts';
import { headline, wideRoom } from '../ui/layout-style.ts';
import '../ui/print/graph/order-graph.ts';
import './board/lesson-board.ts';
import { say } from '../words/en/lesson/room.ts';
import type { BoardChange } from './board/board-change.ts';
import './board/lesson-limits.ts';
import type { LessonBoard } from './board/lesson-board.ts';
import type { LessonLimits } from './board/lesson-limits.ts';
import type { LessonAnswer } from './board/lesson-run.ts';
import './guess-game.ts';
import './levels/lesson-levels.ts';
import './link/lesson-link-dialog.ts';
import './lesson-handout.ts';
import { countWords, reasonLines } from './board/lesson-words.ts';
import './pull-picker.ts';
import { lessonStyles } from './lesson-style.ts';
import { lookStyles, twoLooks } from './two-looks.ts';

/** What is done in the room. */
type Mode = 'board' | 'guess' | 'levels';

const MODES = [
  { value: 'board', label: say.board },
  { value: 'guess', label: say.guess },
  { value: 'levels', label: say.levels },
];

const NO_INKS: LessonSheet['inks'] = [];

/** The teacher's room: all orders of a few pulls, and which of them print the same picture. */
@customElement('lesson-room')
export class LessonRoom extends StoreElement {
  static override styles = [controls, wideRoom, headline, lookStyles, lessonStyles];

  @state() private mode: Mode = 'board';
  /** What of the limits was set here; else the Wall's threshold counts, and the usual size. */
  @state() private ownLimits: Partial<LessonLimits> = {};
  /** What the board knows of the orders. */
  @state() private answer: LessonAnswer | null = null;
  @query('ps-lesson-board') private board!: LessonBoard | null;
  /** Whether a class looks on: the whole window, and nothing told before it is asked for. */
  @state() private hall = false;
  /** Whether the class sees all pictures. */
  @state() private told = false;
  private sheet: LessonSheet | null = null;
  private readonly tell = (sentence: string): void => this.store.tell(sentence);

  override shouldUpdate(changed: PropertyValues): boolean {
    return !this.hasUpdated || this.store.room === 'lesson' || changed.size > 0;
  }

  /** The lesson as a value that is the same as long as nothing of it changes. */
  private lessonSheet(): LessonSheet {
    const { title, drawer: studio, lesson: pulls, lessonInks: inks = NO_INKS, explore } = this.store.project;
    const limits = { minDeltaE: explore.minDeltaE, minAreaMm2: LESSON_AREA_MM2.usual, ...this.ownLimits };
    const old = this.sheet;
    const same =
      old !== null &&
      old.title === title &&
      old.studio === studio &&
      old.pulls === pulls &&
      old.inks === inks &&
      old.limits.minDeltaE === limits.minDeltaE &&
      old.limits.minAreaMm2 === limits.minAreaMm2;
    return same ? old : (this.sheet = { title, studio, pulls, inks, limits });
  }

  /** Bench pulls, then those of the lesson that the Bench no longer has. */
  private get choices(): Pull[] {
    const { bench, lesson } = this.store.project;
    return copyChoices(bench, lesson);
  }

  private set(pulls: Pull[], more: Partial<BoardChange> = {}): void {
    this.store.dispatch({ kind: 'set-lesson', pulls, ...more });
  }

  private choose(ids: readonly string[]): void {
    const { bench, lesson } = this.store.project;
    this.set(chooseCopies(bench, lesson, ids));
  }

  private putBack(): void {
    const { bench, lesson } = this.store.project;
    this.set(putBack(bench, lesson), { inks: [] });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.addEventListener('fullscreenchange', this.onFullScreen);
    window.addEventListener('keydown', this.onEscape);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.removeEventListener('fullscreenchange', this.onFullScreen);
    window.removeEventListener('keydown', this.onEscape);
  }

  private readonly onFullScreen = (): void => {
    if (document.fullscreenElement === null) this.setHall(false);
  };

  private readonly onEscape = (event: KeyboardEvent): void => {
    if (event.key === 'Escape' && this.hall) this.setHall(false);
  };

  private setHall(hall: boolean): void {
    this.hall = hall;
    this.told = false;
    this.toggleAttribute('hall', hall);
    // A browser that does not give the whole screen still gives the whole window.
    if (hall) void this.requestFullscreen?.().catch(() => undefined);
    else if (document.fullscreenElement !== null) void document.exitFullscreen();
  }

  private readonly onStand = (): void => {
    this.answer = this.board?.stand.answer ?? null;
  };

  private trouble(sentence: string): void {
    if (sentence === '') this.store.settled('lesson');
    else this.store.trouble('lesson', sentence);
  }

  private renderEmpty() {
    return html`<ps-empty heading=${say.nothingToCompareYet}>
      ${say.lessonComparesOrdersOf}
      <button slot="actions" class="main" @click=${() => this.store.go('bench')}>${say.goToBench}</button>
    </ps-empty>`;
  }

  private renderPicker() {
    const { bench, lesson, drawer: studio } = this.store.project;
    const full = lesson.length === LESSON_PULLS.most;
    const names = lesson.map((pull) => studio.screens.find(({ id }) => id === pull.screen)?.name ?? '').join(', ');
    return html`<ps-fold label=${say.pullsOfThisLesson} note=${names} ?open=${lesson.length < LESSON_PULLS.least}>
      <p class="lead soft">
        ${say.twoToSixThey}
        ${full ? say.sixAreChosenTake : nothing}
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
            ${say.inksOrStrokesHave} <button @click=${() => this.set(copyAnew(bench, lesson))}>${say.takeThemOver}</button>
          </p>`
          : nothing
      }
    </ps-fold>`;
  }

  private renderHead(sheet: LessonSheet) {
    const count = sheet.pulls.length;
    const { answer } = this;
    const orders = say.orders(factorial(count));
    const known = answer === null ? say.sorting(orders) : countWords(answer.result);
    const words = this.mode === 'levels' ? say.levels : this.hall && !this.told ? say.howManyPictures(orders) : known;
    return html`<div class="top">
      <h2 id="count" class="headline" aria-live="polite">${words}</h2>
      <ps-choice
        label=${say.whatToDo}
        .options=${MODES}
        .value=${this.mode}
        @pick=${(event: CustomEvent<string>) => (this.mode = event.detail as Mode)}
      ></ps-choice>
      ${
        this.hall
          ? html`<button @click=${() => this.setHall(false)}>${say.leave}</button>`
          : html`<ps-lesson-link .sheet=${sheet} .answer=${answer}></ps-lesson-link>
            <ps-lesson-handout .answer=${answer} .heading=${sheet.title}></ps-lesson-handout>
            <button title=${say.wholeScreenToBe} @click=${() => this.setHall(true)}>${say.projector}</button>`
      }
    </div>`;
  }

  private renderWhy(sheet: LessonSheet) {
    const { answer } = this;
    return html`<section class="why" aria-labelledby="why">
      <h2 id="why">${say.whyTheyAreSo}</h2>
      <div class="whys">
        <div>
          ${
            answer === null
              ? nothing
              : html`<ul class="reasons">
                ${reasonLines(answer.result.pairs, answer.question).map(({ pairs, words }) => html`<li><b>${pairs}</b> ${words}.</li>`)}
              </ul>`
          }
          <ps-lesson-limits
            .limits=${sheet.limits}
            @limits=${(event: CustomEvent<Partial<LessonLimits>>) => (this.ownLimits = { ...this.ownLimits, ...event.detail })}
          ></ps-lesson-limits>
        </div>
        ${
          answer === null
            ? nothing
            : html`<ps-order-graph
              .pulls=${answer.question.pulls}
              .drawer=${answer.question.studio}
              .edges=${answer.result.pairs.filter(({ areaMm2 }) => areaMm2 > 0)}
              .minDeltaE=${sheet.limits.minDeltaE}
            ></ps-order-graph>`
        }
      </div>
    </section>`;
  }

  private renderBoard(sheet: LessonSheet) {
    const { bench, lesson, lessonInks = [] } = this.store.project;
    return html`<ps-lesson-board
      ?hidden=${this.mode !== 'board'}
      .sheet=${sheet}
      .relative=${this.store.relative}
      ?hall=${this.hall}
      ?untold=${this.hall && !this.told}
      .active=${this.store.room === 'lesson' && this.mode === 'board'}
      ?changed=${isMoved(bench, lesson) || lessonInks.length > 0}
      @change=${(event: CustomEvent<BoardChange>) => this.set(event.detail.pulls, event.detail)}
      @put-back=${() => this.putBack()}
      @stand=${this.onStand}
      @trouble=${(event: CustomEvent<string>) => this.trouble(event.detail)}
    >${
      this.hall
        ? html`<p slot="pictures"><button aria-pressed=${this.told} @click=${() => (this.told = !this.told)}>${say.allPictures}</button></p>`
        : nothing
    }</ps-lesson-board>`;
  }

  private renderLesson(sheet: LessonSheet) {
    const count = sheet.pulls.length;
    if (count < LESSON_PULLS.least) {
      return html`<p>${say.tickTwoPullsTo(count)}</p>`;
    }
    const { answer } = this;
    return html`${this.renderHead(sheet)} ${this.renderBoard(sheet)}
    ${
      this.mode === 'levels'
        ? html`<ps-lesson-levels
          .active=${this.store.room === 'lesson'}
          .relative=${this.store.relative}
          @trouble=${(event: CustomEvent<string>) => this.trouble(event.detail)}
        ></ps-lesson-levels>`
        : nothing
    }
    ${this.mode === 'guess' && answer !== null ? html`<ps-guess-game .answer=${answer} .tell=${this.tell}></ps-guess-game>` : nothing}
    ${this.mode === 'board' && !this.hall ? this.renderWhy(sheet) : nothing}`;
  }

  override render() {
    if (this.choices.length < LESSON_PULLS.least) return html`<div class="room">${this.renderEmpty()}</div>`;
    return html`<div class="room">
      ${this.renderLesson(this.lessonSheet())} ${this.mode === 'levels' || this.hall ? nothing : this.renderAside()}
    </div>`;
  }

  private renderAside() {
    return html`${this.renderPicker()}
      <section class="two" aria-labelledby="two">
        <h2 id="two">${say.twoDifferentThingsThat}</h2>
        ${twoLooks()}
      </section>
      <ps-cautions topic="lesson"></ps-cautions>`;
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
