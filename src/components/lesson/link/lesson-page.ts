import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { LessonSheet } from '../../../engine/lesson/lesson-sheet.ts';
import type { GivenLesson } from '../../../engine/lesson/packed-lesson.ts';
import type { ReadResult } from '../../../engine/recipe/read.ts';
import '../board/lesson-board.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/lesson/link.ts';
import type { BoardChange } from '../board/board-change.ts';
import '../levels/lesson-levels.ts';
import '../levels/level-play.ts';
import type { LessonBoard } from '../board/lesson-board.ts';
import '../../ui/kit/choice.ts';
import { countWords } from '../board/lesson-words.ts';

type Mode = 'task' | 'board' | 'levels';

/** A lesson out of the address alone: nothing is read or kept but which levels were done. */
@customElement('lesson-page')
export class LessonPage extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--space-6);
        padding: var(--space-6) var(--space-9) var(--space-9);
      }
      header {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-4) var(--space-8);
      }
      a {
        color: inherit;
      }
      h1 {
        margin-right: auto;
        font-size: var(--type-head);
      }
      ps-lesson-board,
      ps-level-play,
      ps-lesson-levels {
        --board-top: 150px;
      }
      @media (max-width: 700px) {
        :host {
          padding: var(--space-5) var(--space-6) var(--space-8);
        }
      }
    `,
  ];

  @property({ attribute: false }) found!: ReadResult<GivenLesson>;
  @state() private mode: Mode = 'board';
  /** As it was changed here. */
  @state() private sheet: LessonSheet | null = null;
  @state() private words = '';
  @state() private fault = '';

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (!changed.has('found')) return;
    this.sheet = this.found.value?.sheet ?? null;
    this.mode = (this.found.value?.goal ?? null) === null ? 'board' : 'task';
  }

  private change({ pulls, inks }: BoardChange): void {
    if (this.sheet !== null) this.sheet = { ...this.sheet, pulls, inks };
  }

  private readonly onStand = (event: Event): void => {
    const { answer } = (event.target as LessonBoard).stand;
    this.words = answer === null ? '' : countWords(answer.result);
  };

  private readonly onTrouble = (event: CustomEvent<string>): void => {
    this.fault = event.detail;
  };

  private renderMode({ sheet: given, goal }: GivenLesson) {
    const sheet = this.sheet ?? given;
    if (this.mode === 'levels') return html`<ps-lesson-levels @trouble=${this.onTrouble}></ps-lesson-levels>`;
    if (this.mode === 'task' && goal !== null) {
      return html`<ps-level-play .kind=${goal} .given=${given} @trouble=${this.onTrouble}></ps-level-play>`;
    }
    return html`<ps-lesson-board
      .sheet=${sheet}
      ?changed=${sheet.pulls !== given.pulls || sheet.inks !== given.inks}
      @change=${(event: CustomEvent<BoardChange>) => this.change(event.detail)}
      @put-back=${() => (this.sheet = given)}
      @stand=${this.onStand}
      @trouble=${this.onTrouble}
    ></ps-lesson-board>`;
  }

  override render() {
    const { value, problems } = this.found;
    const own = html`<a href=${location.pathname}>${say.openYourOwnStudio}</a>`;
    if (value === null) {
      return html`<main><h1>${say.noLesson}</h1>
        ${problems.map(({ message }) => html`<p role="alert">${message}</p>`)}
        <p>${own}</p></main>`;
    }
    const modes = [
      ...(value.goal === null ? [] : [{ value: 'task', label: say.task }]),
      { value: 'board', label: say.board },
      { value: 'levels', label: say.levels },
    ];
    return html`<header>
        <h1>${value.sheet.title === '' ? say.lesson : say.lessonTitle(value.sheet.title)}</h1>
        <ps-choice label=${say.whatToDo} .options=${modes} .value=${this.mode} @pick=${(event: CustomEvent<string>) => (this.mode = event.detail as Mode)}></ps-choice>
        ${own}
      </header>
      <main>
        ${this.fault === '' ? nothing : html`<p role="alert">${this.fault}</p>`}
        <p class="count" aria-live="polite">${this.mode === 'board' ? this.words : ''}</p>
        ${this.renderMode(value)}
      </main>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'lesson-page': LessonPage;
  }
}
