import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { MeasureWords } from '../../../engine/explore/measure/variant-measures.ts';
import { controls } from '../../ui/controls-style.ts';
import { rowHost } from '../../ui/layout-style.ts';
import { say } from '../../words/en/wall/hang.ts';
import type { MeasureKey } from '../print/print-facts.ts';
import { BY_NUMBER, type HangChoice } from './hanging.ts';

/** The ways in which prints hang, and what they are called. */
export const WAYS: readonly [HangChoice['way'], string][] = [
  ['number', say.inOrderFound],
  ['taste', say.asIChoose],
  ['likeness', say.alikeSideBySide],
  ['measures', say.byTwoMeasures],
  ['related', say.byRelatedPrints],
  ['pulls', say.byNumberOfPulls],
  ['inks', say.byNumberOfInks],
];

export type HangEvent = CustomEvent<HangChoice>;

/** How the prints hang, in a line above them. */
@customElement('wall-hang-choice')
export class HangChoiceLine extends LitElement {
  static override styles = [
    controls,
    rowHost,
    css`
      :host {
        gap: var(--space-2) var(--space-6);
        min-width: 0;
      }
      select {
        min-height: 32px;
        border-color: transparent;
        background-color: transparent;
        padding-left: var(--space-2);
        font-weight: 600;
        text-overflow: ellipsis;
        field-sizing: content;
      }
      select:hover {
        border-color: var(--line);
      }
      label {
        gap: var(--space-1);
      }
      @media (max-width: 760px) {
        .word {
          display: none;
        }
        select {
          font-size: var(--type-label);
          max-width: 45vw;
        }
        .way {
          max-width: 100%;
        }
      }
    `,
  ];

  @property({ attribute: false }) choice: HangChoice = BY_NUMBER;
  @property({ attribute: false }) measures: readonly MeasureWords[] = [];

  private change(change: Partial<HangChoice>): void {
    this.dispatchEvent(new CustomEvent('hang', { detail: { ...this.choice, ...change }, bubbles: true, composed: true }));
  }

  private axis(name: 'across' | 'upwards') {
    const chosen = this.choice[name];
    return html`<label>
      <span class="soft small">${name === 'across' ? say.across : say.upwards}</span>
      <select @change=${(event: Event) => this.change({ [name]: (event.target as HTMLSelectElement).value as MeasureKey })}>
        ${this.measures.map(({ key, label }) => html`<option value=${key} ?selected=${key === chosen}>${label}</option>`)}
      </select>
    </label>`;
  }

  override render() {
    const { choice, measures } = this;
    return html`
      <label>
        <span class="soft small word">${say.arrange}</span>
        <select
          class="way"
          aria-label=${say.arrangePrints}
          @change=${(event: Event) => this.change({ way: (event.target as HTMLSelectElement).value as HangChoice['way'] })}
        >
          ${WAYS.map(
            ([way, label]) =>
              html`<option value=${way} ?selected=${way === choice.way} ?disabled=${way === 'measures' && measures.length < 2}>${label}</option>`,
          )}
        </select>
      </label>
      ${
        choice.way === 'measures'
          ? html`${this.axis('across')}${this.axis('upwards')}
            <label>
              <span class="visually-hidden">${say.spacing}</span>
              <select @change=${(event: Event) => this.change({ ranks: (event.target as HTMLSelectElement).value === 'ranks' })}>
                <option value="ranks" ?selected=${choice.ranks}>${say.evenlyByRank}</option>
                <option value="values" ?selected=${!choice.ranks}>${say.byValue}</option>
              </select>
            </label>`
          : nothing
      }
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-hang-choice': HangChoiceLine;
  }
}
