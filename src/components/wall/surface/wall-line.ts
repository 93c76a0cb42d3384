import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { MeasureWords } from '../../../engine/explore/measure/variant-measures.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { controls } from '../../ui/controls-style.ts';
import '../hang/hang-choice.ts';
import { rowHost } from '../../ui/layout-style.ts';
import { say } from '../../words/en/wall/surface.ts';
import { BY_NUMBER, type HangChoice } from '../hang/hanging.ts';
import { MOST_COMPARED } from '../print/held-pair.ts';

export type LineAction = 'filter' | 'compare' | 'between' | 'cross' | 'select-none' | 'prepare' | 'sheet';

/** The line above the wall: how it hangs, what is hidden, what is selected. */
@customElement('wall-line')
export class WallLine extends LitElement {
  static override styles = [
    controls,
    rowHost,
    css`
      :host {
        gap: 0 var(--space-6);
        min-height: 44px;
        padding: var(--space-2) var(--space-7) var(--space-2) var(--space-6);
        background: var(--wall);
      }
      wall-hang-choice {
        flex: 1 1 auto;
      }
      .actions {
        display: flex;
        margin-left: auto;
        align-items: center;
        gap: var(--space-1);
        white-space: nowrap;
      }
      button {
        min-height: 32px;
      }
      @media (max-width: 1240px) {
        .actions {
          flex-wrap: wrap;
        }
        .actions button {
          padding-inline: var(--space-3);
        }
        .wide {
          display: none;
        }
      }
      @media (max-width: 760px) {
        :host {
          gap: var(--space-2) var(--space-6);
          padding: var(--space-1) var(--space-3);
        }
        wall-hang-choice[data-long] {
          flex-basis: 100%;
        }
        .actions {
          flex-wrap: wrap;
        }
        .actions button {
          padding: var(--space-2) var(--space-3);
        }
      }
    `,
  ];

  @property({ attribute: false }) choice: HangChoice = BY_NUMBER;
  @property({ attribute: false }) measures: readonly MeasureWords[] = [];
  @property({ type: Number }) selected = 0;
  @property({ type: Number }) shown = 0;
  @property({ type: Number }) count = 0;
  @property({ type: Boolean }) filtering = false;
  /** What is going on, in words; '' when nothing is. */
  @property() busy = '';

  private tell(action: LineAction): void {
    this.dispatchEvent(new CustomEvent('line', { detail: action }));
  }

  private selection() {
    const { selected } = this;
    if (selected === 0) return nothing;
    const fits = selected >= 2 && selected <= MOST_COMPARED;
    return html`<span class="soft small wide">${say.selected(selected.toLocaleString(numberLocale()))}</span>
      <button class="quiet" ?disabled=${!fits} title=${fits ? '' : say.selectTwoToPrintsTo(MOST_COMPARED)} @click=${() => this.tell('compare')}>${say.compare}</button>
      ${
        selected === 2
          ? html`<button class="quiet" @click=${() => this.tell('between')}>${say.between}<span class="wide"> ${say.theseTwo}</span></button>
            <button class="quiet" @click=${() => this.tell('cross')}>${say.crossed}</button>`
          : nothing
      }
      <button class="quiet" @click=${() => this.tell('select-none')}>${say.selectNone}</button>`;
  }

  override render() {
    const { shown, count, busy } = this;
    return html`
      <wall-hang-choice ?data-long=${this.choice.way === 'measures' || this.selected > 0} .choice=${this.choice} .measures=${this.measures}></wall-hang-choice>
      ${busy === '' ? nothing : html`<span class="soft small" role="status">${busy}</span>`}
      <div class="actions">
        ${this.selection()}
        <button class="quiet" aria-expanded=${this.filtering} @click=${() => this.tell('filter')}>
          ${say.filter}${shown < count ? html`<span class="soft">${say.ofShown(shown.toLocaleString(numberLocale()), count.toLocaleString(numberLocale()))}</span>` : nothing}
        </button>
        <button class="quiet" @click=${() => this.tell('prepare')}>${say.screensToMake}</button>
        <button class="quiet" @click=${() => this.tell('sheet')}>${say.contactSheet}</button>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-line': WallLine;
  }
}
