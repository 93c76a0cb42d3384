import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { GOAL_KINDS, type GoalKind } from '../../../engine/lesson/goal-kinds.ts';
import { goalSheet } from '../../../engine/lesson/goal-sheets.ts';
import { controls } from '../../ui/controls-style.ts';
import './level-play.ts';
import { say } from '../../words/en/lesson/levels.ts';
import { levelWords } from './level-words.ts';
import { levelDone, levelsDone } from './levels-done.ts';

/**
 * Levels to be done one after the other or as one likes, each with a goal that is checked.
 * @fires trouble CustomEvent<string>
 */
@customElement('ps-lesson-levels')
export class LessonLevels extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--space-8);
        --board-top: 270px;
      }
      ol {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-3);
        margin: 0;
        padding: 0;
        list-style: none;
      }
      /* From afar there is room for the numbers alone; who hears the page still hears the titles. */
      .title {
        font-size: var(--level-title, inherit);
      }
      @media (max-width: 700px) {
        ol {
          flex-wrap: nowrap;
          overflow-x: auto;
          padding: var(--space-1);
        }
        li {
          flex: none;
        }
      }
    `,
  ];

  @property({ type: Boolean }) active = true;
  @property({ type: Boolean }) relative = true;
  @state() private kind: GoalKind = GOAL_KINDS.find((kind) => !levelsDone().has(kind)) ?? GOAL_KINDS[0];
  @state() private done = levelsDone();

  override render() {
    return html`<ol aria-label=${say.levels}>
        ${GOAL_KINDS.map(
          (kind, at) => html`<li>
            <button aria-pressed=${kind === this.kind} @click=${() => (this.kind = kind)}>
              ${at + 1} <span class="title">${levelWords(kind, goalSheet(kind).pulls.length).title}</span> ${this.done.has(kind) ? html`<span role="img" aria-label=${say.done}>✓</span>` : ''}
            </button>
          </li>`,
        )}
      </ol>
      <ps-level-play
        .kind=${this.kind}
        .active=${this.active}
        .relative=${this.relative}
        @level-done=${(event: CustomEvent<GoalKind>) => (this.done = levelDone(event.detail))}
        @trouble=${(event: CustomEvent<string>) => this.dispatchEvent(new CustomEvent('trouble', { detail: event.detail }))}
      ></ps-level-play>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-lesson-levels': LessonLevels;
  }
}
