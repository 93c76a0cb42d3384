import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { rangesText } from '../../../engine/base/words.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/press/log.ts';
import type { TickAnswer, TickQuestion } from './tick-asking.ts';

/** The foot of the press stays in view and would lie over what is asked. */
const FOOT_PX = 100;

/**
 * Asks where a sheet was ticked whether it counts, over what lies below: nothing else moves.
 * Its place is the end of what was touched, in a box that says with `position: relative` how wide it may be.
 * @fires answer CustomEvent<TickAnswer>
 */
@customElement('press-tick-question')
export class TickQuestionBox extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
        position: absolute;
        left: 0;
        right: 0;
        z-index: 3;
        max-width: 560px;
        margin-top: var(--space-2);
        padding: var(--space-6);
        border: 2px solid var(--accent);
        border-radius: var(--radius);
        background: var(--sheet);
        box-shadow: var(--shadow);
      }
      :host([above]) {
        transform: translateY(calc(-100% - var(--touched, 150px)));
      }
      p {
        font-weight: 600;
      }
      div {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-4);
        margin-top: var(--space-6);
      }
      button {
        min-height: 52px;
        touch-action: manipulation;
      }
    `,
  ];

  @property({ attribute: false }) question!: TickQuestion;

  protected override firstUpdated(): void {
    this.setAttribute('role', 'alertdialog');
    const box = this.getBoundingClientRect();
    // Where there is no room below, it opens upwards rather than scroll sheets away under a finger.
    if (box.bottom > innerHeight - FOOT_PX && box.top > innerHeight / 2) this.setAttribute('above', '');
    this.renderRoot.querySelector('button')?.focus({ preventScroll: true });
  }

  private answer(answer: TickAnswer): void {
    this.dispatchEvent(new CustomEvent<TickAnswer>('answer', { detail: answer }));
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key !== 'Escape') return;
    // The press mode around it stays open.
    event.preventDefault();
    event.stopPropagation();
    this.answer('none');
  }

  override render() {
    const { words, sure, onlyWet } = this.question;
    this.setAttribute('aria-label', words.join(' '));
    return html`${words.map((each) => html`<p>${each}</p>`)}
      <div @keydown=${this.onKey}>
        <button class="main" @click=${() => this.answer('none')}>${say.notPulledYet}</button>
        ${
          sure.length === 0
            ? nothing
            : html`<button @click=${() => this.answer('sure')}>${say.onlySheets(sure.length)} ${rangesText(sure)}</button>`
        }
        <button @click=${() => this.answer('all')}>${say.pulledAllSame}</button>
        ${onlyWet ? html`<button @click=${() => this.answer('quiet')}>${say.pulledAndAskNo}</button>` : nothing}
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-tick-question': TickQuestionBox;
  }
}
